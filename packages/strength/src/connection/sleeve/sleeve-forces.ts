import { derived, formula } from "@hoopstay/core";
import type { ConnectionMethod } from "../common/strength.ts";
import type { SleeveStrength } from "./sleeve-strength.ts";

const axial = ["N", "uplift or push of the foot", "force"] as const;
const shear = ["V", "thrust of the foot", "force"] as const;
const moment = ["M", "moment at the middle of the bolts", "moment"] as const;
const overlap = ["L_s", "sleeve length", "length"] as const;

/** The outermost bolt of an even row: F_i = M y_i / sum y^2. */
export const coupleShear = formula({
  id: "couple-shear",
  symbol: "F_M",
  name: "force of the moment on the outermost bolt",
  measure: "force",
  arguments: [moment, ["n", "bolts in the row", "ratio"], ["s", "bolt spacing", "length"]],
  expression: "6 * abs(M) / (s * n * (n + 1))",
  citation: derived("row of n even bolts, forces in proportion to the distance from its middle"),
  range: "two bolts or more",
  evaluate: (M, n, s) => (6 * Math.abs(M)) / (s * n * (n + 1)),
});

export const boltResultant = formula({
  id: "bolt-resultant",
  symbol: "F_b",
  name: "force on the worst bolt",
  measure: "force",
  arguments: [
    axial,
    shear,
    ["n", "bolts in the row", "ratio"],
    ["F_M", "force of the moment on the outermost bolt", "force"],
  ],
  expression: "sqrt((N / n)^2 + (abs(V) / n + F_M)^2)",
  citation: derived("equal shares of uplift and thrust, with the couple's force along the thrust"),
  evaluate: (N, V, n, FM) => Math.hypot(N / n, Math.abs(V) / n + FM),
});

/** Straight-line pressure along the sleeve, on one side at one end, on the other at the other. */
export const contactForce = formula({
  id: "sleeve-contact-force",
  symbol: "F_c",
  name: "greater of the two forces of tube on tube",
  measure: "force",
  arguments: [moment, shear, overlap],
  expression: "(abs(V) * L_s + 6 * abs(M))^2 / (24 * abs(M) * L_s)",
  citation: derived("V / L + 12 M x / L^3 integrated from its zero to the pressed end"),
  range: "6 M above V L; below it the pressure is on one side and the force is V",
  evaluate: (M, V, length) =>
    (Math.abs(V) * length + 6 * Math.abs(M)) ** 2 / (24 * Math.abs(M) * length),
});

/**
 * Force on the worst bolt of a sleeve, N, where the bolts carry everything. One bolt carries no
 * moment: then only contact does, see `sleeveContactForce`.
 *
 * @param moment about the middle of the row, N m
 */
export function sleeveBoltForce(
  axial: number,
  shear: number,
  moment: number,
  { count, spacing }: Pick<SleeveStrength, "count" | "spacing">,
): number {
  const couple = spacing === null ? 0 : coupleShear.evaluate(moment, count, spacing);
  return boltResultant.evaluate(axial, shear, count, couple);
}

/**
 * Greater of the two forces with which the tubes press on each other, N, where the sleeve carries
 * thrust and moment: also the greatest shear in either tube within the sleeve.
 *
 * @param moment about the middle of the sleeve, N m
 * @param overlap m
 */
export function sleeveContactForce(shear: number, moment: number, overlap: number): number {
  return 6 * Math.abs(moment) > Math.abs(shear) * overlap
    ? contactForce.evaluate(moment, shear, overlap)
    : Math.abs(shear);
}

/** Ratio of a sleeve whose bolts carry everything: the worst bolt, or the tubes torn across. */
export function sleeveBoltRatio(
  sleeve: SleeveStrength,
  method: ConnectionMethod,
  axial: number,
  shear: number,
  moment: number,
): number {
  const bolt = sleeveBoltForce(axial, shear, moment, sleeve) / sleeve.perBolt[method];
  return Math.max(bolt, Math.abs(axial) / sleeve.tubes[method]);
}

/**
 * Ratio of a sleeve whose tubes carry thrust and moment by contact.
 *
 * @param tubeShear available shear strength of the weaker tube, N (AISC 360-22, G5)
 */
export function sleeveContactRatio(
  sleeve: SleeveStrength,
  method: ConnectionMethod,
  axial: number,
  shear: number,
  moment: number,
  tubeShear: number,
): number {
  const contact = sleeveContactForce(shear, moment, sleeve.overlap) / tubeShear;
  return Math.max(contact, Math.abs(axial) / sleeve[method]);
}
