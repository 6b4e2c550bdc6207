import { type Measure, type Step, significant } from "@hoopstay/core";

const digits = 6;
const word = /[A-Za-z_]\w*|\d+(?:\.\d+)?(?:e[+-]?\d+)?|[*-]/g;

/** An SI number to the figures of the working; never with a grouping sign. */
export function workingNumber(value: number): string {
  if (value === Number.POSITIVE_INFINITY) return "no limit";
  return Number.isFinite(value) ? significant(value, digits).replace("-", "\u2212") : "none";
}

/** What is left of forces and moments that cancel, N and N m, differs from one machine to the next. */
const rounding = 1e-9;

export const withoutRounding = (value: number, measure: Measure): number =>
  (measure === "force" || measure === "moment") && Math.abs(value) < rounding ? 0 : value;

/** The step's formula with its numbers in place of its symbols, in SI; nothing for a constant. */
export function withNumbers({ formula, inputs }: Step): string {
  if (formula.arguments.length === 0) return "";
  const values = new Map(
    formula.arguments.map(({ symbol, measure }, place) => [
      symbol,
      withoutRounding(inputs[place] as number, measure),
    ]),
  );
  const filled = formula.expression.replace(word, (found) => {
    const value = values.get(found);
    if (value !== undefined) return value < 0 ? `(${workingNumber(value)})` : workingNumber(value);
    if (found === "*") return "\u00b7";
    if (found === "-") return "\u2212";
    return /^\d/.test(found) ? workingNumber(Number(found)) : found;
  });
  return filled.replace(/\((\(\u2212[\d.e\u2212]+\))\)/g, "$1");
}
