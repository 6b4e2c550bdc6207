import type { Value } from "@hoopstay/file/value";
import type { Control } from "./control.ts";

/** Any of a closed list, each with a box to tick. */
export function SeveralField({
  id,
  describedBy,
  value,
  set,
  options,
}: Control & { readonly options: readonly string[] }) {
  const chosen: readonly Value[] = Array.isArray(value) ? value : [];
  const tick = (option: string, on: boolean): void => {
    const next = on ? [...chosen, option] : chosen.filter((one) => one !== option);
    set(next.length === 0 ? undefined : next);
  };
  return (
    <fieldset class="several" id={id} aria-describedby={describedBy}>
      <legend class="unseen">Tick all that apply</legend>
      {options.map((option) => (
        <label key={option}>
          <input
            type="checkbox"
            checked={chosen.includes(option)}
            onChange={({ currentTarget }) => tick(option, currentTarget.checked)}
          />
          {option}
        </label>
      ))}
    </fieldset>
  );
}
