import { Refusal, type RefusalCode } from "@hoopstay/core";
import { KSI } from "../connection/common/customary.ts";
import { exceeds } from "../connection/common/exceeds.ts";

/** Yield and tensile strength of a mill certificate, Pa; null where it tells none. */
export interface MillValues {
  readonly yield: number | null;
  readonly tensile: number | null;
}

/** Steel of tube, bar and plate, ksi: beyond them a unit has been mistaken. */
const yieldRange = [20, 110] as const;
const tensileRange = [30, 150] as const;

/**
 * Refuses mill values that no steel has.
 *
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree`
 */
export function refuseMillValues(mill: MillValues): void {
  within("yield strength", mill.yield, yieldRange);
  within("tensile strength", mill.tensile, tensileRange);
  if (mill.yield === null || mill.tensile === null || mill.yield <= mill.tensile) return;
  refuse("sizes-disagree", "a yield strength up to the tensile strength", mill.yield);
}

function within(name: string, value: number | null, range: readonly [number, number]): void {
  if (value === null) return;
  const [low, high] = range;
  if (!(value > 0)) refuse("not-positive", `a ${name} above zero`, value);
  if (!exceeds(low * KSI, value) && !exceeds(value, high * KSI)) return;
  refuse("out-of-range", `a ${name} from ${low} to ${high} ksi`, value);
}

function refuse(code: RefusalCode, expected: string, given: number): never {
  const mend = "Read the mill certificate again, and its unit.";
  throw new Refusal([{ code, given: String(given), expected, mend }]);
}
