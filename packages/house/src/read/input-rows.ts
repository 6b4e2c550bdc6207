import {
  type Dimension,
  type Measure,
  type Measured,
  measured,
  type TypedQuantity,
} from "@hoopstay/core";

/** One value of a file: its key, the text as typed and, for quantities, the value used. */
export interface InputRow {
  readonly file: "house" | "site";
  readonly key: string;
  readonly typed: string;
  readonly used: Measured | string;
}

const isQuantity = (value: object): value is TypedQuantity =>
  "dimension" in value && "text" in value;

/** What a value is shown as: a share stands as a plain number. */
const measureOf = (dimension: Dimension): Measure =>
  dimension === "fraction" ? "ratio" : dimension;

/** A house is measured to four figures. */
const figuresOf = { house: 4, site: 3 } as const;

/** What a file tells of other houses than the one computed. */
const ofOthers = ["variants", "prices", "search"];

/** Every value of a read file in the file's order, as typed beside as used. */
export function inputRows(file: InputRow["file"], value: unknown, key = ""): InputRow[] {
  if (value === undefined || key === "$schema" || ofOthers.includes(key)) return [];
  if (typeof value !== "object" || value === null) {
    return [{ file, key, typed: String(value), used: String(value) }];
  }
  if (isQuantity(value)) {
    const used = measured(value.value, measureOf(value.dimension), figuresOf[file]);
    return [{ file, key, typed: value.text, used }];
  }
  return Object.entries(value).flatMap(([name, part]) =>
    inputRows(file, part, key ? `${key}.${name}` : name),
  );
}
