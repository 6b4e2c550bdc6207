import { type HoldReview, speedLimit, type Words } from "@hoopstay/core";
import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { layoutGust } from "./layout-gust.ts";
import { type StateGust, stateGust } from "./state-gusts.ts";

/** What a state stands as it is held now, m/s: the lowest of what is known. */
export interface HeldGust extends StateGust {
  /** Working gust of the single checks alone. */
  readonly byChecks: number;
  /** Half a sentence: what gives way, at what gust. */
  readonly givesWay: Words;
}

/** A reader of what each state of a house stands with the anchors and ballast that are fitted. */
export function heldGusts(
  evaluation: Evaluation,
  hold: HoldReview,
): (one: EvaluatedState) => HeldGust {
  const held = evaluation.holds.at(-1);
  if (!held) throw new Error("nothing holds the house");
  const limit = hold.fitted ? layoutGust(hold.fitted, evaluation) : Number.POSITIVE_INFINITY;
  return (one) => {
    const found = stateGust(evaluation, one, held.id);
    const { state, check, gust } = found;
    if (limit < gust) {
      const givesWay: Words = [
        `${state.words}: in its worst state an anchor reaches what is allowed at a gust of `,
        speedLimit(limit),
      ];
      return { ...found, gust: limit, byChecks: gust, givesWay };
    }
    const givesWay: Words = [
      `${state.words}, ${held.words}: it ${checkWords[check].begins} at a gust of `,
      speedLimit(gust),
    ];
    return { ...found, byChecks: gust, givesWay };
  };
}
