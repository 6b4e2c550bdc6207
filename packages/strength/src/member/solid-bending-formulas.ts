import { cite, formula } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");
const modulus = ["E", "modulus of elasticity", "pressure"] as const;
const yieldStrength = ["F_y", "yield strength", "pressure"] as const;
const elasticModulus = ["S", "elastic section modulus", "section-modulus"] as const;
const slenderness = [
  "lambda_b",
  "unbraced length times depth over thickness squared",
  "ratio",
] as const;

/** 360-16 allows 1.6 F_y S; only solid rounds reach either, and the lower is kept. */
export const solidPlasticMoment = formula({
  id: "solid-plastic-moment",
  symbol: "M_p",
  name: "plastic moment of a bar",
  measure: "moment",
  arguments: [yieldStrength, ["Z", "plastic section modulus", "section-modulus"], elasticModulus],
  expression: "min(F_y * Z, 1.5 * F_y * S)",
  citation: read("equation F11-1"),
  evaluate: (fy, Z, S) => Math.min(fy * Z, 1.5 * fy * S),
});

export const barSlenderness = formula({
  id: "bar-slenderness",
  symbol: "lambda_b",
  name: "unbraced length times depth over thickness squared",
  measure: "ratio",
  arguments: [
    ["L_b", "length between points held sideways", "length"],
    ["d", "depth of the bar", "length"],
    ["t", "thickness", "length"],
  ],
  expression: "L_b * d / t^2",
  citation: read("F11"),
  evaluate: (length, depth, thickness) => (length * depth) / (thickness * thickness),
});

export const inelasticBarTurning = formula({
  id: "inelastic-bar-turning",
  symbol: "M_n",
  name: "bending strength of a bar on edge, no more than its plastic moment",
  measure: "moment",
  arguments: [
    slenderness,
    yieldStrength,
    modulus,
    elasticModulus,
    ["M_p", "plastic moment", "moment"],
  ],
  expression: "min(M_p, (1.52 - 0.274 * lambda_b * F_y / E) * F_y * S)",
  citation: read("F11.2(a), C_b 1"),
  range: "lambda_b from 0.08 to 1.9 E/F_y",
  evaluate: (ratio, fy, E, S, Mp) => Math.min(Mp, (1.52 - (0.274 * ratio * fy) / E) * fy * S),
});

export const elasticBarTurning = formula({
  id: "elastic-bar-turning",
  symbol: "M_n",
  name: "bending strength of a bar on edge that turns out before it yields",
  measure: "moment",
  arguments: [slenderness, modulus, elasticModulus],
  expression: "1.9 * E / lambda_b * S",
  citation: read("F11.2(b), C_b 1"),
  range: "lambda_b above 1.9 E/F_y",
  evaluate: (ratio, E, S) => ((1.9 * E) / ratio) * S,
});
