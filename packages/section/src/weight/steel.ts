import { type Citation, cite, formula, judged } from "@hoopstay/core";

/** A number with its place, where the closed list of printed measures has no room for its unit. */
export interface CitedNumber {
  readonly value: number;
  readonly unit: string;
  readonly citation: Citation;
}

/** Standard acceleration of gravity, exact. */
export const gravity: CitedNumber = {
  value: 9.80665,
  unit: "m/s2",
  citation: cite("nist-sp-811", "appendix B.8, standard acceleration of free fall", "memory"),
};

/** Steel of the European section standards, and of bars, flats and angles here. */
export const steelDensity: CitedNumber = {
  value: 7850,
  unit: "kg/m3",
  citation: cite("en-10219-2", "annex B, density", "memory"),
};

/** Steel behind the American shape tables: 490 lb/ft3, by the exact pound and foot. */
export const poundSteelDensity: CitedNumber = {
  value: (490 * 0.45359237) / (0.3048 * 0.3048 * 0.3048),
  unit: "kg/m3",
  citation: cite("aisc-shapes-15", "column W: 490 lb/ft3 times the nominal area", "second-hand"),
};

/** Zinc. */
export const zincDensity: CitedNumber = {
  value: 7140,
  unit: "kg/m3",
  citation: cite("crc-handbook", "zinc", "memory"),
};

const area = ["A", "steel area", "area"] as const;
const length = ["L", "length", "length"] as const;

export const steelWeight = formula({
  id: "steel-weight",
  symbol: "W",
  name: "weight of a length of steel at 7850 kg/m3",
  measure: "force",
  arguments: [area, length],
  expression: "7850 * 9.80665 * A * L",
  citation: steelDensity.citation,
  evaluate: (A, L) => steelDensity.value * gravity.value * A * L,
});

export const poundSteelWeight = formula({
  id: "pound-steel-weight",
  symbol: "W",
  name: "weight of a length of steel at 490 lb/ft3",
  measure: "force",
  arguments: [area, length],
  expression: "490 * 0.45359237 / 0.3048^3 * 9.80665 * A * L",
  citation: poundSteelDensity.citation,
  evaluate: (A, L) => poundSteelDensity.value * gravity.value * A * L,
});

export const zincWeight = formula({
  id: "zinc-weight",
  symbol: "W_z",
  name: "weight of the zinc on both faces of a length of tube",
  measure: "force",
  arguments: [
    ["p_z", "outer plus inner outline", "length"],
    ["t_z", "thickness of the zinc", "length"],
    length,
  ],
  expression: "7140 * 9.80665 * p_z * t_z * L",
  citation: judged("the coating grade, a least average, taken all over both faces; high estimate"),
  evaluate: (outline, thickness, L) => zincDensity.value * gravity.value * outline * thickness * L,
});
