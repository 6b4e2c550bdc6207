import { refuse } from "./common/require.ts";

/**
 * Demand over the rated value of a part that no rule here computes: screws of a lock channel, a
 * board's fixing, a clamp.
 *
 * @param demand same unit as the rating
 * @param allowable its maker's allowable value; null where none is known
 * @returns null where there is no rating: the demand is printed and nothing is checked
 * @throws Refusal `not-positive`
 */
export function ratedRatio(demand: number, allowable: number | null): number | null {
  if (allowable === null) return null;
  if (allowable > 0 && Number.isFinite(allowable)) return Math.abs(demand) / allowable;
  const mend = "Give the maker's allowable value, or leave it out.";
  return refuse("not-positive", "an allowable value above zero", allowable, mend);
}
