import { derived, formula } from "@hoopstay/core";

const factored = [
  ["gamma_D", "weight factor of the combination", "ratio"],
  ["W", "weight of the block as it counts", "force"],
] as const;
const angle = ["a", "tether above the ground", "angle"] as const;
const slope = ["s", "slope of the ground, downhill along the pull", "angle"] as const;

export const slidingPull = formula({
  id: "block-sliding-pull",
  symbol: "T_s",
  name: "pull at which the block slides",
  measure: "force",
  arguments: [
    ...factored,
    angle,
    ["mu", "low friction under the block", "ratio"],
    slope,
    ["gamma_S", "factor on the downslope part of a weight", "ratio"],
  ],
  expression: "W * (gamma_D * mu * cos(s) - gamma_S * sin(s)) / (cos(a) + mu * sin(a))",
  citation: derived("friction on the weight that the pull leaves on the ground, less what slides"),
  range: "a from 0 to 90 degrees, mu above zero",
  evaluate: (factor, weight, a, friction, s, slopeFactor) =>
    (weight * (factor * friction * Math.cos(s) - slopeFactor * Math.sin(s))) /
    (Math.cos(a) + friction * Math.sin(a)),
});

const base = ["b", "width of the block along the pull", "length"] as const;
const height = ["h", "height of the tie above the ground", "length"] as const;
const setback = ["x", "tie behind the near face", "length"] as const;

export const nearToePull = formula({
  id: "block-near-toe-pull",
  symbol: "T_n",
  name: "pull at which the block turns about the toe near the house",
  measure: "force",
  arguments: [...factored, base, angle, height, setback, slope],
  expression: "gamma_D * W * cos(s) * b / 2 / (h * cos(a) + x * sin(a))",
  citation: derived("moments about the near toe; weight in the middle of the width"),
  range: "h cos(a) + x sin(a) above zero; not limited otherwise",
  evaluate: (factor, weight, width, a, tie, behind, s) =>
    (factor * weight * Math.cos(s) * width) / 2 / (tie * Math.cos(a) + behind * Math.sin(a)),
});

export const farToePull = formula({
  id: "block-far-toe-pull",
  symbol: "T_f",
  name: "pull at which the block turns about the toe away from the house",
  measure: "force",
  arguments: [...factored, base, angle, height, setback, slope],
  expression: "gamma_D * W * cos(s) * b / 2 / ((b - x) * sin(a) - h * cos(a))",
  citation: derived("moments about the far toe: a steep pull lifts the near edge"),
  range: "(b - x) sin(a) - h cos(a) above zero; not limited otherwise",
  evaluate: (factor, weight, width, a, tie, behind, s) =>
    (factor * weight * Math.cos(s) * width) /
    2 /
    ((width - behind) * Math.sin(a) - tie * Math.cos(a)),
});
