import { type HoldReview, speedLimit, type Words } from "@hoopstay/core";
import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { type LayoutLimit, layoutLimit } from "./layout-gust.ts";
import { type StateGust, stateGust } from "./state-gusts.ts";

/** What a state stands as it is held now, m/s: the lowest of what is known. */
export interface HeldGust extends StateGust {
  /** Working gust of the single checks alone. */
  readonly byChecks: number;
  /** Half a sentence: what gives way, at what gust. */
  readonly givesWay: Words;
}

const limitWords: Readonly<Record<LayoutLimit["why"], string>> = {
  overloaded: "in its worst state an anchor reaches what is allowed at",
  "rail not held": "in its worst state its anchors no longer hold a rail beyond",
  "checked up to it": "its anchors and rails are checked, in the wind of the site file, up to",
  "no anchors": "nothing is known beyond",
};

/** A reader of what each state of a house stands with the anchors and ballast that are fitted. */
export function heldGusts(
  evaluation: Evaluation,
  hold: HoldReview,
): (one: EvaluatedState) => HeldGust {
  const held = evaluation.holds.at(-1);
  if (!held) throw new Error("nothing holds the house");
  const limit: LayoutLimit = hold.fitted
    ? layoutLimit(hold.fitted, evaluation)
    : { gust: Number.POSITIVE_INFINITY, why: "no anchors" };
  return (one) => {
    const found = stateGust(evaluation, one, held.id);
    const { state, check, gust } = found;
    if (limit.gust < gust) {
      const givesWay: Words = [
        `${state.words}: ${limitWords[limit.why]} a gust of `,
        speedLimit(limit.gust),
      ];
      return { ...found, gust: limit.gust, byChecks: gust, givesWay };
    }
    const givesWay: Words = [
      `${state.words}, ${held.words}: it ${checkWords[check].begins} at a gust of `,
      speedLimit(gust),
    ];
    return { ...found, byChecks: gust, givesWay };
  };
}
