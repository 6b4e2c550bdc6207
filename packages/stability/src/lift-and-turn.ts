import { cite, derived, formula } from "@hoopstay/core";
import type { BaseLine } from "./base-line.ts";

export const overturning = formula({
  id: "overturning",
  symbol: "m",
  name: "wind moment about the base line, per unit of K_d q_h",
  measure: "moment",
  arguments: [
    ["n_x", "outward normal of the line, across", "ratio"],
    ["n_y", "outward normal of the line, along", "ratio"],
    ["M_x", "moment about the x axis", "moment"],
    ["M_y", "moment about the y axis", "moment"],
    ["F_z", "uplift", "force"],
    ["a", "distance of the line from the middle of the house", "length"],
  ],
  expression: "n_x * M_y - n_y * M_x + a * F_z",
  citation: derived("moments moved from the origin to the base line"),
  evaluate: (nx, ny, mx, my, fz, a) => nx * my - ny * mx + a * fz,
});

/** Overturning moment of one case about a line, from its six components. */
export const overturningAbout = (line: BaseLine, mx: number, my: number, fz: number): number =>
  overturning.evaluate(line.nx, line.ny, mx, my, fz, line.distance);

/** gamma_W times wind, none where it turns the other way, plus what the slope adds. */
export const demandOf = formula({
  id: "demand",
  symbol: "E",
  name: "demand: factored wind, and slope where it adds",
  measure: "moment",
  arguments: [
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["W", "wind effect", "moment"],
    ["S", "effect of the ground slope", "moment"],
  ],
  expression: "gamma_W * max(0, W) + S",
  citation: cite(
    "asce-7-16",
    "2.4.1 combination 7 (ASD), 2.3.1 combination 5 (LRFD), as in 7-22; slope added, safe side",
    "second-hand",
  ),
  evaluate: (factor, wind, slope) => factor * Math.max(0, wind) + slope,
});

export const resistanceOf = formula({
  id: "resistance",
  symbol: "R",
  name: "resistance: factored weight and anchors",
  measure: "moment",
  arguments: [
    ["R_D", "factored weight", "moment"],
    ["R_T", "anchors", "moment"],
  ],
  expression: "R_D + R_T",
  citation: derived("equilibrium"),
  evaluate: (weight, anchors) => weight + anchors,
});

/** K_d q_h at which a check linear in wind is just met. */
export const linearLimit = formula({
  id: "linear-limit",
  symbol: "q_c",
  name: "K_d q_h at which the check is just met",
  measure: "pressure",
  arguments: [
    ["R", "resistance", "moment"],
    ["S", "effect of the ground slope", "moment"],
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["w", "wind effect per unit of K_d q_h", "first-moment"],
  ],
  expression: "(R - S) / (gamma_W * w)",
  citation: derived("demand = resistance, solved for the pressure"),
  range: "w above zero; not limited otherwise",
  evaluate: (resistance, slope, factor, wind) => (resistance - slope) / (factor * wind),
});

/** The linear limit with its edges: 0 where it fails without wind, infinite where never limited. */
export function limitOf(resistance: number, slope: number, factor: number, wind: number): number {
  if (resistance - slope < 0) return 0;
  if (wind <= 0) return Number.POSITIVE_INFINITY;
  return linearLimit.evaluate(resistance, slope, factor, wind);
}
