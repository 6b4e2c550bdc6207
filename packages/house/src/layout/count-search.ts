import { type Complaint, Refusal } from "@hoopstay/core";
import { proofLoad } from "@hoopstay/ground";
import type { AnchorPull } from "../rail-pull/anchor-pulls.ts";
import { railSides } from "../rail-pull/case-on-rails.ts";
import { type RailLoads, railLoadsOf } from "../rail-pull/rail-loads.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { type Assessment, LayoutAssessor } from "./assess-layout.ts";
import { countsAt, endInsets, type HoldDownKind } from "./layout.ts";
import { type OneMissing, type WorstMissing, worstMissing } from "./one-missing.ts";

/** One anchor of an offered layout. */
export interface OfferedAnchor extends AnchorPull {
  /**
   * Least proof load along the tether, N: 1.25 times the worst pull under ASD, or under LRFD where a
   * rail is held in that alone.
   */
  readonly proofLoad: number;
}

/** The fewest anchors of a kind that hold, on each rail. */
export interface Offer {
  readonly outcome: "offered";
  readonly kind: HoldDownKind;
  /** On each rail. */
  readonly count: number;
  readonly inset: number;
  readonly spacing: number;
  readonly anchors: readonly OfferedAnchor[];
  readonly worst: Assessment;
  /** One fewer at its best, failing; null where fewer would stand too far apart. */
  readonly fewer: Assessment | null;
  /** One more: at its best where it fails, though fewer hold; null where it holds or has no room. */
  readonly moreFails: Assessment | null;
  /** The missing anchor whose lack loads another most: information, worked when it is read. */
  readonly oneMissing: OneMissing;
  /** Whether to offer a second anchor at each end; worked when it is read. */
  readonly doubleEnds: boolean;
}

/** No count of a kind holds. */
export interface NoOffer {
  readonly outcome: "none";
  readonly kind: HoldDownKind;
  /** The most there is room for, at its best. Its ratio is the factor by which it falls short. */
  readonly most: Assessment;
}

/** The rail is too short, or the spacing too wide, for two anchors that stand close enough. */
export interface NoRoom {
  readonly outcome: "no-room";
  readonly kind: HoldDownKind;
}

export type KindResult = Offer | NoOffer | NoRoom;

/** How many of each kind of anchor hold the house, and where, in the states asked for. */
export interface CountSearch {
  readonly states: readonly string[];
  readonly combination: RailLoads["combination"];
  readonly kinds: readonly KindResult[];
}

/**
 * The fewest anchors of each kind on each rail that hold the house: lift off, turning about every
 * base line and every anchor's own pull, in every state and direction. Equal spacing, both rails
 * alike, the best of three end insets. Sliding, the least load and all at once are not asked here:
 * run the review with `fittedAnchors` of the offer.
 *
 * @param only ids of the states, all if not given
 * @throws Refusal for a kind that is none, or a state that is not there
 */
export function countSearch(
  evaluation: Evaluation,
  kinds: readonly HoldDownKind[],
  only?: readonly string[],
): CountSearch {
  refuseImpossible(evaluation, kinds, only);
  const loads = railLoadsOf(evaluation, only);
  const assessor = new LayoutAssessor(loads);
  let service: LayoutAssessor | undefined;
  const serviceAssessor = (): LayoutAssessor => {
    if (loads.combination === "ASD") return assessor;
    service ??= new LayoutAssessor(railLoadsOf(evaluation, only, "ASD"));
    return service;
  };
  return {
    states: loads.states.map(({ state }) => state.id),
    combination: loads.combination,
    kinds: kinds.map((kind) => searchKind(assessor, serviceAssessor, kind)),
  };
}

/** The deepest inset is the likely best: the others are then left early. */
const insetsTried = [...endInsets].reverse();

function searchKind(
  assessor: LayoutAssessor,
  service: () => LayoutAssessor,
  kind: HoldDownKind,
): KindResult {
  const { rail } = assessor.loads.evaluation.house;
  const insetsOf = (count: number): number[] =>
    insetsTried.filter((inset) => {
      const { fewest, most } = countsAt(rail, inset, kind.leastSpacing);
      return count >= fewest && count <= most;
    });
  const ranges = endInsets
    .map((inset) => countsAt(rail, inset, kind.leastSpacing))
    .filter(({ fewest, most }) => fewest <= most);
  if (ranges.length === 0) return { outcome: "no-room", kind };
  const fewest = Math.min(...ranges.map((range) => range.fewest));
  const most = Math.max(...ranges.map((range) => range.most));
  const best = (count: number, above: number): Assessment =>
    bestAt(assessor, kind, count, insetsOf(count), above);
  for (let count = fewest; count <= most; count += 1) {
    const worst = best(count, 1);
    if (!isWithin(worst)) continue;
    const holdsToo =
      count < most && insetsOf(count + 1).some((inset) => assessor.holds(kind, count + 1, inset));
    const neighbours = {
      fewer: count > fewest ? best(count - 1, Number.POSITIVE_INFINITY) : null,
      moreFails: count < most && !holdsToo ? best(count + 1, Number.POSITIVE_INFINITY) : null,
    };
    return offered(assessor, service(), kind, worst, neighbours);
  }
  return { outcome: "none", kind, most: best(most, Number.POSITIVE_INFINITY) };
}

export const isWithin = ({ ratio }: Assessment): boolean => ratio !== null && ratio <= 1;

/**
 * The inset of the lowest worst ratio; one that proves worse than the best so far is left.
 *
 * @param above ratios above this need not be told apart
 */
function bestAt(
  assessor: LayoutAssessor,
  kind: HoldDownKind,
  count: number,
  insets: readonly number[],
  above: number,
): Assessment {
  let best: Assessment | undefined;
  for (const inset of insets) {
    const bound = Math.min(above, best?.ratio ?? above);
    const found = assessor.assess(kind, count, inset, bound);
    if (!best || (found.ratio !== null && found.ratio < (best.ratio ?? Number.POSITIVE_INFINITY))) {
      best = found;
    }
  }
  if (!best) throw new Error("no inset has room for this count");
  return best;
}

function offered(
  assessor: LayoutAssessor,
  service: LayoutAssessor,
  kind: HoldDownKind,
  worst: Assessment,
  neighbours: Pick<Offer, "fewer" | "moreFails">,
): Offer {
  const { count, inset } = worst;
  const { rail } = assessor.loads.evaluation.house;
  const { anchors, runs } = assessor.layOut(kind, count, inset);
  const told = (by: LayoutAssessor, { pulls }: Assessment): AnchorPull[] | null =>
    pulls &&
    railSides.flatMap((side) => pulls[side].map((pull, at) => by.pullOf(anchors, side, at, pull)));
  const pulls = told(assessor, worst);
  if (!pulls) throw new Error("a layout that holds was worked to the end");
  const design =
    service === assessor
      ? pulls
      : told(service, service.assess(kind, count, inset, Number.POSITIVE_INFINITY));
  let known: WorstMissing | undefined;
  const missing = (): WorstMissing => {
    const { loads, order, hold } = assessor;
    known ??= worstMissing(loads, anchors, { order, hold, runsOf: () => runs });
    return known;
  };
  return {
    outcome: "offered",
    kind,
    count,
    inset,
    spacing: (rail.front + rail.back - 2 * inset) / (count - 1),
    anchors: pulls.map((pull, at) => ({
      ...pull,
      proofLoad: proofLoad.evaluate((design?.[at] ?? pull).tension),
    })),
    worst,
    ...neighbours,
    get oneMissing() {
      return missing().worst;
    },
    get doubleEnds() {
      return missing().doubleEnds;
    },
  };
}

function refuseImpossible(
  { states }: Evaluation,
  kinds: readonly HoldDownKind[],
  only: readonly string[] | undefined,
): void {
  const complaints: Complaint[] = [];
  const known = states.map(({ state }) => state.id);
  const unknown = (only ?? []).filter((id) => !known.includes(id));
  if (unknown.length > 0 || only?.length === 0) {
    complaints.push({
      code: "wrong-kind",
      key: "states",
      given: unknown.join(", ") || "none",
      expected: `states of this house: ${known.join(", ")}`,
      mend: "Name states of the house.",
    });
  }
  for (const { id, allowable, angle, stiffness, leastSpacing } of kinds) {
    const positive = { allowable, stiffness, leastSpacing };
    for (const [key, value] of Object.entries(positive)) {
      if (value > 0 && Number.isFinite(value)) continue;
      complaints.push({
        code: "not-positive",
        key: `${id}.${key}`,
        given: String(value),
        expected: "a number above zero",
        mend: "Give an anchor that can hold.",
      });
    }
    if (angle > 0 && angle <= Math.PI / 2 + 1e-12) continue;
    complaints.push({
      code: "out-of-range",
      key: `${id}.angle`,
      given: String(angle),
      expected: "an angle above the ground from just above 0 to 90 deg, in rad",
      mend: "Measure the tether's angle from the ground up.",
    });
  }
  if (complaints.length > 0) throw new Refusal(complaints);
}
