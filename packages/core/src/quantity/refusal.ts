import type { RefusalCode } from "../refusal/codes.ts";
import { type Dimension, wording } from "./dimension.ts";
import { mainSpellings } from "./spelling.ts";
import { quotable } from "./typography.ts";

/** The codes a reader of quantities may refuse with. */
export const quantityCodes = [
  "not-a-number",
  "unit-missing",
  "unit-unknown",
  "wrong-dimension",
] as const satisfies readonly RefusalCode[];

export type QuantityCode = (typeof quantityCodes)[number];

/** A refusal to read: what was given, what is expected, and how to mend it, in plain words. */
export interface QuantityRefusal {
  readonly ok: false;
  readonly code: QuantityCode;
  readonly given: string;
  readonly expected: string;
  readonly mend: string;
}

function describe(given: unknown): string {
  if (typeof given === "string") return given.trim() === "" ? "an empty text" : quotable(given);
  if (given === null || given === undefined) return "nothing";
  if (Array.isArray(given)) return "a list";
  if (typeof given === "number" || typeof given === "boolean") return String(given);
  return typeof given === "object" ? "a group of values" : `a ${typeof given}`;
}

/** What can be wrong with a text: the code it is refused with, and the usual way to mend it. */
const problems = {
  empty: ["not-a-number", "Fill in a number and its unit"],
  garbled: ["not-a-number", "Write one number in figures first, then its unit"],
  "out of reach": ["not-a-number", "Write a number of a size that can be built"],
  "two signs": ["not-a-number", "Write one sign only, in front of the number"],
  comma: [
    "not-a-number",
    "A comma may mean thousands or decimals. Write decimals with a point (1.5) and thousands " +
      "without a comma (1500)",
  ],
  trailing: ["not-a-number", "Write the number and its unit, and nothing after them"],
  "feet and inches": [
    "not-a-number",
    "Write whole feet and less than 12 inches, or one of them alone",
  ],
  bare: ["unit-missing", "Write the unit after the number"],
  unknown: ["unit-unknown", "Use one of the units listed"],
  foreign: ["wrong-dimension", "Use one of the units listed"],
} as const satisfies Record<string, readonly [QuantityCode, string]>;

export type Problem = keyof typeof problems;

/** Builds a refusal; `mend` is a sentence without its full stop. */
export function refuseQuantity(
  given: unknown,
  dimension: Dimension,
  problem: Problem,
  mend: string = problems[problem][1],
): QuantityRefusal {
  const { noun, example } = wording[dimension];
  const list = mainSpellings(dimension).join(", ");
  return {
    ok: false,
    code: problems[problem][0],
    given: describe(given),
    expected: `${noun}, such as ${example} (units: ${list})`,
    mend: `${mend}.`,
  };
}
