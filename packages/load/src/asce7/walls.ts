import { cite, constant, formula } from "@hoopstay/core";

const figure = cite("bnbc-2020", "figure 6.2.6 (ASCE 7-16 figure 27.3-1)", "read");

export const windwardWall = constant(
  "windward-wall",
  "C_p,ww",
  "outside coefficient, windward wall",
  0.8,
  "ratio",
  figure,
);

export const sideWall = constant(
  "side-wall",
  "C_p,sw",
  "outside coefficient, wall along the wind",
  -0.7,
  "ratio",
  figure,
);

/** Leeward wall: -0.5 to L/B = 1, -0.3 at 2, -0.2 from 4 on, linear between. */
export const leewardWall = formula({
  id: "leeward-wall",
  symbol: "C_p,lw",
  name: "outside coefficient, leeward wall",
  measure: "ratio",
  arguments: [["r_LB", "size along the wind over size across it", "ratio"]],
  expression: "max(-0.5, min(-0.3, -0.5 + 0.2 * (r_LB - 1))) + max(0, min(0.1, 0.05 * (r_LB - 2)))",
  citation: figure,
  evaluate: (ratio) =>
    Math.max(-0.5, Math.min(-0.3, -0.5 + 0.2 * (ratio - 1))) +
    Math.max(0, Math.min(0.1, 0.05 * (ratio - 2))),
});
