import { cite, formula } from "@hoopstay/core";
import { fallingCoefficient } from "./falling-coefficient.ts";

const figure = cite("asce-7-16", "figure 30.3-1, walls, h up to 60 ft", "memory");

export const wallInward = fallingCoefficient(
  "component-wall-inward",
  "component coefficient, any wall, inward",
  "1.0 - 0.3",
  { first: 1, last: 0.7, times: 50 },
  figure,
);

export const wallOutward = fallingCoefficient(
  "component-wall-outward",
  "component coefficient, wall away from its corners, outward",
  "-1.1 + 0.3",
  { first: -1.1, last: -0.8, times: 50 },
  figure,
);

export const cornerOutward = fallingCoefficient(
  "component-corner-outward",
  "component coefficient, wall near a corner, outward",
  "-1.4 + 0.6",
  { first: -1.4, last: -0.8, times: 50 },
  figure,
);

/** How far from a corner of a wall, or from an edge of the arch, the higher coefficients reach. */
export const cornerWidth = formula({
  id: "corner-width",
  symbol: "a",
  name: "width of corner and edge strips",
  measure: "length",
  arguments: [
    ["b", "span of the shell", "length"],
    ["h", "mean roof height", "length"],
  ],
  expression: "max(0.9144, 0.04 * b, min(0.1 * b, 0.4 * h))",
  citation: cite("asce-7-16", "figure 30.3-1, note: a", "memory"),
  range: "b in place of the least horizontal size: safe side where a house is shorter than wide",
  evaluate: (span, height) => Math.max(0.9144, 0.04 * span, Math.min(0.1 * span, 0.4 * height)),
});
