import { useId } from "preact/hooks";
import { answer } from "../session/state.ts";
import type { Control } from "./control.ts";
import { valueAt } from "./lookup.ts";
import { useTypedText } from "./typed-text.ts";

/** Free words; where only some are known, these are offered. */
export function WordsField({
  id,
  describedBy,
  wrong,
  value,
  placeholder,
  set,
  keyName,
  examples,
}: Control & { readonly keyName: string; readonly examples: readonly string[] }) {
  const { text, type, rest } = useTypedText(value);
  const listId = useId();
  const offered = [...offeredFor(keyName), ...examples];
  return (
    <>
      <input
        id={id}
        type="text"
        autocomplete="off"
        maxLength={200}
        list={offered.length > 0 ? listId : undefined}
        placeholder={placeholder}
        aria-describedby={describedBy}
        aria-invalid={wrong}
        value={text}
        onInput={({ currentTarget }) => {
          const next = currentTarget.value;
          type(next);
          set(next === "" ? undefined : next);
        }}
        onBlur={rest}
      />
      {offered.length > 0 ? (
        <datalist id={listId}>
          {offered.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      ) : null}
    </>
  );
}

/** Names that stand elsewhere in the files: states of the house, kinds of anchor. */
function offeredFor(key: string): readonly string[] {
  if (key === "now") {
    return [...new Set(answer.value?.review.states.map(({ id }) => id) ?? [])];
  }
  if (/^(anchors\.\d+\.kind|pull_tests\.\d+\.anchor)$/.test(key)) {
    const kinds = valueAt("house", ["anchor_kinds"]);
    if (!Array.isArray(kinds)) return [];
    return kinds.flatMap((kind) => (typeof kind?.id === "string" ? [kind.id] : []));
  }
  return [];
}
