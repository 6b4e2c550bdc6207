import { type AnchorRow, type LayoutReview, speedLimit, type Words } from "@hoopstay/core";
import { proofLoad, stiffnessFromTests, stiffnessWithoutTests } from "@hoopstay/ground";
import type { WindCase } from "@hoopstay/load";
import { type CombinationId, pullsSideways } from "@hoopstay/stability";
import type { FittedAnchor } from "../model/house-model.ts";
import { type AnchorPull, anchorPulls } from "../rail-pull/anchor-pulls.ts";
import { type RailLoadSource, type RailLoads, railLoadsOf } from "../rail-pull/rail-loads.ts";
import type { Rating } from "../rating/rating.ts";
import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import type { HoldId } from "../review/hold.ts";
import { leastOutcomes } from "../review/least-check.ts";
import { governingOf, gustOf, speedOf } from "../review/summaries.ts";
import { checkWords, fromWords } from "../review/words.ts";
import { lowestJoint } from "../together/joint.ts";
import { jointSummary } from "../together/joint-summary.ts";
import { anchorsOnRails, type RailAnchor } from "./layout.ts";
import { type OneMissing, oneMissing } from "./one-missing.ts";

/** Stiffness along the tether, N/m; a pull that was given counts as untested. */
export const stiffnessOf = (rating: Rating | null, allowable: number): number =>
  rating?.tested
    ? stiffnessFromTests.evaluate(rating.tested)
    : stiffnessWithoutTests.evaluate(allowable);

/** The anchors on the rails that count, with their stiffness. */
export function countedOnRails({ house, ratings }: Evaluation): RailAnchor[] {
  const counted = house.anchors.filter(({ pull }) => pull > 0);
  return anchorsOnRails({ ...house, anchors: counted }, (anchor) =>
    stiffnessOf(ratings[house.anchors.indexOf(anchor)] ?? null, anchor.pull),
  );
}

const leadWords = ([x, y, z]: FittedAnchor["toward"], side: FittedAnchor["side"]): string => {
  if (z <= -1 + 1e-9) return "straight down";
  if (Math.abs(y) > Math.abs(x)) return y > 0 ? "to the front" : "to the back";
  const outward = side === "left" ? x < 0 : x > 0;
  return outward ? "out" : "in";
};

function directionIn({ state, caseIndex }: RailLoadSource, { site }: Evaluation): string {
  return fromWords(state.set.table.cases[caseIndex] as WindCase, site.frontBearing);
}

/**
 * A slanted tether is counted with all it may carry against sliding, so it is proved to that at
 * least; an upright one to what lifting and turning ask of it.
 */
const proofOf = ({ pull, toward }: FittedAnchor, byRail: number): number =>
  pullsSideways({ toward }) ? Math.max(byRail, proofLoad.evaluate(pull)) : byRail;

function anchorRow(
  anchor: FittedAnchor,
  pull: AnchorPull | null,
  proof: number | null,
  evaluation: Evaluation,
): AnchorRow {
  const { name, side, x, y, toward } = anchor;
  const level = Math.hypot(toward[0], toward[1]);
  return {
    name,
    side,
    along: y,
    across: x,
    angle: Math.atan2(-toward[2], level),
    lead: leadWords(toward, side),
    toward: level > 1e-12 ? [toward[0] / level, toward[1] / level] : [0, 0],
    pull: pull?.tension ?? 0,
    upright: pull?.upright ?? 0,
    level: pull?.level ?? 0,
    allowable: anchor.pull,
    ratio: pull?.ratio ?? 0,
    proof: proofOf(anchor, proof ?? proofLoad.evaluate(pull?.tension ?? anchor.pull)),
    state: pull?.governs?.state.state.words ?? "none",
    direction: pull?.governs ? directionIn(pull.governs, evaluation) : "",
  };
}

/** The worst ratio left with one anchor missing, and which one. */
function worstMissing(missing: readonly OneMissing[]): LayoutReview["oneMissing"] {
  const ratioOf = ({ hold, worst }: OneMissing): number =>
    "outcome" in worst ? Number.POSITIVE_INFINITY : Math.max(hold.ratio, worst.ratio);
  const [first, ...others] = missing;
  if (!first) return null;
  const found = others.reduce((a, b) => (ratioOf(b) > ratioOf(a) ? b : a), first);
  return { ratio: ratioOf(found), name: found.missing.name };
}

/** Whether a state passes every single check, and where it first slides. */
function slidingRemarks(evaluation: Evaluation, states: readonly EvaluatedState[]): Words[] {
  const { combination } = evaluation.site;
  const limitOf = ({ set }: EvaluatedState, method: CombinationId): number =>
    governingOf(set, "fitted", method).find(({ check }) => check === "slide")?.byLimit.limit ??
    Number.POSITIVE_INFINITY;
  if (states.every((one) => limitOf(one, combination) >= evaluation.pressure)) return [];
  const slides = states.map((one) => ({ state: one.state, limit: limitOf(one, "ASD") }));
  const worst = slides.reduce((a, b) => (b.limit < a.limit ? b : a));
  const speed = speedOf(evaluation, worst.limit);
  return [
    [
      `Sliding: ${worst.state.words}, it begins at a gust of `,
      speedLimit(gustOf(speed)),
      ". What mends it: tethers along the ridge at both ends, tethers that lead out on both sides, or ballast fixed on the skids.",
    ],
  ];
}

/** Whether the states pass every single check, at the design wind and below it. */
export const passesAlone = (
  evaluation: Evaluation,
  states: readonly EvaluatedState[],
  hold: HoldId,
): boolean => failing(evaluation, states, hold).length === 0;

/** The checks that fail under the least load of the standard. */
export function failingLeast(
  { site }: Evaluation,
  states: readonly EvaluatedState[],
  hold: HoldId,
): string[] {
  const failing = states.flatMap(({ set }) =>
    leastOutcomes(set.least, hold, site.combination).filter(({ outcome }) => outcome.ratio > 1),
  );
  return [...new Set(failing.map(({ check }) => checkWords[check].verb))];
}

/** The single checks that a layout fails in some states, in an owner's words. */
function failing(
  evaluation: Evaluation,
  states: readonly EvaluatedState[],
  hold: HoldId,
): string[] {
  const { combination } = evaluation.site;
  const { pressure } = evaluation;
  const found = new Set<string>();
  for (const { set } of states) {
    for (const { check, byRatio, byLimit } of governingOf(set, hold, combination)) {
      const holds = byRatio.ratio <= 1 && byLimit.limit >= pressure * (1 - 1e-12);
      if (!holds) found.add(checkWords[check].verb);
    }
  }
  return [...found];
}

/**
 * A layout under every check: single checks, everything at once, each anchor's own pull by the rail's
 * stiffness, and any one anchor missing.
 *
 * @param evaluation of the house with these anchors fitted
 */
export function layoutReview(
  evaluation: Evaluation,
  states: readonly EvaluatedState[],
  proofs: ReadonlyMap<string, number>,
  said: readonly Words[],
): LayoutReview {
  const { house, site } = evaluation;
  const result = lowestJoint(evaluation, states, "fitted", site.combination);
  const joint = jointSummary(evaluation, result);
  const ids = states.map(({ state }) => state.id);
  const loads: RailLoads = railLoadsOf(evaluation, ids);
  const onRails = countedOnRails(evaluation);
  const pulls = onRails.length > 0 ? anchorPulls(loads, onRails) : null;
  const held = pulls?.outcome === "held" ? pulls : null;
  const rows = house.anchors.map((anchor): AnchorRow => {
    const pull = held?.anchors.find((one) => one.anchor.name === anchor.name) ?? null;
    return anchorRow(anchor, pull, proofs.get(anchor.name) ?? null, evaluation);
  });
  const fails = failing(evaluation, states, "fitted");
  const remarks: Words[] = [...said, ...slidingRemarks(evaluation, states)];
  if (pulls && pulls.outcome !== "held") {
    remarks.unshift([`The ${pulls.side} rail is not held: ${notHeldWords[pulls.outcome]}.`]);
  }
  const least = failingLeast(evaluation, states, "fitted");
  if (least.length > 0) {
    remarks.unshift([`The standard's least load is not carried: it would ${least.join(", ")}.`]);
  }
  if (fails.length > 0) remarks.unshift([`Single checks that fail: ${fails.join(", ")}.`]);
  const missing = held ? worstMissing(oneMissing(loads, onRails)) : null;
  return {
    perRail: Math.max(...(["left", "right"] as const).map((side) => countOn(house.anchors, side))),
    anchors: rows,
    held: held !== null,
    carriesLeast: least.length === 0,
    holds: fails.length === 0 && joint.holds && held !== null && held.worst <= 1,
    oneMissing: missing,
    joint,
    remarks,
  };
}

const countOn = (anchors: readonly FittedAnchor[], side: FittedAnchor["side"]): number =>
  anchors.filter((anchor) => anchor.side === side).length;

const notHeldWords: Readonly<Record<string, string>> = {
  unanchored: "no anchor stands on it that counts",
  "not-held": "its anchors let it turn or lift away",
  unsettled: "its reactions could not be settled",
};
