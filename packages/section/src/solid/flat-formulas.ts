import { cite, derived, formula } from "@hoopstay/core";

const width = ["b", "width", "length"] as const;
const thickness = ["t", "thickness", "length"] as const;

export const flatArea = formula({
  id: "flat-area",
  symbol: "A",
  name: "area of a flat bar",
  measure: "area",
  arguments: [width, thickness],
  expression: "b * t",
  citation: derived("rectangle"),
  evaluate: (b, t) => b * t,
});

/** About the axis across `h`; swap the two for the other axis. */
export const rectangleSecondMoment = formula({
  id: "rectangle-second-moment",
  symbol: "I",
  name: "second moment of area of a rectangle",
  measure: "second-moment",
  arguments: [
    ["h", "side along which the stress varies", "length"],
    ["w", "side across", "length"],
  ],
  expression: "w * h^3 / 12",
  citation: derived("rectangle"),
  evaluate: (h, w) => (w * h * h * h) / 12,
});

export const flatTorsionConstant = formula({
  id: "flat-torsion-constant",
  symbol: "J",
  name: "torsion constant of a flat bar",
  measure: "second-moment",
  arguments: [width, thickness],
  expression: "b * t^3 / 3 * (1 - 0.63 * t / b * (1 - (t / b)^4 / 12))",
  citation: cite("roark-7", "table 10.1, solid rectangular section", "memory"),
  range: "t at most b",
  evaluate: (b, t) => {
    const ratio = t / b;
    const square = ratio * ratio;
    return ((b * t * t * t) / 3) * (1 - 0.63 * ratio * (1 - (square * square) / 12));
  },
});

export const flatTorsionModulus = formula({
  id: "flat-torsion-modulus",
  symbol: "C",
  name: "torsion modulus of a flat bar",
  measure: "section-modulus",
  arguments: [width, thickness],
  expression:
    "b * t^2 / 3 / (1 + 0.6095 * (t / b) + 0.8865 * (t / b)^2 - 1.8023 * (t / b)^3" +
    " + 0.91 * (t / b)^4)",
  citation: cite("roark-7", "table 10.1, solid rectangular section", "memory"),
  range: "t at most b",
  evaluate: (b, t) => {
    const r = t / b;
    return (b * t * t) / 3 / (1 + r * (0.6095 + r * (0.8865 + r * (-1.8023 + r * 0.91))));
  },
});
