import { derived, formula, power } from "@hoopstay/core";

const circle = derived("two mirrored arcs through the springings and the crown");

const size = {
  b: ["b", "span", "length"],
  f: ["f", "rise", "length"],
  c: ["c", "offset of the arc's centre beyond the middle", "length"],
  e: ["e", "height of the arc's centre above the springing", "length"],
  R: ["R", "radius of the arcs", "length"],
  t0: ["t_0", "angle of the springing, seen from the arc's centre", "angle"],
  t1: ["t_1", "angle of the crown, seen from the arc's centre", "angle"],
  zs: ["z_s", "height of the springing", "length"],
} as const;

export const uprightOffset = formula({
  id: "upright-offset",
  symbol: "c",
  name: "offset of the arc's centre beyond the middle, pointed arch that springs upright",
  measure: "length",
  arguments: [size.b, size.f],
  expression: "(f^2 - b^2 / 4) / b",
  citation: circle,
  evaluate: (b, f) => (f * f - (b * b) / 4) / b,
});

export const arcCentreHeight = formula({
  id: "arc-centre-height",
  symbol: "e",
  name: "height of the arc's centre above the springing",
  measure: "length",
  arguments: [size.b, size.f, size.c],
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
  arguments: [size.b, size.c, size.e],
  expression: "sqrt((b / 2 + c)^2 + e^2)",
  citation: circle,
  evaluate: (b, c, e) => Math.hypot(b / 2 + c, e),
});

export const springAngleOf = formula({
  id: "spring-angle",
  symbol: "t_0",
  name: "angle of the springing, seen from the arc's centre",
  measure: "angle",
  arguments: [size.b, size.c, size.e],
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
  arguments: [size.f, size.c, size.e],
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
  arguments: [size.t0, size.t1, ["k", "share of the length from springing to crown", "ratio"]],
  expression: "t_0 + k * (t_1 - t_0)",
  citation: circle,
  evaluate: (t0, t1, share) => t0 + share * (t1 - t0),
});

export const arcPlaceAcross = formula({
  id: "arc-place-across",
  symbol: "x",
  name: "distance from the middle of a point of the arc",
  measure: "length",
  arguments: [size.R, ["t", "its angle", "angle"], size.c],
  expression: "R * cos(t) - c",
  citation: circle,
  evaluate: (R, t, c) => R * Math.cos(t) - c,
});

export const arcPlaceUp = formula({
  id: "arc-place-up",
  symbol: "y",
  name: "height above the springing of a point of the arc",
  measure: "length",
  arguments: [size.e, size.R, ["t", "its angle", "angle"]],
  expression: "e + R * sin(t)",
  citation: circle,
  evaluate: (e, R, t) => e + R * Math.sin(t),
});

export const arcHeight = formula({
  id: "arc-height",
  symbol: "y",
  name: "height of the arc above the springing at a distance from the middle",
  measure: "length",
  arguments: [size.e, size.R, ["x", "distance from the middle", "length"], size.c],
  expression: "e + sqrt(R^2 - (x + c)^2)",
  citation: circle,
  range: "x from 0 to half the span",
  evaluate: (e, R, x, c) => {
    const fromCentre = x + c;
    return e + Math.sqrt(R * R - fromCentre * fromCentre);
  },
});

export const halfSpan = formula({
  id: "half-span",
  symbol: "x_s",
  name: "distance of a springing from the middle",
  measure: "length",
  arguments: [size.b],
  expression: "b / 2",
  citation: circle,
  evaluate: (b) => b / 2,
});

export const quarterOfSpan = formula({
  id: "quarter-of-span",
  symbol: "x_q",
  name: "where the quarter of the span ends, from the middle",
  measure: "length",
  arguments: [size.b],
  expression: "b / 4",
  citation: derived("a quarter of the span from each springing"),
  evaluate: (b) => b / 4,
});

export const aboveGround = formula({
  id: "above-ground",
  symbol: "z",
  name: "height above the ground of a point of the arc",
  measure: "length",
  arguments: [size.zs, ["y", "its height above the springing", "length"]],
  expression: "z_s + y",
  citation: derived("heights added"),
  evaluate: (springing, height) => springing + height,
});

export const flatEndArea = formula({
  id: "flat-end-area",
  symbol: "A_e",
  name: "flat area of an end: under the two arcs, and the strip below them",
  measure: "area",
  arguments: [size.R, size.t0, size.t1, size.c, ["b", "span of the shell", "length"], size.zs],
  expression:
    "R^2 * (t_1 - t_0 + sin(t_1) * cos(t_1) - sin(t_0) * cos(t_0)) - 2 * c * R * (sin(t_1) - sin(t_0)) + b * z_s",
  citation: derived("area under the arcs by Green's theorem"),
  evaluate: (R, t0, t1, c, b, springing) =>
    R * R * (t1 - t0 + Math.sin(t1) * Math.cos(t1) - Math.sin(t0) * Math.cos(t0)) -
    2 * c * R * (Math.sin(t1) - Math.sin(t0)) +
    b * springing,
});

export const underArcMoment = formula({
  id: "under-arc-moment",
  symbol: "S_a",
  name: "first moment of the area under the arcs about the springing line",
  measure: "first-moment",
  arguments: [["A_a", "area under the arcs", "area"], size.e, size.R, size.t0, size.t1, size.c],
  expression:
    "A_a * e - 2 / 3 * R^3 * (cos(t_1)^3 - cos(t_0)^3) - c * R^2 * (sin(t_1)^2 - sin(t_0)^2)",
  citation: derived("first moment of the area under the arcs by Green's theorem"),
  evaluate: (area, e, R, t0, t1, c) => {
    const cosines = power(Math.cos(t1), 3) - power(Math.cos(t0), 3);
    const sines = Math.sin(t1) ** 2 - Math.sin(t0) ** 2;
    return area * e - (2 / 3) * power(R, 3) * cosines - c * R * R * sines;
  },
});

export const underArcArea = formula({
  id: "under-arc-area",
  symbol: "A_a",
  name: "area under the arcs",
  measure: "area",
  arguments: [
    ["A_e", "flat area of an end", "area"],
    ["b", "span of the shell", "length"],
    size.zs,
  ],
  expression: "A_e - b * z_s",
  citation: derived("an end without the strip below its arcs"),
  evaluate: (area, b, springing) => area - b * springing,
});

export const endWallCentroid = formula({
  id: "end-wall-centroid",
  symbol: "z_e",
  name: "height of the centroid of an end wall",
  measure: "length",
  arguments: [
    ["A_a", "area under the arcs", "area"],
    ["S_a", "its first moment about the springing line", "first-moment"],
    ["b", "span of the shell", "length"],
    size.zs,
    ["A_e", "flat area of an end", "area"],
  ],
  expression: "(A_a * z_s + S_a + b * z_s^2 / 2) / A_e",
  citation: derived("first moments of the area under the arcs and of the strip, over the whole"),
  evaluate: (under, moment, b, springing, area) =>
    (under * springing + moment + (b * springing * springing) / 2) / area,
});
