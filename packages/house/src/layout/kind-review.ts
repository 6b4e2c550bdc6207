import { type KindReview, measured, type Words } from "@hoopstay/core";
import type { AnchorKind } from "../model/anchor-kind.ts";
import { basisWords, type Rating, rateKind } from "../rating/rating.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { closedStateOf } from "../storm-ladder/state-gusts.ts";
import type { Assessment } from "./assess-layout.ts";
import { countSearch, type KindResult, type Offer } from "./count-search.ts";
import type { HoldDownKind } from "./layout.ts";
import { stiffnessOf } from "./layout-review.ts";
import { offeredLayout } from "./offered-layout.ts";

const upright = Math.PI / 2 - 1e-9;

/** Least distance between anchors of a kind: five plate diameters, or the body's own length. */
function leastSpacing({ body, breadth }: AnchorKind): number {
  if (breadth !== null) return 5 * breadth;
  switch (body.kind) {
    case "deadman":
      return body.length;
    case "block":
      return body.block.width;
    case "stake":
      return 5 * body.shaft.diameter;
    default:
      return 1;
  }
}

const holdDownKind = (rating: Rating, allowable: number): HoldDownKind => ({
  id: rating.kind.id,
  words: rating.kind.words,
  allowable,
  angle: rating.angle,
  lead: rating.angle >= upright ? "upright" : rating.kind.lead,
  stiffness: stiffnessOf(rating, allowable),
  leastSpacing: leastSpacing(rating.kind),
});

function failWords({ by, ratio }: Assessment): string {
  if ("check" in by) return `it would ${checkWords[by.check].verb}`;
  if ("outcome" in by) return `the ${by.side} rail is not held`;
  return `anchor ${by.anchor.name} would be pulled to ${(ratio ?? 0).toFixed(2)} of what it may`;
}

function offerRemarks({ fewer, moreFails, doubleEnds, count }: Offer): Words[] {
  const remarks: Words[] = [];
  if (fewer) remarks.push([`${count - 1} on each rail are not enough: ${failWords(fewer)}.`]);
  if (moreFails) {
    remarks.push([
      `${count + 1} on each rail would not hold, though fewer do: ${failWords(moreFails)}.`,
    ]);
  }
  if (doubleEnds) {
    remarks.push([
      "With one missing an end anchor would be pulled to over 1.5 times what it may: set a second one at each rail end.",
    ]);
  }
  return remarks;
}

function shortWords(result: KindResult): Words | null {
  if (result.outcome === "offered") return null;
  if (result.outcome === "no-room") {
    return ["The rails are too short for two of them at their least distance."];
  }
  const { most } = result;
  if (most.ratio === null) return [`Even ${most.count} on each rail do not hold it.`];
  return [
    `Even ${most.count} on each rail fall short by a factor of `,
    measured(most.ratio, "ratio", 3),
    `: ${failWords(most)}.`,
  ];
}

/** Every kind of anchor of the house on this ground, and the fewest of each that hold. */
export function kindReviews(evaluation: Evaluation, search: boolean): KindReview[] {
  const { house, site } = evaluation;
  const ratings = house.anchorKinds.map((kind) => rateKind(kind, site, kind.angle));
  const rated = ratings.flatMap((rating) =>
    rating.allowable === null ? [] : [holdDownKind(rating, rating.allowable)],
  );
  const every = evaluation.states.map(({ state }) => state.id);
  const shut = [closedStateOf(evaluation).state.id];
  const searched = search && rated.length > 0;
  const inEvery = searched ? countSearch(evaluation, rated).kinds : [];
  const inShut = searched ? countSearch(evaluation, rated, shut).kinds : [];
  const layoutOf = (results: readonly KindResult[], rating: Rating, states: readonly string[]) => {
    const found = results.find(({ kind }) => kind.id === rating.kind.id);
    return found?.outcome === "offered"
      ? offeredLayout(evaluation, found, rating, states, offerRemarks(found))
      : null;
  };
  return ratings.map((rating): KindReview => {
    const { kind, allowable, governs, reason, notChecked, findings, angle } = rating;
    const result = inEvery.find((one) => one.kind.id === kind.id);
    return {
      id: kind.id,
      words: kind.words,
      basis: basisWords(rating, site),
      allowable,
      governs,
      reason,
      notChecked,
      findings,
      angle,
      lead:
        angle >= upright
          ? "straight down"
          : { out: "out", in: "in", front: "to the front", back: "to the back" }[kind.lead],
      every: layoutOf(inEvery, rating, every),
      shut: layoutOf(inShut, rating, shut),
      short: result ? shortWords(result) : null,
    };
  });
}
