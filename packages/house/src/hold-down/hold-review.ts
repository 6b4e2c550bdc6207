import { type HoldReview, type LayoutReview, speedLimit, type Words } from "@hoopstay/core";
import { kindReviews } from "../layout/kind-review.ts";
import { failingLeast, layoutReview, passesAlone } from "../layout/layout-review.ts";
import { groundSummary } from "../rating/ground-summary.ts";
import { pullLog } from "../rating/pull-log.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { layoutLimit } from "../storm-ladder/layout-gust.ts";
import { lowest, stateGust } from "../storm-ladder/state-gusts.ts";
import { lowestJoint } from "../together/joint.ts";
import { ballastReviews } from "./ballast-search.ts";
import { towSummary } from "./tow.ts";

/** Anchors that no test, theory or class rates: they are there, and count nothing. */
function unratedRemarks({ house, ratings }: Evaluation): Words[] {
  const reasons = new Map<string, string[]>();
  ratings.forEach((rating, index) => {
    if (!rating || rating.allowable !== null) return;
    const why = rating.reason ?? "not rated";
    reasons.set(why, [...(reasons.get(why) ?? []), house.anchors[index]?.name ?? ""]);
  });
  return [...reasons].map(([why, names]) => [`Not counted: ${names.join(", ")}. ${why}`]);
}

/** What is fitted and does not do: the lowest gust of any state, and what gives way at it. */
function fittedWords(evaluation: Evaluation, fitted: LayoutReview): Words {
  if (fitted.holds) {
    return ["What is fitted holds the wind here, but not the standard's least load. "];
  }
  const first = lowest(evaluation.states.map((one) => stateGust(evaluation, one, "fitted")));
  const limit = layoutLimit(fitted, evaluation);
  const lead = "What is fitted does not hold the wind here in every state: it stands a gust of ";
  if (first && first.gust <= limit.gust) {
    const begins = `${first.state.words}, it ${checkWords[first.check].begins}`;
    return [lead, speedLimit(first.gust), ` (${begins}). `];
  }
  const why = fitted.held ? "then an anchor is overloaded" : "then a rail is no longer held";
  return [lead, speedLimit(limit.gust), `; ${why}. `];
}

function headlineOf(
  evaluation: Evaluation,
  fitted: LayoutReview | null,
  kinds: HoldReview["kinds"],
): Words {
  if (fitted?.holds && fitted.carriesLeast) return ["What is fitted holds here, in every state."];
  const lead: Words = fitted
    ? fittedWords(evaluation, fitted)
    : ["Nothing is fitted but its own weight. "];
  const enough = kinds.find(({ every }) => every?.holds);
  if (enough?.every)
    return [...lead, `${enough.words}: ${enough.every.perRail} on each rail hold it.`];
  const ifShut = kinds.find(({ shut }) => shut?.holds);
  if (ifShut?.shut) {
    return [...lead, `Kept shut, ${ifShut.words}: ${ifShut.shut.perRail} on each rail hold it.`];
  }
  return [
    ...lead,
    "No kind of anchor listed and rated holds it here by itself; see what falls short.",
  ];
}

/** Everything about holding this house on this ground. `search` looks for layouts and ballast too. */
export function holdReview(
  evaluation: Evaluation,
  { search }: { readonly search: boolean },
): HoldReview {
  const { house, site, states } = evaluation;
  const fitted =
    house.anchors.length > 0
      ? layoutReview(evaluation, states, new Map(), unratedRemarks(evaluation))
      : null;
  const kinds = kindReviews(evaluation, search);
  const last = states.flatMap(({ set }) => set.holds.at(-1)?.id ?? [])[0] ?? "bare";
  const alone =
    passesAlone(evaluation, states, last) &&
    failingLeast(evaluation, states, last).length === 0 &&
    lowestJoint(evaluation, states, last, site.combination).factor >= 1;
  return {
    holds: fitted ? fitted.holds && fitted.carriesLeast : alone,
    ground: groundSummary(site),
    headline: headlineOf(evaluation, fitted, kinds),
    fitted,
    kinds,
    ballast: search ? ballastReviews(evaluation) : [],
    tow: towSummary(evaluation).summary,
    pulls: pullLog(house.anchorKinds, site),
  };
}
