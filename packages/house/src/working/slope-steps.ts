import { type Chapter, derived, formula, taken } from "@hoopstay/core";
import type { BaseLine, HoldingTerms } from "@hoopstay/stability";
import { workOnce } from "./work-once.ts";

const downslopeWeight = formula({
  id: "downslope-weight",
  symbol: "S",
  name: "factored weight along the slope",
  measure: "force",
  arguments: [
    ["gamma_S", "factor of the combination on weight that slides", "ratio"],
    ["D", "weight", "force"],
    ["s", "slope of the ground", "angle"],
  ],
  expression: "gamma_S * D * sin(s)",
  citation: derived("component along the ground"),
  evaluate: (factor, weight, slope) => factor * weight * Math.sin(slope),
});

const windDirection = formula({
  id: "wind-direction",
  symbol: "u",
  name: "part of the wind's direction",
  measure: "ratio",
  arguments: [
    ["F", "wind force this way", "force"],
    ["F_x", "wind force across", "force"],
    ["F_y", "wind force along", "force"],
  ],
  expression: "F / sqrt(F_x^2 + F_y^2)",
  citation: derived("direction of a vector"),
  evaluate: (force, fx, fy) => force / Math.sqrt(fx * fx + fy * fy),
});

const slopePart = formula({
  id: "slope-part",
  symbol: "S_x",
  name: "slope, less what of it pushes against the wind",
  measure: "force",
  arguments: [
    ["S", "factored weight along the slope", "force"],
    ["d", "downhill this way", "ratio"],
    ["u", "wind this way", "ratio"],
    ["d_x", "downhill to the right", "ratio"],
    ["u_x", "wind to the right", "ratio"],
    ["d_y", "downhill to the front", "ratio"],
    ["u_y", "wind to the front", "ratio"],
  ],
  expression: "S * (d - u * min(0, d_x * u_x + d_y * u_y))",
  citation: derived("component along the ground; no relief, safe side"),
  evaluate: (weight, d, u, dx, ux, dy, uy) => weight * (d - u * Math.min(0, dx * ux + dy * uy)),
});

const slopeMoment = formula({
  id: "slope-moment",
  symbol: "S_M",
  name: "moment of the slope, none that relieves",
  measure: "moment",
  arguments: [
    ["S", "factored weight along the slope", "force"],
    ["z", "height of the weight", "length"],
    ["d_x", "downhill to the right", "ratio"],
    ["n_x", "outward normal of the line, across", "ratio"],
    ["d_y", "downhill to the front", "ratio"],
    ["n_y", "outward normal of the line, along", "ratio"],
  ],
  expression: "S * z * max(0, d_x * n_x + d_y * n_y)",
  citation: derived("force times arm"),
  evaluate: (weight, z, dx, nx, dy, ny) => weight * z * Math.max(0, dx * nx + dy * ny),
});

function weightStep(chapter: Chapter, { holding, combination }: HoldingTerms): number {
  const { weight, slope } = holding;
  return workOnce(chapter, downslopeWeight, [combination.slope, weight.W, slope?.angle ?? 0]);
}

/** The slope as a wind meets it, N across and along; `turned` from the wind where unknown. */
export function slopeSteps(
  chapter: Chapter,
  terms: HoldingTerms,
  fx: number,
  fy: number,
  turned: number,
): readonly [number, number] {
  if (terms.downslope === 0) return [0, 0];
  const weight = weightStep(chapter, terms);
  const still = fx === 0 && fy === 0;
  const ux = still ? 1 : workOnce(chapter, windDirection, [fx, fx, fy], { symbol: "u_x" });
  const uy = still ? 0 : workOnce(chapter, windDirection, [fy, fx, fy], { symbol: "u_y" });
  const found = (symbol: string, value: number): number => {
    const place = derived("downhill unknown: the worst direction");
    const one = taken("found by search", symbol, symbol, "worst downhill", value, "ratio", place);
    return chapter.work(one, []);
  };
  const [c, s] = [Math.cos(turned), Math.sin(turned)];
  const [dx, dy] = terms.holding.slope?.downhill ?? [
    found("d_x", c * ux - s * uy),
    found("d_y", s * ux + c * uy),
  ];
  const part = (symbol: string, d: number, u: number) =>
    workOnce(chapter, slopePart, [weight, d, u, dx, ux, dy, uy], { symbol });
  return [part("S_x", dx, ux), part("S_y", dy, uy)];
}

/** What the slope adds to turning about a line, N m; straight over it where downhill is unknown. */
export function slopeMomentStep(
  chapter: Chapter,
  terms: HoldingTerms,
  { nx, ny }: BaseLine,
): number {
  if (terms.downslope === 0) return 0;
  const weight = weightStep(chapter, terms);
  const [dx, dy] = terms.holding.slope?.downhill ?? [nx, ny];
  return workOnce(chapter, slopeMoment, [weight, terms.holding.weight.z, dx, nx, dy, ny]);
}
