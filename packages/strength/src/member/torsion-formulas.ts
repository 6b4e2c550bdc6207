import { cite, formula, power } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");
const modulus = ["E", "modulus of elasticity", "pressure"] as const;
const yieldStrength = ["F_y", "yield strength", "pressure"] as const;
const flat = ["lambda", "flat over wall of the longer side", "ratio"] as const;

export const roundTorsionStress = formula({
  id: "round-torsion-stress",
  symbol: "F_cr",
  name: "shear stress at which a round tube yields or buckles in torsion",
  measure: "pressure",
  arguments: [
    modulus,
    yieldStrength,
    ["L", "length held at both ends", "length"],
    ["D", "outside diameter", "length"],
    ["t", "wall", "length"],
  ],
  expression:
    "min(0.6 * F_y, max(1.23 * E / (sqrt(L / D) * (D / t)^1.25), 0.60 * E / (D / t)^1.5))",
  citation: read("equations H3-2a and H3-2b"),
  evaluate: (E, fy, L, D, t) => {
    const ratio = D / t;
    const long = (1.23 * E) / (Math.sqrt(L / D) * power(ratio, 1.25));
    return Math.min(0.6 * fy, Math.max(long, (0.6 * E) / power(ratio, 1.5)));
  },
});

export const yieldTorsionStress = formula({
  id: "yield-torsion-stress",
  symbol: "F_cr",
  name: "shear stress at which a rectangular tube yields in torsion",
  measure: "pressure",
  arguments: [yieldStrength],
  expression: "0.6 * F_y",
  citation: read("equation H3-3"),
  range: "h/t up to 2.45 sqrt(E/F_y)",
  evaluate: (fy) => 0.6 * fy,
});

export const inelasticTorsionStress = formula({
  id: "inelastic-torsion-stress",
  symbol: "F_cr",
  name: "shear stress at which a rectangular tube buckles with yielding in torsion",
  measure: "pressure",
  arguments: [yieldStrength, modulus, flat],
  expression: "0.6 * F_y * 2.45 * sqrt(E / F_y) / lambda",
  citation: read("equation H3-4"),
  range: "h/t from 2.45 to 3.07 sqrt(E/F_y)",
  evaluate: (fy, E, ratio) => (0.6 * fy * 2.45 * Math.sqrt(E / fy)) / ratio,
});

export const elasticTorsionStress = formula({
  id: "elastic-torsion-stress",
  symbol: "F_cr",
  name: "shear stress at which a rectangular tube buckles in torsion",
  measure: "pressure",
  arguments: [modulus, flat],
  expression: "0.458 * 3.141592653589793^2 * E / lambda^2",
  citation: cite("aisc-360-22", "equation H3-5", "memory"),
  range: "h/t from 3.07 sqrt(E/F_y) to 260",
  evaluate: (E, ratio) => (0.458 * Math.PI * Math.PI * E) / (ratio * ratio),
});

/** With C = J/(D/2) of a round tube; pi (D - t)^2 t / 2 of the user note is up to 10 % unsafe. */
export const torsionMoment = formula({
  id: "torsion-moment",
  symbol: "T_n",
  name: "strength in torsion",
  measure: "moment",
  arguments: [
    ["F_cr", "shear stress", "pressure"],
    ["C", "torsion modulus", "section-modulus"],
  ],
  expression: "F_cr * C",
  citation: read("equation H3-1"),
  evaluate: (stress, C) => stress * C,
});
