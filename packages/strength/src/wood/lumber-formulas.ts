import { cite, formula } from "@hoopstay/core";

const memory = (place: string) => cite("nds-2018", place, "memory");

const factors = [
  ["C_M", "wet service factor", "ratio"],
  ["C_F", "size factor", "ratio"],
  ["C_fu", "flat use factor", "ratio"],
] as const;

/** Without load duration: C_D (ASD) or K_F phi lambda (LRFD) comes after. */
export const lumberBendingStress = formula({
  id: "lumber-bending-stress",
  symbol: "F_bm",
  name: "bending stress of lumber, before load duration",
  measure: "pressure",
  arguments: [["F_b", "reference bending value", "pressure"], ...factors],
  expression: "F_b * C_M * C_F * C_fu",
  citation: memory("table 4.3.1"),
  evaluate: (Fb, wet, size, flat) => Fb * wet * size * flat,
});

export const lumberShearStress = formula({
  id: "lumber-shear-stress",
  symbol: "F_vm",
  name: "shear stress of lumber, before load duration",
  measure: "pressure",
  arguments: [
    ["F_v", "reference shear value", "pressure"],
    ["C_M", "wet service factor", "ratio"],
  ],
  expression: "F_v * C_M",
  citation: memory("table 4.3.1"),
  evaluate: (Fv, wet) => Fv * wet,
});

export const boardModulus = formula({
  id: "board-modulus",
  symbol: "S",
  name: "section modulus of a board",
  measure: "section-modulus",
  arguments: [
    ["b", "side across the load", "length"],
    ["d", "side along the load", "length"],
  ],
  expression: "b * d^2 / 6",
  citation: memory("3.3.2"),
  evaluate: (b, d) => (b * d * d) / 6,
});

export const boardMoment = formula({
  id: "board-moment",
  symbol: "M",
  name: "bending strength of a board",
  measure: "moment",
  arguments: [
    ["F_bm", "bending stress, before load duration", "pressure"],
    ["k", "C_D (ASD) or K_F phi lambda (LRFD)", "ratio"],
    ["S", "section modulus", "section-modulus"],
  ],
  expression: "k * F_bm * S",
  citation: memory("3.3.1"),
  evaluate: (stress, factor, S) => factor * stress * S,
});

export const boardShear = formula({
  id: "board-shear",
  symbol: "V",
  name: "strength of a board in shear",
  measure: "force",
  arguments: [
    ["F_vm", "shear stress, before load duration", "pressure"],
    ["k", "C_D (ASD) or K_F phi lambda (LRFD)", "ratio"],
    ["b", "side across the load", "length"],
    ["d", "side along the load", "length"],
  ],
  expression: "k * 2 / 3 * F_vm * b * d",
  citation: memory("equation 3.4-2"),
  evaluate: (stress, factor, b, d) => ((factor * 2) / 3) * stress * b * d,
});
