import { cite, constant, formula } from "@hoopstay/core";
import { KSI } from "../common/customary.ts";

/** F_EXX of E70 electrodes, Pa. */
export const e70 = constant(
  "e70",
  "F_EXX",
  "strength of E70 weld metal",
  70 * KSI,
  "pressure",
  cite("aisc-360-22", "J2.4: classification of the electrode, E70 is 70 ksi", "read"),
);

const wall = ["t", "wall", "length"] as const;

/** 0.60 F_EXX on a throat of 0.707 legs. */
const strengthOfLeg = 0.4242;

/** k_ds is 1: no credit for a fillet across its force. */
export const filletStrength = formula({
  id: "fillet-strength",
  symbol: "r_n",
  name: "strength of a fillet weld, per length",
  measure: "force-per-length",
  arguments: [
    ["F_EXX", "strength of the weld metal", "pressure"],
    ["w", "leg", "length"],
  ],
  expression: "0.6 * F_EXX * 0.707 * w",
  citation: cite("aisc-360-22", "J2.4, equation J2-4, table J2.5, k_ds = 1", "read"),
  evaluate: (electrode, leg) => strengthOfLeg * electrode * leg,
});

export const wallShearYield = formula({
  id: "wall-shear-yield",
  symbol: "r_n",
  name: "shear yielding of the wall at a weld, per length",
  measure: "force-per-length",
  arguments: [["F_y", "yield strength", "pressure"], wall],
  expression: "0.6 * F_y * t",
  citation: cite("aisc-360-22", "J4.2, equation J4-3", "read"),
  evaluate: (Fy, t) => 0.6 * Fy * t,
});

export const wallShearRupture = formula({
  id: "wall-shear-rupture",
  symbol: "r_n",
  name: "shear rupture of the wall at a weld, per length",
  measure: "force-per-length",
  arguments: [["F_u", "tensile strength", "pressure"], wall],
  expression: "0.6 * F_u * t",
  citation: cite("aisc-360-22", "J4.2, equation J4-4", "read"),
  evaluate: (Fu, t) => 0.6 * Fu * t,
});
