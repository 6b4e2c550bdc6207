import { cite, formula, power } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");
const modulus = ["E", "modulus of elasticity", "pressure"] as const;
const yieldStrength = ["F_y", "yield strength", "pressure"] as const;
const flat = ["lambda", "flat over wall of the web", "ratio"] as const;

/** k_v 5 of G4 under the roots of G2.2. */
export const webShearArea = formula({
  id: "web-shear-area",
  symbol: "A_w",
  name: "area of both webs in shear",
  measure: "area",
  arguments: [
    ["h", "flat of a web", "length"],
    ["t", "wall", "length"],
  ],
  expression: "2 * h * t",
  citation: read("G4"),
  evaluate: (h, t) => 2 * h * t,
});

export const inelasticWebFactor = formula({
  id: "inelastic-web-factor",
  symbol: "C_v2",
  name: "web shear buckling with yielding",
  measure: "ratio",
  arguments: [flat, modulus, yieldStrength],
  expression: "1.10 * sqrt(5 * E / F_y) / lambda",
  citation: cite("aisc-360-22", "equation G2-10, k_v 5", "memory"),
  range: "h/t from 1.10 to 1.37 sqrt(5 E/F_y)",
  evaluate: (ratio, E, fy) => (1.1 * Math.sqrt((5 * E) / fy)) / ratio,
});

export const elasticWebFactor = formula({
  id: "elastic-web-factor",
  symbol: "C_v2",
  name: "elastic web shear buckling",
  measure: "ratio",
  arguments: [flat, modulus, yieldStrength],
  expression: "1.51 * 5 * E / (lambda^2 * F_y)",
  citation: cite("aisc-360-22", "equation G2-11, k_v 5", "memory"),
  range: "h/t above 1.37 sqrt(5 E/F_y)",
  evaluate: (ratio, E, fy) => (1.51 * 5 * E) / (ratio * ratio * fy),
});

export const webShear = formula({
  id: "web-shear",
  symbol: "V_n",
  name: "strength in shear",
  measure: "force",
  arguments: [
    yieldStrength,
    ["A_w", "area in shear", "area"],
    ["C_v2", "web shear buckling factor", "ratio"],
  ],
  expression: "0.6 * F_y * A_w * C_v2",
  citation: read("equation G4-1"),
  evaluate: (fy, area, factor) => 0.6 * fy * area * factor,
});

export const roundShearStress = formula({
  id: "round-shear-stress",
  symbol: "F_cr",
  name: "shear stress at which a round tube yields or buckles",
  measure: "pressure",
  arguments: [
    modulus,
    yieldStrength,
    ["L_v", "length from the greatest shear to none", "length"],
    ["D", "outside diameter", "length"],
    ["t", "wall", "length"],
  ],
  expression:
    "min(0.6 * F_y, max(1.60 * E / (sqrt(L_v / D) * (D / t)^1.25), 0.78 * E / (D / t)^1.5))",
  citation: read("equations G5-2a and G5-2b"),
  evaluate: (E, fy, Lv, D, t) => {
    const ratio = D / t;
    const long = (1.6 * E) / (Math.sqrt(Lv / D) * power(ratio, 1.25));
    return Math.min(0.6 * fy, Math.max(long, (0.78 * E) / power(ratio, 1.5)));
  },
});

export const roundShear = formula({
  id: "round-shear",
  symbol: "V_n",
  name: "strength of a round tube in shear",
  measure: "force",
  arguments: [
    ["F_cr", "shear stress", "pressure"],
    ["A_g", "gross area", "area"],
  ],
  expression: "F_cr * A_g / 2",
  citation: read("equation G5-1"),
  evaluate: (stress, area) => (stress * area) / 2,
});
