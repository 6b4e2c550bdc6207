import { type HoldReview, type LayoutReview, speedLimit, type Words } from "@hoopstay/core";
import { kindReviews } from "../layout/kind-review.ts";
import { layoutReview, passesAlone } from "../layout/layout-review.ts";
import { groundSummary } from "../rating/ground-summary.ts";
import { pullLog } from "../rating/pull-log.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
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

function headlineOf(
  evaluation: Evaluation,
  fitted: LayoutReview | null,
  kinds: HoldReview["kinds"],
): Words {
  if (fitted?.holds) return ["What is fitted holds here, in every state."];
  const first = lowest(evaluation.states.map((one) => stateGust(evaluation, one, "fitted")));
  const lead: Words =
    fitted && first
      ? [
          "What is fitted does not hold the design wind here in every state: it stands a gust of ",
          speedLimit(first.gust),
          ` (${first.state.words}, it ${checkWords[first.check].begins}). `,
        ]
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
    lowestJoint(evaluation, states, last, site.combination).factor >= 1;
  return {
    holds: fitted ? fitted.holds : alone,
    ground: groundSummary(site),
    headline: headlineOf(evaluation, fitted, kinds),
    fitted,
    kinds,
    ballast: search ? ballastReviews(evaluation) : [],
    tow: towSummary(evaluation).summary,
    pulls: pullLog(house.anchorKinds, site),
  };
}
