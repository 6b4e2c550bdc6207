import { parseText } from "../parse/parse-document.ts";
import { changeText } from "./change-text.ts";
import { plainWith } from "./plain-change.ts";
import { samePlain } from "./same-plain.ts";
import { isMapValue, type Path, sizeOf, type Value, valueAt } from "./value.ts";
import { without } from "./without.ts";

type Entries = readonly (readonly [string | number, Value])[];

const entriesOfValue = (value: Value): Entries =>
  isMapValue(value)
    ? Object.entries(value as Readonly<Record<string, Value>>)
    : [...(value as readonly Value[]).entries()];

/** Whether both are maps, or both lists, that hold something: then only what differs is written. */
const isComparable = (old: unknown, value: Value): boolean =>
  Array.isArray(old) === Array.isArray(value) &&
  isMapValue(old) === isMapValue(value) &&
  sizeOf(old) > 0 &&
  sizeOf(value) > 0;

/** Entry by entry, so that comments and order within stay; what is not in the value goes last. */
function withEntries(text: string, path: Path, old: unknown, value: Value): string {
  const entries: Entries = entriesOfValue(value);
  const kept = new Set<string | number>(entries.map(([key]) => key));
  const set = entries.reduce<string>(
    (done, [key, inner]) => withValue(done, [...path, key], inner),
    text,
  );
  const gone = entriesOfValue(old as Value)
    .map(([key]) => key)
    .filter((key) => !kept.has(key));
  return gone.reduceRight<string>((done, key) => without(done, [...path, key]), set);
}

/**
 * A YAML or JSON text with the value at a path changed, and not a byte more than that needs.
 * Missing parents are made; an index equal to the length of a list appends to it.
 *
 * @throws Refusal where the text is broken; RangeError where the path cannot be
 */
export function withValue(text: string, path: Path, value: Value): string {
  if (path.length === 0) throw new RangeError("a path names at least one key");
  const { document, value: whole } = parseText(text, "text");
  const old = valueAt(whole, path);
  if (samePlain(old, value)) return text;
  if (isComparable(old, value)) return withEntries(text, path, old, value);
  return changeText({
    text,
    document,
    path,
    expected: plainWith(whole, path, value),
    goes: false,
  });
}
