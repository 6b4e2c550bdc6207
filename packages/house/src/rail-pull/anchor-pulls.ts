import type { RailOutcome } from "@hoopstay/frame";
import type { CombinationId } from "@hoopstay/stability";
import type { RailAnchor } from "../layout/layout.ts";
import { AnchoredRail } from "./anchored-rail.ts";
import { Balances } from "./balanced-forces.ts";
import { type RailSide, railSides } from "./case-on-rails.ts";
import { combinationOf } from "./dead-on-rails.ts";
import type { RailLoad, RailLoadSource, RailLoads } from "./rail-loads.ts";
import { type RailCompliance, railCompliance } from "./rail-on-ground.ts";
import { sidePull, stiffnessTimes, tetherTension, uprightStiffness } from "./tether.ts";
import { TrialOrder, type WorstPull, worstPulls } from "./worst-pulls.ts";

/** What one anchor has to hold at the worst. */
export interface AnchorPull {
  readonly anchor: RailAnchor;
  /** Pull along the tether, N, and its upright and level parts. */
  readonly tension: number;
  readonly upright: number;
  readonly level: number;
  /** Where the level part leads in the house's axes: right, front; a unit vector or nought. */
  readonly leads: readonly [number, number];
  /** Over the allowable pull in the combination. */
  readonly ratio: number;
  /** The load that does it; null where none pulls on the anchor. */
  readonly governs: RailLoad | null;
  /** Times the anchor's stiffness at which it comes out worst. */
  readonly stiffnessTimes: number;
}

/** A rail that its anchors do not hold, or that has none. */
export interface RailFailure {
  readonly outcome: "unanchored" | Exclude<RailOutcome, "held">;
  readonly side: RailSide;
  readonly governs: RailLoadSource | null;
}

export interface HeldPulls {
  readonly outcome: "held";
  readonly anchors: readonly AnchorPull[];
  /** The greatest ratio. */
  readonly worst: number;
}

export const sineOf = ({ toward }: RailAnchor): number => -toward[2];

/** Upright pull of an anchor at its allowable, N. */
export const uprightAllowable = (anchor: RailAnchor, combination: CombinationId): number =>
  combinationOf(combination).anchor * anchor.allowable * sineOf(anchor);

/** The anchors of one rail, back to front. */
export const onSide = (anchors: readonly RailAnchor[], side: RailSide): RailAnchor[] =>
  anchors.filter((one) => one.side === side).sort((a, b) => a.along - b.along);

/** A rail with its anchors, at each stiffness they are run at. */
export function anchoredRuns(
  loads: RailLoads,
  compliance: RailCompliance,
  anchors: readonly RailAnchor[],
  balances = new Balances(loads, compliance),
): AnchoredRail[] {
  return stiffnessTimes.values.map(
    (times) =>
      new AnchoredRail(
        compliance,
        loads,
        anchors.map(
          (anchor) => times * uprightStiffness.evaluate(anchor.stiffness, sineOf(anchor)),
        ),
        balances,
      ),
  );
}

export function anchorPull(
  anchor: RailAnchor,
  { pull, load, run }: WorstPull,
  combination: CombinationId,
): AnchorPull {
  const sine = sineOf(anchor);
  const tension = tetherTension.evaluate(pull, sine);
  const level = Math.hypot(anchor.toward[0], anchor.toward[1]);
  const leads = (level > 0 ? [anchor.toward[0] / level, anchor.toward[1] / level] : [0, 0]) as [
    number,
    number,
  ];
  return {
    anchor,
    tension,
    upright: pull,
    level: level > 0 ? sidePull.evaluate(tension, sine) : 0,
    leads,
    ratio: tension / (combinationOf(combination).anchor * anchor.allowable),
    governs: load,
    stiffnessTimes: stiffnessTimes.values[run] as number,
  };
}

/**
 * The worst pull of every anchor as it stands, over every load: each rail with its own anchors, each
 * with its own allowable pull, angle and stiffness, at once and at four times that stiffness.
 *
 * @throws Refusal where an anchor or a hoop stands beyond the rail
 */
export function anchorPulls(
  loads: RailLoads,
  anchors: readonly RailAnchor[],
): HeldPulls | RailFailure {
  const order = new TrialOrder(loads);
  const found: AnchorPull[] = [];
  for (const side of railSides) {
    const own = onSide(anchors, side);
    if (own.length === 0) return { outcome: "unanchored", side, governs: null };
    const runs = anchoredRuns(loads, complianceOf(loads, own), own);
    const pulls = worstPulls(loads, order, runs, undefined, side);
    if (pulls.outcome === "above") throw new Error("no bound was set");
    if (pulls.outcome !== "held") return { outcome: pulls.outcome, side, governs: pulls.load };
    pulls.worst[side].forEach((worst, at) => {
      found.push(anchorPull(own[at] as RailAnchor, worst, loads.combination));
    });
  }
  const worst = Math.max(...found.map(({ ratio }) => ratio));
  return { outcome: "held", anchors: found, worst };
}

export const complianceOf = ({ on }: RailLoads, anchors: readonly RailAnchor[]): RailCompliance =>
  railCompliance(
    on,
    anchors.map(({ along }) => along),
  );
