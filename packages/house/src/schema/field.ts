import { type Dimension, type Quantity, readQuantity, spellingsOf } from "@hoopstay/core";
import * as z from "zod";

// A file is read once: code made for its schema would never pay.
z.config({ jitless: true });

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

/** Begins the message of a value that should have been text with a unit; the dimension follows. */
export const quantityMark = "quantity:";
/** Begins the message of an unknown key; the known ones follow. */
export const keysMark = "keys:";

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

export type Sign = "positive" | "not-negative" | "any";

/** What a quantity's field measures: for those who ask for it on a screen. */
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
  const field = z
    .string({ error: () => `${quantityMark}${dimension}` })
    .transform((given, context): Quantity => {
      const read = readQuantity(given, dimension);
      const complaint = read.ok
        ? (signComplaint(read, sign, example) ?? boundComplaint(read, dimension, example))
        : read;
      if (!complaint) return { value: (read as Quantity).value, text: (read as Quantity).text };
      const { code, given: text, expected, mend } = complaint;
      context.addIssue({
        code: "custom",
        message: expected,
        params: { complaint: { code, given: text, expected, mend } },
      });
      return z.NEVER;
    })
    .meta({
      description: `${about}. ${unitWords(dimension)}`,
      examples: [example],
    });
  quantityKinds.set(field, { dimension, sign, about, example });
  return field;
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
  if (Math.abs(read.value) <= greatest[dimension]) return null;
  return {
    code: "out-of-range",
    given: read.text,
    expected: "a value that can be met with on a farm",
    mend: `Check the number and its unit; ${example} is of the right kind.`,
  };
}

/** An object with exactly these keys; the door suggests the nearest one for any other. */
export function keys<Shape extends z.core.$ZodLooseShape>(shape: Shape, about?: string) {
  const object = z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys" ? `${keysMark}${Object.keys(shape).join(",")}` : undefined,
  });
  return about ? object.meta({ description: about }) : object;
}

/** Free text of the owner's, one line. */
export const words = (about: string) => z.string().min(1).max(200).meta({ description: about });

/** True or false, or the words yes and no, which YAML reads as text. */
export const yes = (about: string) =>
  z
    .union([z.boolean(), z.enum(["yes", "no"])])
    .transform((given) => given === true || given === "yes")
    .meta({ description: about });

export const count = (about: string, least = 1) =>
  z.int().min(least).max(1000).meta({ description: about });

/** A place in the house: across (right is plus), along (front is plus), up from the ground. */
export const place = (about: string) =>
  keys(
    {
      across: quantity("length", "across, from the middle; right is plus", "any").optional(),
      along: quantity("length", "along, from the middle; front is plus", "any").optional(),
      up: quantity("length", "above ground", "not-negative").optional(),
    },
    about,
  );
