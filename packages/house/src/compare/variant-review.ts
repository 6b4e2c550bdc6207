import {
  type ChainReview,
  type CutList,
  measured,
  type StateSummary,
  type VariantReview,
  type Words,
} from "@hoopstay/core";
import { linkWords } from "../chain/link-words.ts";
import { kindReviews } from "../layout/kind-review.ts";
import type { House } from "../model/house-model.ts";
import type { BarPart } from "../model/part.ts";
import { drawingsOf } from "../review/drawings.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { setLetters, stateSummary } from "../review/summaries.ts";
import { checkWords, type SummaryId } from "../review/words.ts";
import { type GoverningPlace, worstPlaces } from "../review/worst-places.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import { bendingOf } from "./bending.ts";
import { costOf } from "./cost.ts";
import { fitFindings } from "./fit-findings.ts";
import { pullToMove } from "./pull-to-move.ts";
import type { VariantChange } from "./read-variant.ts";
import { steelWeight } from "./steel-weight.ts";
import { cutListOf } from "./stock/cut-lists.ts";
import { tubeGroups } from "./stock/house-pieces.ts";
import type { PriceList } from "./stock/price-list.ts";
import { shortStickWords } from "./stock/short-sticks.ts";

/** A house to be set beside others, and what was worked out of it. */
export interface ComparedHouse {
  readonly name: string;
  readonly changes: readonly VariantChange[];
  readonly input: HouseInput;
  readonly evaluation: Evaluation;
  readonly chain: ChainReview;
}

const hoopLengthOf = ({ parts }: House): number =>
  parts.find((part): part is BarPart => part.kind === "bar" && part.what === "hoops")?.length ?? 0;

/** Sticks to buy of every tube, joints where hoop and rail bend little; what is odd about the sticks. */
function cutListsOf(
  house: House,
  input: HouseInput,
  chain: ChainReview,
  prices: PriceList,
): { readonly cuts: CutList[]; readonly odd: Words[] } {
  const bending = bendingOf(chain, hoopLengthOf(house), house.rail.length);
  const made = tubeGroups(house, input).map((group) => ({
    group,
    cut: cutListOf(group, prices, bending),
  }));
  return {
    cuts: made.map(({ cut }) => cut),
    odd: made.flatMap(({ group, cut }) => shortStickWords(group, cut)),
  };
}

/** Fewest anchors of every kind that hold it in every state; kinds that nothing rates hold none. */
const anchorsNeeded = (evaluation: Evaluation): VariantReview["anchors"] =>
  kindReviews(evaluation, true).map(({ words, every }) => ({
    kind: words,
    perRail: every?.holds ? every.perRail : null,
  }));

function heldStates(evaluation: Evaluation): StateSummary[] {
  const letters = setLetters(evaluation);
  return evaluation.states.map((one) => {
    const hold = one.set.holds.at(-1);
    if (!hold) throw new Error("nothing holds the house");
    return stateSummary(evaluation, one, hold, letters.get(one.set) ?? "", "first");
  });
}

/** The first clause of why something was not checked. */
const shortly = (why: string): string => why.split(/[;:(]|\. /)[0]?.trim() ?? "";

/** What the first link to go is not chosen from; beside a number of the same link, what of it. */
function uncheckedWords({ links, notChecked }: ChainReview): Words[] {
  if (notChecked.length === 0) return [];
  const rated = new Set(links.map(({ id }) => id));
  const named = notChecked.map(({ link, words, why }) =>
    rated.has(link) ? `${words} (${shortly(why)})` : words,
  );
  const names = [...new Set(named)].join("; ");
  return [[`Not checked, so it may go before the first link named: ${names}.`]];
}

const sawWords = ({ sawCut, sawCutAssumed }: PriceList): Words[] =>
  sawCutAssumed
    ? [["Saw cuts of ", measured(sawCut, "length"), " are assumed: enter prices.saw_cut."]]
    : [];

/** One column of the comparison. */
export function variantReview(
  { name, changes, input, evaluation, chain }: ComparedHouse,
  today: House,
  prices: PriceList,
): VariantReview {
  const { house, takeOff } = evaluation;
  const summaries = heldStates(evaluation);
  const { cuts, odd } = cutListsOf(house, input, chain, prices);
  const lift = worstPlaces(evaluation)[0] as GoverningPlace;
  const states = chain.states.map(({ id, words, first }) => {
    const whole = summaries.find((state) => state.id === id) as StateSummary;
    return {
      id,
      words,
      whole: {
        gust: whole.first.workingGust,
        words: checkWords[whole.first.check as SummaryId].verb,
      },
      link: { gust: first.workingGust, words: linkWords[first.link] },
    };
  });
  const first = chain.states.reduce((a, b) => (b.first.workingGust < a.first.workingGust ? b : a));
  const said: Words[] = [
    ...house.findings.map((words) => [words]),
    ...fitFindings(house, today),
    ...odd,
  ];
  return {
    name,
    changes,
    weight: { low: takeOff.low.W, high: takeOff.high.W },
    steel: steelWeight(house, takeOff),
    cuts,
    cost: costOf(house, cuts, prices),
    pull: pullToMove(evaluation),
    anchors: anchorsNeeded(evaluation),
    first: { state: first.words, words: linkWords[first.first.link], check: first.first },
    states,
    holds: chain.holds && summaries.every(({ holds }) => holds),
    drawings: drawingsOf(evaluation, lift.state.set, lift.governing.byRatio.caseIndex),
    findings: [...said, ...uncheckedWords(chain), ...sawWords(prices)],
  };
}
