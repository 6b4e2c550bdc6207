import { derived, formula, power } from "@hoopstay/core";

/** A weld treated as a line, by elastic line properties: area is a length, S an area, J/r an area. */
const line = derived("weld as a line: elastic properties per unit of throat");

const diameter = ["D", "diameter of the weld circle", "length"] as const;
const axial = ["P", "force along the branch", "force"] as const;
const shear = ["V", "force across the branch", "force"] as const;
const moment = ["M", "bending moment", "moment"] as const;
const torque = ["T", "torque", "moment"] as const;
const width = ["b", "width of the weld rectangle", "length"] as const;
const depth = ["d", "depth of the weld rectangle", "length"] as const;
const normal = ["f_n", "force along the branch, per length", "force-per-length"] as const;

export const circleNormal = formula({
  id: "circle-weld-normal",
  symbol: "f_n",
  name: "force along the branch on a round weld, worst point",
  measure: "force-per-length",
  arguments: [diameter, axial, moment],
  expression: "abs(P) / (3.141592653589793 * D) + 4 * abs(M) / (3.141592653589793 * D^2)",
  citation: line,
  evaluate: (D, P, M) => Math.abs(P) / (Math.PI * D) + (4 * Math.abs(M)) / (Math.PI * D * D),
});

export const circleShear = formula({
  id: "circle-weld-shear",
  symbol: "f_v",
  name: "force across the branch on a round weld",
  measure: "force-per-length",
  arguments: [diameter, shear, torque],
  expression: "abs(V) / (3.141592653589793 * D) + 2 * abs(T) / (3.141592653589793 * D^2)",
  citation: line,
  evaluate: (D, V, T) => Math.abs(V) / (Math.PI * D) + (2 * Math.abs(T)) / (Math.PI * D * D),
});

export const rectangleNormal = formula({
  id: "rectangle-weld-normal",
  symbol: "f_n",
  name: "force along the branch on a rectangular weld, at a corner",
  measure: "force-per-length",
  arguments: [
    width,
    depth,
    axial,
    ["M_x", "bending moment that works the depth", "moment"],
    ["M_y", "bending moment that works the width", "moment"],
  ],
  expression:
    "abs(P) / (2 * (b + d)) + abs(M_x) / (b * d + d^2 / 3) + abs(M_y) / (b * d + b^2 / 3)",
  citation: line,
  evaluate: (b, d, P, Mx, My) =>
    Math.abs(P) / (2 * (b + d)) +
    Math.abs(Mx) / (b * d + (d * d) / 3) +
    Math.abs(My) / (b * d + (b * b) / 3),
});

/**
 * Side of the rectangle whose corners lie on the rounded ones: a shorter line than the real weld, and
 * nowhere outside it.
 */
export const inscribedSide = formula({
  id: "inscribed-side",
  symbol: "b",
  name: "side of the weld rectangle that fits into the rounded corners",
  measure: "length",
  arguments: [
    ["B", "outside of the branch", "length"],
    ["R", "outside corner radius", "length"],
  ],
  expression: "B - (2 - sqrt(2)) * R",
  citation: derived("middle of a quarter circle lies (1 - 1/sqrt 2) R inside each side"),
  range: "R at most B / 2",
  evaluate: (B, R) => B - (2 - Math.SQRT2) * R,
});

/** One component; `a` is the side across it: the depth for the force along the width. */
export const rectangleShear = formula({
  id: "rectangle-weld-shear",
  symbol: "f_v",
  name: "force across the branch on a rectangular weld, one way, at a corner",
  measure: "force-per-length",
  arguments: [width, depth, shear, torque, ["a", "side across this way", "length"]],
  expression: "abs(V) / (2 * (b + d)) + 3 * abs(T) * a / (b + d)^3",
  citation: line,
  evaluate: (b, d, V, T, a) =>
    Math.abs(V) / (2 * (b + d)) + (3 * Math.abs(T) * a) / power(b + d, 3),
});

export const weldVectorSum = formula({
  id: "weld-vector-sum",
  symbol: "f",
  name: "force on the weld per length, vector sum at the worst point",
  measure: "force-per-length",
  arguments: [
    normal,
    ["f_vx", "force across the branch, one way, per length", "force-per-length"],
    ["f_vy", "force across the branch, the other way, per length", "force-per-length"],
  ],
  expression: "sqrt(f_n^2 + f_vx^2 + f_vy^2)",
  citation: line,
  evaluate: (fn, fx, fy) => Math.sqrt(fn * fn + fx * fx + fy * fy),
});
