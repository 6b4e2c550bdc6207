import { cite, formula } from "@hoopstay/core";

const modulus = ["E", "modulus of elasticity", "pressure"] as const;
const radius = ["r_y", "radius of gyration about the other axis", "length"] as const;
const torsion = ["J", "torsion constant", "second-moment"] as const;
const area = ["A_g", "gross area", "area"] as const;
const plastic = ["M_p", "plastic moment", "moment"] as const;
const first = ["M_r", "0.7 F_y S_x", "moment"] as const;
const unbraced = ["L_b", "length between points held sideways", "length"] as const;
const citation = cite("aisc-360-22", "F7.4, C_b 1", "read");

export const plasticLength = formula({
  id: "plastic-length",
  symbol: "L_p",
  name: "unbraced length up to which the plastic moment is reached",
  measure: "length",
  arguments: [modulus, radius, torsion, area, plastic],
  expression: "0.13 * E * r_y * sqrt(J * A_g) / M_p",
  citation,
  evaluate: (E, r, J, A, Mp) => (0.13 * E * r * Math.sqrt(J * A)) / Mp,
});

export const firstYieldMoment = formula({
  id: "first-yield-moment",
  symbol: "M_r",
  name: "moment at first yielding with residual stress",
  measure: "moment",
  arguments: [
    ["F_y", "yield strength", "pressure"],
    ["S_x", "elastic section modulus", "section-modulus"],
  ],
  expression: "0.7 * F_y * S_x",
  citation,
  evaluate: (fy, S) => 0.7 * fy * S,
});

export const elasticLength = formula({
  id: "elastic-length",
  symbol: "L_r",
  name: "unbraced length above which the tube turns out before it yields",
  measure: "length",
  arguments: [modulus, radius, torsion, area, first],
  expression: "2 * E * r_y * sqrt(J * A_g) / M_r",
  citation,
  evaluate: (E, r, J, A, Mr) => (2 * E * r * Math.sqrt(J * A)) / Mr,
});

export const inelasticTurning = formula({
  id: "inelastic-turning",
  symbol: "M_n",
  name: "bending strength, turning out with yielding",
  measure: "moment",
  arguments: [
    plastic,
    first,
    unbraced,
    ["L_p", "plastic length", "length"],
    ["L_r", "elastic length", "length"],
  ],
  expression: "M_p - (M_p - M_r) * (L_b - L_p) / (L_r - L_p)",
  citation,
  range: "L_b from L_p to L_r",
  evaluate: (Mp, Mr, Lb, Lp, Lr) => Mp - ((Mp - Mr) * (Lb - Lp)) / (Lr - Lp),
});

export const elasticTurning = formula({
  id: "elastic-turning",
  symbol: "M_n",
  name: "bending strength, turning out before it yields",
  measure: "moment",
  arguments: [modulus, radius, torsion, area, unbraced],
  expression: "2 * E * r_y * sqrt(J * A_g) / L_b",
  citation,
  range: "L_b above L_r",
  evaluate: (E, r, J, A, Lb) => (2 * E * r * Math.sqrt(J * A)) / Lb,
});
