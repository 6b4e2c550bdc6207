import type { Control } from "./control.ts";
import { useTypedText } from "./typed-text.ts";

/** A whole number, typed or stepped. */
export function CountField({
  id,
  describedBy,
  wrong,
  value,
  set,
  least,
  most,
}: Control & { readonly least: number; readonly most: number }) {
  const { text, type, rest } = useTypedText(value);
  const put = (next: string): void => {
    const bare = next.trim();
    set(bare === "" ? undefined : /^-?\d+$/.test(bare) ? Number(bare) : bare);
  };
  const step = (by: number): void => {
    const from = /^\d+$/.test(text.trim()) ? Number(text) : by > 0 ? least - 1 : least + 1;
    const next = String(Math.min(most, Math.max(least, from + by)));
    type(next);
    rest();
    put(next);
  };
  return (
    <div class="count">
      <button type="button" aria-label="one less" onClick={() => step(-1)}>
        {"\u2212"}
      </button>
      <input
        id={id}
        type="text"
        inputMode="numeric"
        autocomplete="off"
        maxLength={8}
        aria-describedby={describedBy}
        aria-invalid={wrong}
        value={text}
        onInput={({ currentTarget }) => {
          type(currentTarget.value);
          put(currentTarget.value);
        }}
        onBlur={rest}
      />
      <button type="button" aria-label="one more" onClick={() => step(1)}>
        +
      </button>
    </div>
  );
}
