import type { LayoutReview, Words } from "@hoopstay/core";
import type { FittedAnchor } from "../model/house-model.ts";
import type { Rating } from "../rating/rating.ts";
import { type Evaluation, evaluate } from "../review/evaluate.ts";
import { lowestJoint } from "../together/joint.ts";
import type { Offer } from "./count-search.ts";
import { anchorsAt, countsAt, equalPlaces, fittedAnchors } from "./layout.ts";
import { layoutReview, passesAlone } from "./layout-review.ts";

/** How many more than hold it down are tried against sliding and everything at once. */
const mostMore = 8;

/**
 * The same anchors with the outermost of each rail led along the ridge, away from the house: they
 * hold down as much as before, and against a slide along it besides.
 */
export function endsAlongRidge(anchors: readonly FittedAnchor[]): FittedAnchor[] {
  const places = anchors.map(({ y }) => y);
  const [back, front] = [Math.min(...places), Math.max(...places)];
  return anchors.map((anchor) => {
    const [x, y, down] = anchor.toward;
    if (anchor.y !== back && anchor.y !== front) return anchor;
    const level = Math.hypot(x, y);
    return { ...anchor, toward: [0, anchor.y === front ? level : -level, down] };
  });
}

interface Planned {
  readonly evaluation: Evaluation;
  readonly count: number;
  /** Holds against sliding and all at once too. */
  readonly whole: boolean;
}

/** The first layout from the offered count on that passes everything; else the offered one. */
function plannedLayout(
  { house, site }: Evaluation,
  offer: Offer,
  rating: Rating,
  states: readonly string[],
): Planned {
  const { kind, count, inset } = offer;
  const slanted = kind.lead !== "upright";
  const { most } = countsAt(house.rail, inset, kind.leastSpacing);
  const last = slanted ? Math.min(most, count + mostMore) : count;
  const planOf = (each: number): Evaluation => {
    const straight = fittedAnchors(anchorsAt(kind, equalPlaces(house.rail, each, inset)), house);
    const anchors = slanted ? endsAlongRidge(straight) : straight;
    const planned = evaluate({ ...house, anchors }, site);
    return { ...planned, ratings: anchors.map(() => rating) };
  };
  let first: Planned | undefined;
  for (let each = count; each <= last; each += 1) {
    const evaluation = planOf(each);
    const asked = evaluation.states.filter(({ state }) => states.includes(state.id));
    const whole =
      passesAlone(evaluation, asked, "fitted") &&
      lowestJoint(evaluation, asked, "fitted", site.combination).factor >= 1;
    if (whole) return { evaluation, count: each, whole };
    first ??= { evaluation, count: each, whole };
  }
  if (!first) throw new Error("an offer without anchors");
  return first;
}

/**
 * The offered layout put through every check as if it were fitted: the fewest that hold it down, or
 * as many as it takes to keep it from sliding and in balance all at once, where that can be reached.
 */
export function offeredLayout(
  given: Evaluation,
  offer: Offer,
  rating: Rating,
  states: readonly string[],
  remarks: readonly Words[],
): LayoutReview {
  const { evaluation, count, whole } = plannedLayout(given, offer, rating, states);
  const asked = evaluation.states.filter(({ state }) => states.includes(state.id));
  const said: Words[] = [...remarks];
  if (count > offer.count) {
    said.unshift([
      `${offer.count} on each rail hold it down; ${count} also keep it from sliding and in balance all at once.`,
    ]);
  }
  if (!whole) said.unshift(["It is held down, but not against sliding or not all at once."]);
  const proofs =
    count === offer.count
      ? new Map(offer.anchors.map((one) => [one.anchor.name, one.proofLoad]))
      : new Map<string, number>();
  const found = layoutReview(evaluation, asked, proofs, said);
  return whole ? found : { ...found, holds: false };
}
