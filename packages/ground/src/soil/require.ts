import { Refusal, type RefusalCode } from "@hoopstay/core";

/** Refuses a size that is not a number above zero. */
export function requirePositive(value: number, what: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  refuse("not-positive", `${what} above zero`, value, "Measure it again.");
}

/** Refuses a length that is not above zero, or not of a size that anchors have: 1 mm to 100 m. */
export function requireSize(length: number, what: string): void {
  requirePositive(length, what);
  const mend = "Check its unit.";
  requireWithin(length, [0.001, 100], `${what} in m`, mend, "out-of-range");
}

/** Refuses a value outside a closed range; `mend` says what is left to do. */
export function requireWithin(
  value: number,
  range: readonly [low: number, high: number],
  what: string,
  mend: string,
  code: RefusalCode = "ground-outside",
): void {
  // An edge read from text may miss by rounding; nothing is moved to the edge.
  const [low, high] = range;
  if (value >= low - 1e-9 * Math.abs(low) && value - high <= 1e-9 * Math.abs(high)) return;
  refuse(code, `${what} from ${range[0]} to ${range[1]}`, value, mend);
}

export function refuse(code: RefusalCode, expected: string, given: unknown, mend: string): never {
  throw new Refusal([{ code, given: String(given), expected, mend }]);
}
