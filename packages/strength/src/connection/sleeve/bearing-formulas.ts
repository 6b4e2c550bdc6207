import { cite, constant, formula } from "@hoopstay/core";

const diameter = ["d", "bolt diameter", "length"] as const;
const wall = ["t", "design wall", "length"] as const;
const yieldStrength = ["F_y", "yield strength of the wall", "pressure"] as const;
const tensile = ["F_u", "tensile strength of the wall", "pressure"] as const;
const walls = ["n_w", "walls of the tube that bear", "ratio"] as const;

/** Walls not gripped between plies: a bolt right through a tube bears as a pin. */
export const pinBearing = formula({
  id: "pin-bearing-strength",
  symbol: "R_n",
  name: "bearing of a bolt through an unstiffened tube",
  measure: "force",
  arguments: [walls, yieldStrength, diameter, wall],
  expression: "n_w * 1.8 * F_y * d * t",
  citation: cite("aisc-360-22", "J3.11b and J7, equation J7-1", "read"),
  evaluate: (count, Fy, d, t) => count * 1.8 * Fy * d * t,
});

export const tearOut = formula({
  id: "tear-out-strength",
  symbol: "R_n",
  name: "tear-out of a bolt",
  measure: "force",
  arguments: [walls, ["l_c", "clear distance", "length"], wall, tensile],
  expression: "n_w * 1.2 * l_c * t * F_u",
  citation: cite("aisc-360-22", "J3.11, tear-out, hole deformation considered", "read"),
  evaluate: (count, lc, t, Fu) => count * 1.2 * lc * t * Fu,
});

export const endClearDistance = formula({
  id: "end-clear-distance",
  symbol: "l_c",
  name: "clear distance, hole to the end of the tube",
  measure: "length",
  arguments: [
    ["L_e", "end distance, centre of the hole to the end", "length"],
    ["d_h", "hole diameter", "length"],
  ],
  expression: "L_e - d_h / 2",
  citation: cite("aisc-360-22", "J3.11, clear distance", "read"),
  evaluate: (end, hole) => end - hole / 2,
});

export const holeClearDistance = formula({
  id: "hole-clear-distance",
  symbol: "l_c",
  name: "clear distance, hole to hole",
  measure: "length",
  arguments: [
    ["s", "bolt spacing", "length"],
    ["d_h", "hole diameter", "length"],
  ],
  expression: "s - d_h",
  citation: cite("aisc-360-22", "J3.11, clear distance", "read"),
  evaluate: (spacing, hole) => spacing - hole,
});

/** 3.0 below d/t 10, 4 - 0.1 d/t to 22, 1.8 above: one expression, for the lines meet. */
export const sheetBearingFactor = formula({
  id: "sheet-bearing-factor",
  symbol: "C",
  name: "bearing factor of a thin wall",
  measure: "ratio",
  arguments: [diameter, wall],
  expression: "max(1.8, min(3, 4 - 0.1 * d / t))",
  citation: cite("aisi-s100", "table J3.3.1-1; 3.0 quoted, breakpoints", "memory"),
  range: "wall from 0.024 in to under 3/16 in",
  evaluate: (d, t) => Math.max(1.8, Math.min(3, 4 - (0.1 * d) / t)),
});

const noWashers = cite("aisi-s100", "table J3.3.1-2, no washers", "second-hand");
const bothWashers = cite("aisi-s100", "table J3.3.1-2, washers on both sides", "memory");

export const connectionTypeFactor = {
  plain: constant("sheet-plain", "m_f", "type of connection, no washers", 0.75, "ratio", noWashers),
  washers: constant("sheet-washers", "m_f", "type of connection, washers", 1, "ratio", bothWashers),
} as const;

export const sheetBearing = formula({
  id: "sheet-bearing-strength",
  symbol: "R_n",
  name: "bearing of a bolt on thin walls",
  measure: "force",
  arguments: [
    walls,
    ["C", "bearing factor", "ratio"],
    ["m_f", "type of connection", "ratio"],
    diameter,
    wall,
    tensile,
  ],
  expression: "n_w * C * m_f * d * t * F_u",
  citation: cite("aisi-s100", "equation J3.3.1-1 (E3.3.1-1 before)", "second-hand"),
  range: "wall from 0.024 in to under 3/16 in",
  evaluate: (count, C, mf, d, t, Fu) => count * C * mf * d * t * Fu,
});

/** The source takes t in inches; 0.0254 turns it. */
export const sheetDeformationBearing = formula({
  id: "sheet-deformation-strength",
  symbol: "R_n",
  name: "bearing on thin walls, hole deformation limited",
  measure: "force",
  arguments: [walls, wall, diameter, tensile],
  expression: "n_w * (4.64 * t / 0.0254 + 1.53) * d * t * F_u",
  citation: cite("aisi-s100", "equation J3.3.2-1 (E3.3.2-1 before)", "second-hand"),
  range: "wall from 0.024 in to under 3/16 in",
  evaluate: (count, t, d, Fu) => count * ((4.64 * t) / 0.0254 + 1.53) * d * t * Fu,
});
