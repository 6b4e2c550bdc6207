import { type HoldReview, type LayoutReview, measured, type Words } from "@hoopstay/core";
import { kindReviews } from "../layout/kind-review.ts";
import { layoutReview, passesAlone } from "../layout/layout-review.ts";
import { groundSummary } from "../rating/ground-summary.ts";
import { pullLog } from "../rating/pull-log.ts";
import type { Evaluation } from "../review/evaluate.ts";
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

function headlineOf(fitted: LayoutReview | null, kinds: HoldReview["kinds"]): Words {
  if (fitted?.holds) return ["What is fitted holds here, in every state."];
  const lead: Words = fitted
    ? [
        "What is fitted does not hold the design wind here: all at once it stands a gust of ",
        measured(fitted.joint.gust, "speed", 2),
        ". ",
      ]
    : ["Nothing is fitted but its own weight. "];
  const enough = kinds.find(({ every }) => every?.holds);
  if (enough?.every)
    return [...lead, `${enough.every.perRail} of ${enough.words} on each rail hold it.`];
  const ifShut = kinds.find(({ shut }) => shut?.holds);
  if (ifShut?.shut) {
    return [...lead, `Kept shut, ${ifShut.shut.perRail} of ${ifShut.words} on each rail hold it.`];
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
    headline: headlineOf(fitted, kinds),
    fitted,
    kinds,
    ballast: search ? ballastReviews(evaluation) : [],
    tow: towSummary(evaluation).summary,
    pulls: pullLog(house.anchorKinds, site),
  };
}
