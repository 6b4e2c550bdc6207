import { derived, formula } from "@hoopstay/core";
import { sizes } from "./arc-sizes.ts";

const circle = derived("two mirrored arcs through the springings and the crown");

export const uprightOffset = formula({
  id: "upright-offset",
  symbol: "c",
  name: "offset of the arc's centre beyond the middle, pointed arch that springs upright",
  measure: "length",
  arguments: [sizes.b, sizes.f],
  expression: "(f^2 - b^2 / 4) / b",
  citation: circle,
  evaluate: (b, f) => (f * f - (b * b) / 4) / b,
});

export const arcCentreHeight = formula({
  id: "arc-centre-height",
  symbol: "e",
  name: "height of the arc's centre above the springing",
  measure: "length",
  arguments: [sizes.b, sizes.f, sizes.c],
  expression: "(f^2 - b^2 / 4 - b * c) / (2 * f)",
  citation: circle,
  evaluate: (b, f, c) => {
    const half = b / 2;
    return (f * f - half * half - 2 * c * half) / (2 * f);
  },
});

export const arcRadius = formula({
  id: "arc-radius",
  symbol: "R",
  name: "radius of the arcs",
  measure: "length",
  arguments: [sizes.b, sizes.c, sizes.e],
  expression: "sqrt((b / 2 + c)^2 + e^2)",
  citation: circle,
  evaluate: (b, c, e) => Math.hypot(b / 2 + c, e),
});

export const springAngleOf = formula({
  id: "spring-angle",
  symbol: "t_0",
  name: "angle of the springing, seen from the arc's centre",
  measure: "angle",
  arguments: [sizes.b, sizes.c, sizes.e],
  expression: "-atan(e / (b / 2 + c))",
  citation: circle,
  range: "b / 2 + c above zero",
  evaluate: (b, c, e) => Math.atan2(-e, b / 2 + c),
});

export const crownAngleOf = formula({
  id: "crown-angle",
  symbol: "t_1",
  name: "angle of the crown, seen from the arc's centre",
  measure: "angle",
  arguments: [sizes.f, sizes.c, sizes.e],
  expression: "2 * atan((f - e) / (c + sqrt(c^2 + (f - e)^2)))",
  citation: circle,
  range: "f above e",
  evaluate: (f, c, e) => Math.atan2(f - e, c),
});

export const angleAlong = formula({
  id: "angle-along",
  symbol: "t",
  name: "angle at a share of the arc's length from springing to crown",
  measure: "angle",
  arguments: [sizes.t0, sizes.t1, ["k", "share of the length from springing to crown", "ratio"]],
  expression: "t_0 + k * (t_1 - t_0)",
  citation: circle,
  evaluate: (t0, t1, share) => t0 + share * (t1 - t0),
});

export const arcPlaceAcross = formula({
  id: "arc-place-across",
  symbol: "x",
  name: "distance from the middle of a point of the arc",
  measure: "length",
  arguments: [sizes.R, ["t", "its angle", "angle"], sizes.c],
  expression: "R * cos(t) - c",
  citation: circle,
  evaluate: (R, t, c) => R * Math.cos(t) - c,
});

export const arcPlaceUp = formula({
  id: "arc-place-up",
  symbol: "y",
  name: "height above the springing of a point of the arc",
  measure: "length",
  arguments: [sizes.e, sizes.R, ["t", "its angle", "angle"]],
  expression: "e + R * sin(t)",
  citation: circle,
  evaluate: (e, R, t) => e + R * Math.sin(t),
});

export const arcHeight = formula({
  id: "arc-height",
  symbol: "y",
  name: "height of the arc above the springing at a distance from the middle",
  measure: "length",
  arguments: [sizes.e, sizes.R, ["x", "distance from the middle", "length"], sizes.c],
  expression: "e + sqrt(R^2 - (x + c)^2)",
  citation: circle,
  range: "x from 0 to half the span",
  evaluate: (e, R, x, c) => {
    const fromCentre = x + c;
    return e + Math.sqrt(R * R - fromCentre * fromCentre);
  },
});
