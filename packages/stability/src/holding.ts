import type { BaseLine } from "./base-line.ts";
import type { Combination } from "./combination.ts";

/** A weight estimate: N, and its centre of gravity, m. */
export interface Weight {
  readonly name: "low" | "high";
  readonly W: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** One anchor as fitted: where it is made fast, its allowable pull, and where it pulls to. */
export interface Anchor {
  readonly x: number;
  readonly y: number;
  /** Allowable pull along the tether, N. */
  readonly pull: number;
  /** Unit vector from the house toward the anchor; the third part is negative (down). */
  readonly toward: readonly [number, number, number];
}

/** Whether a tether is slanted. */
export const pullsSideways = ({ toward }: Pick<Anchor, "toward">): boolean =>
  Math.hypot(toward[0], toward[1]) > 1e-12;

/** Ground slope: angle, and the downhill direction in house axes, or null where unknown. */
export interface Slope {
  readonly angle: number;
  readonly downhill: readonly [number, number] | null;
}

/** What holds the house in one estimate: a weight, the anchors counted, and the ground. */
export interface Holding {
  readonly weight: Weight;
  readonly anchors: readonly Anchor[];
  readonly slope: Slope | null;
  readonly friction: number;
}

/** The parts of a check that no load case changes, for one holding and combination. N and N m. */
export interface HoldingTerms {
  readonly holding: Holding;
  readonly combination: Combination;
  /** Factored weight normal to the ground. */
  readonly deadNormal: number;
  /** Factored downslope part of the weight. */
  readonly downslope: number;
  /** Factored vertical pull of all anchors. */
  readonly anchorDown: number;
  /** Whether any tether pulls sideways. */
  readonly sideways: boolean;
}

export function holdingTerms(holding: Holding, combination: Combination): HoldingTerms {
  const { weight, anchors, slope } = holding;
  let anchorDown = 0;
  let sideways = false;
  for (const { pull, toward } of anchors) {
    anchorDown -= combination.anchor * pull * toward[2];
    sideways ||= pullsSideways({ toward });
  }
  return {
    holding,
    combination,
    deadNormal: combination.dead * weight.W * Math.cos(slope?.angle ?? 0),
    downslope: combination.slope * weight.W * Math.sin(slope?.angle ?? 0),
    anchorDown,
    sideways,
  };
}

/** What resists turning about one base line and what the slope adds, N m. */
export interface LineTerms {
  readonly weightMoment: number;
  readonly anchorMoment: number;
  readonly slopeMoment: number;
}

/**
 * Moments about a base line. An anchor on or beyond the line counts nothing; the weight counts as
 * it stands; a slope that would relieve is left out.
 */
export function lineTerms(terms: HoldingTerms, line: BaseLine): LineTerms {
  const { holding, combination, deadNormal, downslope } = terms;
  const { weight, anchors, slope } = holding;
  let anchorMoment = 0;
  for (const { x, y, pull, toward } of anchors) {
    const arm = Math.max(0, line.distance - line.nx * x - line.ny * y);
    anchorMoment -= combination.anchor * pull * toward[2] * arm;
  }
  const toLine = slope?.downhill
    ? Math.max(0, slope.downhill[0] * line.nx + slope.downhill[1] * line.ny)
    : 1;
  return {
    weightMoment: deadNormal * (line.distance - line.nx * weight.x - line.ny * weight.y),
    anchorMoment,
    slopeMoment: downslope * weight.z * toLine,
  };
}
