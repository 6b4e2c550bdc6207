import { derived, formula, judged } from "@hoopstay/core";
import type { Anchor, HoldingTerms, LineTerms } from "./holding.ts";
import { demandOf } from "./lift-and-turn.ts";

/** Wind of one case per unit of K_d q_h as sliding feels it: horizontal parts and uplift, m2. */
export interface SlidingWind {
  readonly fx: number;
  readonly fy: number;
  readonly fz: number;
  /** Moments about the right and the left rail line, m3: what slanted tethers are needed for. */
  readonly turnRight: number;
  readonly turnLeft: number;
}

/** Sliding of one case at one pressure, N. */
export interface Sliding {
  readonly demand: number;
  readonly contact: number;
  readonly tether: number;
  readonly resistance: number;
}

/** Tether parts of sliding for one holding, combination and pair of rail lines. */
export interface SlidingTerms {
  readonly terms: HoldingTerms;
  /** Turning about each rail line: it decides what the other rail's tethers must pull. */
  readonly right: LineTerms;
  readonly left: LineTerms;
}

export const contactForce = formula({
  id: "contact-force",
  symbol: "N",
  name: "contact force left on the ground",
  measure: "force",
  arguments: [
    ["D_n", "factored weight normal to the ground", "force"],
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["F_z", "uplift", "force"],
  ],
  expression: "max(0, D_n - gamma_W * F_z)",
  citation: derived("friction only on contact that is left; anchors add none"),
  evaluate: (dead, factor, uplift) => Math.max(0, dead - factor * uplift),
});

export const slidingDemand = formula({
  id: "sliding-demand",
  symbol: "E",
  name: "horizontal resultant of factored wind and slope",
  measure: "force",
  arguments: [
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["F_x", "wind force across", "force"],
    ["F_y", "wind force along", "force"],
    ["S_x", "slope across", "force"],
    ["S_y", "slope along", "force"],
  ],
  expression: "sqrt((gamma_W * F_x + S_x)^2 + (gamma_W * F_y + S_y)^2)",
  citation: derived("vector sum in the plane of the ground"),
  evaluate: (factor, fx, fy, sx, sy) =>
    Math.sqrt((factor * fx + sx) ** 2 + (factor * fy + sy) ** 2),
});

export const slidingResistance = formula({
  id: "sliding-resistance",
  symbol: "R",
  name: "friction on the contact left, and tethers against the slide",
  measure: "force",
  arguments: [
    ["mu", "low friction coefficient", "ratio"],
    ["N", "contact force", "force"],
    ["T_h", "tethers along the resultant", "force"],
  ],
  expression: "mu * N + T_h",
  citation: derived("friction and tether pull against the slide"),
  evaluate: (mu, contact, tether) => mu * contact + tether,
});

/** What of a rail's anchor pull turning needs, from none (0) to all of it (1). */
export const tetherNeed = formula({
  id: "tether-need",
  symbol: "lambda",
  name: "share of its allowable pull that turning asks of a tether that pulls downwind",
  measure: "ratio",
  arguments: [
    ["E", "turning demand about the opposite rail", "moment"],
    ["R_D", "factored weight about that rail", "moment"],
    ["R_T", "anchors about that rail", "moment"],
  ],
  expression: "max(0, min(1, (E - R_D) / R_T))",
  citation: judged("a slanted tether pulls the house along only as hard as turning makes it"),
  range: "R_T above zero; 1 where it is zero and there is a need",
  evaluate: (demand, weight, anchors) => Math.max(0, Math.min(1, (demand - weight) / anchors)),
});

/** A downslope force as this wind meets it: a part against the wind is dropped. */
function dropRelief(sx: number, sy: number, ux: number, uy: number): readonly [number, number] {
  const along = sx * ux + sy * uy;
  return along < 0 ? [sx - along * ux, sy - along * uy] : [sx, sy];
}

/**
 * The downslope force on a case. Where the downhill direction is unknown it is `turned` from the
 * wind by an angle (rad); straight along the wind is the worst unless tethers pull aslant.
 */
export function slopeAgainst(
  terms: HoldingTerms,
  fx: number,
  fy: number,
  turned = 0,
): readonly [number, number] {
  const { downslope, holding } = terms;
  if (downslope === 0) return [0, 0];
  const size = Math.sqrt(fx * fx + fy * fy);
  const ux = size > 0 ? fx / size : 1;
  const uy = size > 0 ? fy / size : 0;
  const downhill = holding.slope?.downhill;
  if (downhill) return dropRelief(downslope * downhill[0], downslope * downhill[1], ux, uy);
  const [c, s] = [downslope * Math.cos(turned), downslope * Math.sin(turned)];
  return dropRelief(c * ux - s * uy, s * ux + c * uy, ux, uy);
}

export function needOf(rail: LineTerms, factor: number, turn: number): number {
  const demand = demandOf.evaluate(factor, turn, rail.slopeMoment);
  if (rail.anchorMoment > 0) {
    return tetherNeed.evaluate(demand, rail.weightMoment, rail.anchorMoment);
  }
  return demand > rail.weightMoment ? 1 : 0;
}

/** Tethers along a horizontal direction, N: those against it, and by rail those that pull along. */
export interface TetherParts {
  readonly against: number;
  readonly left: number;
  readonly right: number;
  readonly middle: number;
}

export const tetherParts = (terms: HoldingTerms, ux: number, uy: number): TetherParts =>
  partsAlong(terms.holding.anchors, terms.combination.anchor, ux, uy);

/** The same for given anchors; `scale` is on their allowable pulls. */
export function partsAlong(
  anchors: readonly Anchor[],
  scale: number,
  ux: number,
  uy: number,
): TetherParts {
  let [against, left, right, middle] = [0, 0, 0, 0];
  for (const { x, pull, toward } of anchors) {
    const along = scale * pull * (toward[0] * ux + toward[1] * uy);
    if (along <= 0) against -= along;
    else if (x < 0) left += along;
    else if (x > 0) right += along;
    else middle += along;
  }
  return { against, left, right, middle };
}

/** Pull of the tethers against the direction of their parts, N; negative where they help the slide. */
export function tetherPull(
  { terms, right, left }: SlidingTerms,
  wind: SlidingWind,
  pressure: number,
  parts: TetherParts,
): number {
  const factor = terms.combination.wind;
  if (parts.left + parts.right + parts.middle === 0) return parts.against;
  const needLeft = needOf(right, factor, pressure * wind.turnRight);
  const needRight = needOf(left, factor, pressure * wind.turnLeft);
  const middle = Math.max(needLeft, needRight) * parts.middle;
  const along = needLeft * parts.left + needRight * parts.right + middle;
  const net = parts.against - along;
  return Math.abs(net) > evenOut * (parts.against + along) ? net : 0;
}

/** Pulls that differ by this share of their sum or less even out: the rest is rounding. */
const evenOut = 1e-12;

/** Demand and resistance of sliding at a pressure K_d q_h, Pa; `turned` as in `slopeAgainst`. */
export function slideAt(
  sliding: SlidingTerms,
  wind: SlidingWind,
  pressure: number,
  turned = 0,
): Sliding {
  const { terms } = sliding;
  const factor = terms.combination.wind;
  const [sx, sy] = slopeAgainst(terms, wind.fx, wind.fy, turned);
  const hx = factor * pressure * wind.fx + sx;
  const hy = factor * pressure * wind.fy + sy;
  const demand = Math.sqrt(hx * hx + hy * hy);
  const contact = contactForce.evaluate(terms.deadNormal, factor, pressure * wind.fz);
  const tether =
    terms.sideways && demand > 0
      ? tetherPull(sliding, wind, pressure, tetherParts(terms, hx / demand, hy / demand))
      : 0;
  const resistance = slidingResistance.evaluate(terms.holding.friction, contact, tether);
  return { demand, contact, tether, resistance };
}
