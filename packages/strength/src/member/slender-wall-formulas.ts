import { cite, formula } from "@hoopstay/core";

const memory = (place: string) => cite("aisc-360-22", place, "memory");

/** c_1 and c_2 of the walls of square and rectangular tube, table E7.1. */
const c1 = 0.2;
const c2 = 1.38;

export const elasticLocalStress = formula({
  id: "elastic-local-stress",
  symbol: "F_el",
  name: "elastic local buckling stress of a wall",
  measure: "pressure",
  arguments: [
    ["lambda_r", "flat over wall up to which the wall is whole", "ratio"],
    ["lambda", "flat over wall", "ratio"],
    ["F_y", "yield strength", "pressure"],
  ],
  expression: `(${c2} * lambda_r / lambda)^2 * F_y`,
  citation: memory("equation E7-4 and table E7.1"),
  evaluate: (limit, slenderness, fy) => {
    const root = (c2 * limit) / slenderness;
    return root * root * fy;
  },
});

export const effectiveFlat = formula({
  id: "effective-flat",
  symbol: "b_e",
  name: "effective width of a slender wall in compression",
  measure: "length",
  arguments: [
    ["b", "flat width", "length"],
    ["F_el", "elastic local buckling stress", "pressure"],
    ["F_cr", "buckling stress of the member", "pressure"],
  ],
  expression: `b * (1 - ${c1} * sqrt(F_el / F_cr)) * sqrt(F_el / F_cr)`,
  citation: memory("equation E7-3 and table E7.1"),
  range: "lambda above lambda_r sqrt(F_y/F_cr)",
  evaluate: (flat, local, critical) => {
    const root = Math.sqrt(local / critical);
    return flat * (1 - c1 * root) * root;
  },
});

export const rectangularEffectiveArea = formula({
  id: "rectangular-effective-area",
  symbol: "A_e",
  name: "effective area of a rectangular tube in compression",
  measure: "area",
  arguments: [
    ["A_g", "gross area", "area"],
    ["b", "flat of the sides along the width", "length"],
    ["b_e", "its effective part", "length"],
    ["h", "flat of the sides along the depth", "length"],
    ["h_e", "its effective part", "length"],
    ["t", "wall", "length"],
  ],
  expression: "A_g - 2 * t * (b - b_e + h - h_e)",
  citation: memory("E7: area less what the walls lose"),
  evaluate: (area, b, be, h, he, wall) => area - 2 * wall * (b - be + h - he),
});

/** Between 0.11 and 0.114 E/F_y the printed form exceeds the gross area, which then counts. */
export const roundEffectiveArea = formula({
  id: "round-effective-area",
  symbol: "A_e",
  name: "effective area of a slender round tube in compression",
  measure: "area",
  arguments: [
    ["A_g", "gross area", "area"],
    ["E", "modulus of elasticity", "pressure"],
    ["F_y", "yield strength", "pressure"],
    ["lambda", "diameter over wall", "ratio"],
  ],
  expression: "A_g * min(1, 0.038 * E / (F_y * lambda) + 2 / 3)",
  citation: memory("equation E7-7"),
  range: "D/t from 0.11 to 0.45 E/F_y",
  evaluate: (area, E, fy, slenderness) =>
    area * Math.min(1, (0.038 * E) / (fy * slenderness) + 2 / 3),
});
