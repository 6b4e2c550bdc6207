import {
  type BaseLine,
  baseLines,
  type CheckTerms,
  type CombinationId,
  checkTerms,
  combinations,
  type Holding,
  type Weight,
} from "@hoopstay/stability";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { withBallast } from "../take-off/take-off.ts";

/** Weight alone, or with the anchors and ballast fitted. */
export type HoldId = "bare" | "fitted";

/** What holds the house in one arrangement, ready for every check. */
export interface Hold {
  readonly id: HoldId;
  readonly words: string;
  readonly holdings: readonly Holding[];
  readonly lines: readonly BaseLine[];
  readonly terms: Readonly<Record<CombinationId, CheckTerms>>;
}

/** Weight alone, and as fitted where anything is fitted. */
export function holdsOf(
  house: House,
  site: Site,
  weights: readonly [Weight, Weight],
  pressure: number,
): Hold[] {
  const hold = (id: HoldId, words: string, fitted: boolean): Hold => {
    const anchors = fitted ? house.anchors : [];
    const estimates = weights.map((weight) => (fitted ? withBallast(weight, house) : weight));
    const holdings = estimates.map(
      (weight): Holding => ({ weight, anchors, slope: site.slope, friction: site.friction }),
    );
    const { rail } = house;
    const bearing = {
      halfSpan: house.lines.span / 2,
      front: rail.front,
      back: rail.back,
      railWidth: rail.width,
      allowable: site.bearing,
    };
    const low = holdings[0]?.weight.W ?? 0;
    const lines = baseLines(bearing, low, anchors.length > 0);
    const [forAsd, forLrfd] = combinations.map((combination) =>
      checkTerms(holdings, lines, combination, pressure),
    ) as [CheckTerms, CheckTerms];
    return { id, words, holdings, lines, terms: { ASD: forAsd, LRFD: forLrfd } };
  };
  const bare = hold("bare", "by its own weight", false);
  const fixed = house.ballast.some((block) => block.fixed);
  if (house.anchors.length === 0 && !fixed) return [bare];
  const anchored = house.anchors.length > 0;
  const words = anchored && fixed ? "anchors and ballast" : anchored ? "anchors" : "ballast";
  return [bare, hold("fitted", `with the ${words} fitted`, true)];
}
