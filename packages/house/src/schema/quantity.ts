import {
  type Dimension,
  type Quantity,
  readQuantity,
  spellingsOf,
  type TypedQuantity,
} from "@hoopstay/core";
import * as z from "zod/mini";
import { described } from "./described.ts";

/** What a custom complaint of a field carries to the door, where file and line are added. */
export interface FieldComplaint {
  readonly code: string;
  readonly given: string;
  readonly expected: string;
  readonly mend: string;
}

const examples: Record<Dimension, string> = {
  length: "18 ft",
  area: "6 ft2",
  volume: "275 gal",
  speed: "105 mph",
  force: "120 lb",
  moment: "100 lb-ft",
  "force-per-length": "20 lb/ft",
  pressure: "1000 psf",
  "mass-per-area": "0.3 lb/ft2",
  density: "30 pcf",
  "unit-weight": "110 pcf",
  angle: "45 deg",
  fraction: "30 %",
};

/** Beyond these, in SI, a typing error is certain and the sums would lose their digits. */
const greatest: Record<Dimension, number> = {
  length: 10_000,
  area: 1e6,
  volume: 1e6,
  speed: 200,
  force: 1e8,
  moment: 1e9,
  "force-per-length": 1e7,
  pressure: 1e9,
  "mass-per-area": 1e4,
  density: 25_000,
  "unit-weight": 250_000,
  angle: Math.PI / 2 + 1e-9,
  fraction: 1,
};

/** Nearer to nought than these, in SI, and not nought: a typing error again, and as hard on the sums. */
const least: Record<Dimension, number> = {
  length: 1e-6,
  area: 1e-8,
  volume: 1e-9,
  speed: 1e-3,
  force: 1e-3,
  moment: 1e-3,
  "force-per-length": 1e-3,
  pressure: 1e-3,
  "mass-per-area": 1e-4,
  density: 0.01,
  "unit-weight": 0.1,
  angle: 1e-6,
  fraction: 1e-6,
};

/** Begins the message of a value that should have been text with a unit; the dimension follows. */
export const quantityMark = "quantity:";
const unitTexts = new Map<Dimension, string>();

/** What an editor says about the units of a dimension. */
function unitWords(dimension: Dimension): string {
  let text = unitTexts.get(dimension);
  if (text === undefined) {
    text = `A number with its unit: ${spellingsOf(dimension).slice(0, 6).join(", ")} ...`;
    unitTexts.set(dimension, text);
  }
  return text;
}

type Sign = "positive" | "not-negative" | "any";

/** What a quantity's key asks for, for those who ask for it on a screen. */
export interface QuantityKind {
  readonly dimension: Dimension;
  readonly sign: Sign;
  readonly about: string;
  readonly example: string;
}

/** The kind of every quantity of the schemas. */
export const quantityKinds = new WeakMap<object, QuantityKind>();

/** A number with a unit, as text; the text as typed is kept beside the SI value. */
export function quantity(dimension: Dimension, about: string, sign: Sign = "positive") {
  const example = examples[dimension];
  const asQuantity = z.transform((given: string, context): TypedQuantity => {
    const read = readQuantity(given, dimension);
    const complaint = read.ok
      ? (signComplaint(read, sign, example) ?? boundComplaint(read, dimension, example))
      : read;
    if (!complaint) {
      const { value, text } = read as Quantity;
      return { value, text, dimension };
    }
    const { code, given: text, expected, mend } = complaint;
    context.issues.push({
      code: "custom",
      input: given,
      message: expected,
      params: { complaint: { code, given: text, expected, mend } },
    });
    return z.NEVER;
  });
  const asText = z.string({ error: () => `${quantityMark}${dimension}` });
  const schema = z.pipe(asText, asQuantity);
  quantityKinds.set(schema, { dimension, sign, about, example });
  return described(schema, `${about}. ${unitWords(dimension)}`, [example]);
}

function signComplaint(read: Quantity, sign: Sign, example: string): FieldComplaint | null {
  const bad = sign === "positive" ? read.value <= 0 : sign === "not-negative" && read.value < 0;
  if (!bad) return null;
  const expected = sign === "positive" ? "a value above zero" : "zero or a value above it";
  return {
    code: "not-positive",
    given: read.text,
    expected,
    mend: `Write the size as it is measured, for example ${example}.`,
  };
}

function boundComplaint(
  read: Quantity,
  dimension: Dimension,
  example: string,
): FieldComplaint | null {
  const size = Math.abs(read.value);
  if (size === 0 || (size >= least[dimension] && size <= greatest[dimension])) return null;
  return {
    code: "out-of-range",
    given: read.text,
    expected: "a value that can be met with on a farm",
    mend: `Check the number and its unit; ${example} is of the right kind.`,
  };
}
