import { derived, formula, power } from "@hoopstay/core";
import { sizes } from "./arc-sizes.ts";

export const flatEndArea = formula({
  id: "flat-end-area",
  symbol: "A_e",
  name: "flat area of an end: under the two arcs, and the strip below them",
  measure: "area",
  arguments: [sizes.R, sizes.t0, sizes.t1, sizes.c, ["b", "span of the shell", "length"], sizes.zs],
  expression:
    "R^2 * (t_1 - t_0 + sin(t_1) * cos(t_1) - sin(t_0) * cos(t_0)) - 2 * c * R * (sin(t_1) - sin(t_0)) + b * z_s",
  citation: derived("area under the arcs by Green's theorem"),
  evaluate: (R, t0, t1, c, b, springing) =>
    R * R * (t1 - t0 + Math.sin(t1) * Math.cos(t1) - Math.sin(t0) * Math.cos(t0)) -
    2 * c * R * (Math.sin(t1) - Math.sin(t0)) +
    b * springing,
});

export const underArcArea = formula({
  id: "under-arc-area",
  symbol: "A_a",
  name: "area under the arcs",
  measure: "area",
  arguments: [
    ["A_e", "flat area of an end", "area"],
    ["b", "span of the shell", "length"],
    sizes.zs,
  ],
  expression: "A_e - b * z_s",
  citation: derived("an end without the strip below its arcs"),
  evaluate: (area, b, springing) => area - b * springing,
});

export const underArcMoment = formula({
  id: "under-arc-moment",
  symbol: "S_a",
  name: "first moment of the area under the arcs about the springing line",
  measure: "first-moment",
  arguments: [
    ["A_a", "area under the arcs", "area"],
    sizes.e,
    sizes.R,
    sizes.t0,
    sizes.t1,
    sizes.c,
  ],
  expression:
    "A_a * e - 2 / 3 * R^3 * (cos(t_1)^3 - cos(t_0)^3) - c * R^2 * (sin(t_1)^2 - sin(t_0)^2)",
  citation: derived("first moment of the area under the arcs by Green's theorem"),
  evaluate: (area, e, R, t0, t1, c) => {
    const cosines = power(Math.cos(t1), 3) - power(Math.cos(t0), 3);
    const sines = Math.sin(t1) ** 2 - Math.sin(t0) ** 2;
    return area * e - (2 / 3) * power(R, 3) * cosines - c * R * R * sines;
  },
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
    sizes.zs,
    ["A_e", "flat area of an end", "area"],
  ],
  expression: "(A_a * z_s + S_a + b * z_s^2 / 2) / A_e",
  citation: derived("first moments of the area under the arcs and of the strip, over the whole"),
  evaluate: (under, moment, b, springing, area) =>
    (under * springing + moment + (b * springing * springing) / 2) / area,
});
