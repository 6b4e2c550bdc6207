import type { LimitState, NotCovered } from "../connection/common/strength.ts";
import type { Worksheet } from "../connection/common/worksheet.ts";
import type { FactorPair } from "./resistance-factors.ts";

/** What a member can take in one way, N or N m: its lowest limit state, named in words. */
export interface Strength extends LimitState {
  readonly covered: true;
}

/** A strength, or that the rules do not reach so far and what would. */
export type MemberStrength = Strength | NotCovered;

/** A strength out of its nominal value, by the factors of its limit state. */
export function strengthBy(
  factors: FactorPair,
  [id, name]: readonly [id: string, name: string],
  nominal: number,
  sheet: Worksheet,
): Strength {
  const ASD = sheet.work(factors.allowable, [nominal], { note: name });
  const LRFD = sheet.work(factors.design, [nominal], { note: name });
  return { covered: true, id, name, measure: factors.measure, nominal, ASD, LRFD };
}

/** The strength that decides in allowable strength design; the lower design strength of both. */
export function lowerStrength(one: Strength, other: Strength): Strength {
  const low = other.ASD < one.ASD ? other : one;
  return { ...low, LRFD: Math.min(one.LRFD, other.LRFD) };
}

export const notCovered = (id: string, reason: string, mend: string): NotCovered => ({
  covered: false,
  id,
  reason,
  mend,
});
