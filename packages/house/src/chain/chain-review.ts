import {
  type ChainReview,
  type Chapter,
  type LinkCheck,
  type LinkId,
  type LinkInState,
  type LinkSummary,
  linkIds,
} from "@hoopstay/core";
import type { EvaluatedState, Evaluation, LoadSet } from "../review/evaluate.ts";
import { greaterFirst } from "../review/greater-first.ts";
import { setLetters } from "../review/summaries.ts";
import { chainChapters } from "../working/chain-chapters.ts";
import { chainAnswer, tieRemark, wholeHouse } from "./chain-answer.ts";
import { chainRows } from "./chain-rows.ts";
import { chainContext } from "./context.ts";
import { drawnHoop } from "./drawing/drawn-hoop.ts";
import { drawnRail } from "./drawing/drawn-rail.ts";
import { grouped } from "./grouped.ts";
import { strongestPressure } from "./limit.ts";
import type { LinkRow } from "./link.ts";
import { linkCheck } from "./link-check.ts";
import { linkWords } from "./link-words.ts";
import { type RatedRow, worstRow } from "./row-rater.ts";
import { RowRating } from "./row-rating.ts";

/** The first state of every load set, in the order of the states. */
function firstStates({ states }: Evaluation): Map<LoadSet, EvaluatedState> {
  const first = new Map<LoadSet, EvaluatedState>();
  for (const state of states) if (!first.has(state.set)) first.set(state.set, state);
  return first;
}

/** The lower gust first, of like ones the greater ratio. */
const weakerFirst = (a: LinkCheck, b: LinkCheck): number =>
  greaterFirst(b.workingGust, a.workingGust) || greaterFirst(a.ratio.ASD, b.ratio.ASD);

const isWeaker = (a: LinkCheck, b: LinkCheck): boolean => weakerFirst(a, b) < 0;

/** Ties that fail leave the hoops without them, and those are rated too. */
const counts = (id: LinkId): boolean => id !== "ties";

/** The load path of a house, and its working. */
export interface ChainOf {
  readonly review: ChainReview;
  /** Made on demand: from here, so that a check alone does not read how it is made. */
  readonly chapters: () => Chapter[];
}

/**
 * The load path of a house at a site, ranked: what goes first, in every state.
 *
 * @param detail whether each link is also told by direction of the wind and by part
 */
export function chainOf(evaluation: Evaluation, detail = true): ChainOf {
  const context = chainContext(evaluation);
  const made = chainRows(context);
  const rated = new RatedLinks(evaluation, detail);
  const byLink = grouped(made.rows, ({ link }) => link);
  const links = linkIds
    .flatMap((id) => rated.link(id, byLink.get(id) ?? []))
    .toSorted((a, b) => weakerFirst(a.summary.worst.check, b.summary.worst.check));
  const summaries = links.map(({ summary }) => summary);
  const counted = summaries.filter(({ id }) => counts(id));
  const states = rated.states(counted);
  const review: ChainReview = {
    answer: [...chainAnswer(counted), ...wholeHouse(evaluation)],
    links: summaries,
    notChecked: made.notChecked,
    findings: [...tieRemark(summaries), ...made.findings],
    states,
    holds: states.length === evaluation.states.length && states.every(({ holds }) => holds),
    hoop: drawnHoop(context),
    rail: drawnRail(context),
  };
  const weakest = links.map(({ rated, summary }) => ({ rated, state: summary.worst.state }));
  return { review, chapters: () => chainChapters(evaluation, weakest) };
}

/** The same without each link's directions and parts: for houses that are compared. */
export const chainReview = (evaluation: Evaluation): ChainReview =>
  chainOf(evaluation, false).review;

/** Rates the rows of links in every state. */
class RatedLinks {
  /** K_d q_h beyond which no wind blows, Pa. */
  private readonly most: number;
  private readonly letters: ReadonlyMap<LoadSet, string>;
  private readonly first: ReadonlyMap<LoadSet, EvaluatedState>;

  constructor(
    private readonly evaluation: Evaluation,
    private readonly detail: boolean,
  ) {
    this.most = strongestPressure(evaluation);
    this.letters = setLetters(evaluation);
    this.first = firstStates(evaluation);
  }

  /** A link over all states, with the row that gives way first; none without rows. */
  link(id: LinkId, rows: readonly LinkRow[]): { summary: LinkSummary; rated: RatedRow }[] {
    const ratings = rows.map((row) => new RowRating(row, this.evaluation.pressure));
    const inStates = [...this.first.keys()].flatMap((set) => {
      const here = ratings.filter(({ row }) => row.windCase.sets.has(set));
      const rated = worstRow(here, this.most);
      return rated ? [{ rated, inState: this.inState(rated, set) }] : [];
    });
    if (inStates.length === 0) return [];
    const states = inStates.map(({ inState }) => inState);
    const { rated, inState: worst } = inStates.reduce((a, b) =>
      isWeaker(b.inState.check, a.inState.check) ? b : a,
    );
    const about = { id, words: linkWords[id], worst, states };
    if (!this.detail) return [{ rated, summary: { ...about, directions: [], parts: [] } }];
    const directions = this.worstBy(ratings, ({ windCase }) => windCase.direction).map(
      ([direction, { check }]) => ({ direction, check }),
    );
    const single = rows.every(({ part }) => part === rows[0]?.part);
    const parts = single
      ? [worst]
      : this.worstBy(ratings, ({ part }) => part)
          .map(([, part]) => part)
          .toSorted((a, b) => weakerFirst(a.check, b.check));
    return [{ rated, summary: { ...about, directions, parts } }];
  }

  /** The first link to go in every state. */
  states(links: readonly LinkSummary[]): ChainReview["states"] {
    const { states, site } = this.evaluation;
    return states.flatMap(({ state, set }) => {
      const words = this.first.get(set)?.state.words;
      const here = links.flatMap((link) => link.states.filter((one) => one.state === words));
      if (here.length === 0) return [];
      const own = {
        id: state.id,
        words: state.words,
        now: state.id === site.now,
        first: here.reduce((a, b) => (isWeaker(b.check, a.check) ? b : a)).check,
        holds: here.every(
          ({ check }) => check.codeSpeed[site.combination] >= site.mapSpeed * (1 - 1e-12),
        ),
      };
      return [own];
    });
  }

  private worstBy(ratings: readonly RowRating[], keyOf: (row: LinkRow) => string) {
    return [...grouped(ratings, ({ row }) => keyOf(row))].map(
      ([key, some]) => [key, this.inState(worstRow(some, this.most) as RatedRow)] as const,
    );
  }

  /** A rated row in a load set, or in the first one in which it stands. */
  private inState(rated: RatedRow, asked?: LoadSet): LinkInState {
    const stands = (set: LoadSet): boolean => rated.row.windCase.sets.has(set);
    const set = asked ?? [...this.first.keys()].find(stands);
    if (!set) throw new Error("a row of the load path stands in no state");
    const state = this.first.get(set)?.state.words ?? "";
    return { state, check: linkCheck(this.evaluation, rated, set, this.letters) };
  }
}
