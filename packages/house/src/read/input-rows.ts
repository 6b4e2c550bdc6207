import type { Quantity } from "@hoopstay/core";

/** One value of a file: its key, the text as typed and, for quantities, the SI value used. */
export interface InputRow {
  readonly file: "house" | "site";
  readonly key: string;
  readonly typed: string;
  readonly used: number | string;
}

const isQuantity = (value: object): value is Quantity => "text" in value && "value" in value;

/** What a file tells of other houses than the one computed. */
const ofOthers = ["variants", "prices", "search"];

/** Every value of a read file in the file's order, as typed beside as used. */
export function inputRows(file: InputRow["file"], value: unknown, key = ""): InputRow[] {
  if (value === undefined || key === "$schema" || ofOthers.includes(key)) return [];
  if (typeof value !== "object" || value === null) {
    return [{ file, key, typed: String(value), used: String(value) }];
  }
  if (isQuantity(value)) return [{ file, key, typed: value.text, used: value.value }];
  return Object.entries(value).flatMap(([name, part]) =>
    inputRows(file, part, key ? `${key}.${name}` : name),
  );
}
