import { Refusal, type RefusalCode } from "@hoopstay/core";

/** Smallest and largest dimension of a part, m: beyond them a unit has been mistaken. */
const smallest = 1e-5;
const largest = 20;

/** Weakest and strongest metal, Pa: beyond them a unit has been mistaken. */
const weakest = 1e7;
const strongest = 2e9;

/** Refuses a length, m, that is not above zero or not of a size that parts of a frame have. */
export function requireLength(length: number, what: string): void {
  requirePositive(length, what);
  if (length >= smallest && length <= largest) return;
  refuse("out-of-range", `${what} between 0.01 mm and 20 m`, length, "Check its unit.");
}

/** Refuses a strength of metal, Pa, outside 10 MPa to 2000 MPa. */
export function requireStrength(strength: number, what: string): void {
  requirePositive(strength, what);
  if (strength >= weakest && strength <= strongest) return;
  refuse("out-of-range", `${what} between 10 MPa and 2000 MPa`, strength, "Check its unit.");
}

/** Refuses a count that is not a whole number from 1 to 100. */
export function requireCount(count: number, what: string): void {
  if (Number.isInteger(count) && count >= 1 && count <= 100) return;
  refuse("out-of-range", `${what}, a whole number from 1 to 100`, count, "Count them again.");
}

export function refuse(code: RefusalCode, expected: string, given: unknown, mend: string): never {
  throw new Refusal([{ code, given: String(given), expected, mend }]);
}

function requirePositive(value: number, what: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  refuse("not-positive", `${what} above zero`, value, "Measure it again.");
}
