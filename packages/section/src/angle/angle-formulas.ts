import { cite, derived, formula } from "@hoopstay/core";

const upright = ["a", "upright leg", "length"] as const;
const lying = ["b", "lying leg", "length"] as const;
const thickness = ["t", "thickness", "length"] as const;
const area = ["A", "area", "area"] as const;

const sharp = "two rectangles, sharp corners; a rolled angle has up to 1.4 % more area";

export const angleArea = formula({
  id: "angle-area",
  symbol: "A",
  name: "area of an angle",
  measure: "area",
  arguments: [upright, lying, thickness],
  expression: "t * (a + b - t)",
  citation: derived(sharp),
  evaluate: (a, b, t) => t * (a + b - t),
});

export const angleCentroid = formula({
  id: "angle-centroid",
  symbol: "y_c",
  name: "height of the centroid above the back of the lying leg",
  measure: "length",
  arguments: [upright, lying, thickness],
  expression: "(a^2 + (b - t) * t) / (2 * (a + b - t))",
  citation: derived(sharp),
  evaluate: (a, b, t) => (a * a + (b - t) * t) / (2 * (a + b - t)),
});

export const angleSecondMoment = formula({
  id: "angle-second-moment",
  symbol: "I",
  name: "second moment of area of an angle about the axis along the lying leg",
  measure: "second-moment",
  arguments: [upright, lying, thickness, area, ["y_c", "height of the centroid", "length"]],
  expression: "(t * a^3 + (b - t) * t^3) / 3 - A * y_c^2",
  citation: derived(sharp),
  evaluate: (a, b, t, A, y) => (t * a * a * a + (b - t) * t * t * t) / 3 - A * y * y,
});

export const angleTorsionConstant = formula({
  id: "angle-torsion-constant",
  symbol: "J",
  name: "torsion constant of an angle",
  measure: "second-moment",
  arguments: [area, thickness],
  expression: "A * t^2 / 3",
  citation: cite("roark-7", "table 10.1, thin open section", "memory"),
  range: "thin legs; fillets left out, which errs safe",
  evaluate: (A, t) => (A * t * t) / 3,
});
