import type { ChainReview, FoundDesign } from "@hoopstay/core";
import { linkWords } from "../chain/link-words.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { lowest, stateGust } from "../storm-ladder/state-gusts.ts";

/** The lowest working gust of any state, m/s, and what gives way at it, by every check there is. */
export function exactGust(
  evaluation: Evaluation,
  chain: ChainReview,
): Pick<FoundDesign, "gust" | "first"> {
  const hold = evaluation.holds.at(-1)?.id ?? "bare";
  const whole = lowest(evaluation.states.map((state) => stateGust(evaluation, state, hold)));
  const { first, words } = chain.states.reduce((a, b) =>
    b.first.workingGust < a.first.workingGust ? b : a,
  );
  if (whole && whole.gust <= first.workingGust) {
    const { verb } = checkWords[whole.check];
    return { gust: whole.gust, first: `it would ${verb}, ${whole.state.words}` };
  }
  return {
    gust: first.workingGust,
    first: `${linkWords[first.link]}: ${first.part}; ${words}`,
  };
}
