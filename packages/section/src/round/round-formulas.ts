import { cite, derived, formula } from "@hoopstay/core";

const outside = ["D", "outside diameter", "length"] as const;
const wall = ["t", "wall", "length"] as const;

export const roundArea = formula({
  id: "round-area",
  symbol: "A",
  name: "area of a round tube",
  measure: "area",
  arguments: [outside, wall],
  expression: "3.141592653589793 * (D - t) * t",
  citation: derived("ring of outside diameter D and wall t"),
  range: "t at most D/2",
  evaluate: (D, t) => Math.PI * (D - t) * t,
});

export const roundSecondMoment = formula({
  id: "round-second-moment",
  symbol: "I",
  name: "second moment of area of a round tube",
  measure: "second-moment",
  arguments: [outside, wall],
  expression: "3.141592653589793 / 64 * (D^4 - (D - 2 * t)^4)",
  citation: derived("ring of outside diameter D and wall t"),
  range: "t at most D/2",
  evaluate: (D, t) => {
    const d = D - 2 * t;
    return (Math.PI / 16) * (D - t) * t * (D * D + d * d);
  },
});

export const roundElasticModulus = formula({
  id: "round-elastic-modulus",
  symbol: "S",
  name: "elastic section modulus of a round tube",
  measure: "section-modulus",
  arguments: [["I", "second moment of area", "second-moment"], outside],
  expression: "2 * I / D",
  citation: derived("second moment over the distance of the extreme fibre"),
  evaluate: (I, D) => (2 * I) / D,
});

export const roundPlasticModulus = formula({
  id: "round-plastic-modulus",
  symbol: "Z",
  name: "plastic section modulus of a round tube",
  measure: "section-modulus",
  arguments: [outside, wall],
  expression: "(D^3 - (D - 2 * t)^3) / 6",
  citation: derived("first moment of both halves of a ring"),
  range: "t at most D/2",
  evaluate: (D, t) => {
    const d = D - 2 * t;
    return (t * (D * D + D * d + d * d)) / 3;
  },
});

export const radiusOfGyration = formula({
  id: "radius-of-gyration",
  symbol: "r",
  name: "radius of gyration",
  measure: "length",
  arguments: [
    ["I", "second moment of area", "second-moment"],
    ["A", "area", "area"],
  ],
  expression: "sqrt(I / A)",
  citation: derived("definition of the radius of gyration"),
  evaluate: (I, A) => Math.sqrt(I / A),
});

export const roundTorsionConstant = formula({
  id: "round-torsion-constant",
  symbol: "J",
  name: "torsion constant of a round tube",
  measure: "second-moment",
  arguments: [["I", "second moment of area", "second-moment"]],
  expression: "2 * I",
  citation: derived("polar second moment of a ring"),
  evaluate: (I) => 2 * I,
});

/** J over D/2. The simpler pi (D - t)^2 t / 2 of H3.1 is up to 10 % high on small thick tube. */
export const roundTorsionModulus = formula({
  id: "round-torsion-modulus",
  symbol: "C",
  name: "torsion modulus of a round tube",
  measure: "section-modulus",
  arguments: [["J", "torsion constant", "second-moment"], outside],
  expression: "2 * J / D",
  citation: cite("aisc-shapes-15", "round HSS, column C", "read"),
  evaluate: (J, D) => (2 * J) / D,
});
