import type { ChainReview, FoundDesign } from "@hoopstay/core";
import { linkWords } from "../chain/link-words.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { lowestState } from "../storm-ladder/state-gusts.ts";

/** What a design stands. */
export type ExactGust = Pick<FoundDesign, "gust" | "whole" | "link">;

/** The lowest working gust of any state by every check there is: as a whole, and of the links. */
export function exactGust(evaluation: Evaluation, chain: ChainReview): ExactGust {
  const whole = lowestState(evaluation);
  const { first, words } = chain.states.reduce((a, b) =>
    b.first.workingGust < a.first.workingGust ? b : a,
  );
  if (!whole) throw new Error("a house without states");
  return {
    gust: Math.min(whole.gust, first.workingGust),
    whole: {
      gust: whole.gust,
      words: `it would ${checkWords[whole.check].verb}, ${whole.state.words}`,
    },
    link: {
      gust: first.workingGust,
      words: `${linkWords[first.link]}: ${first.part}; ${words}`,
    },
  };
}
