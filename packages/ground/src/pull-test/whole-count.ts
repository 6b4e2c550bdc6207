import { Refusal } from "@hoopstay/core";

/** Refuses what is no whole number from 1. */
export function requireWholeCount(value: number, what: string): void {
  if (Number.isInteger(value) && value >= 1) return;
  const expected = `a whole number of ${what}, 1 or more`;
  const mend = "Count them.";
  throw new Refusal([{ code: "out-of-range", given: String(value), expected, mend }]);
}
