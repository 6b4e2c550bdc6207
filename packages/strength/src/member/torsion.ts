import { flatOverWallFormula } from "@hoopstay/section";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { type MemberSection, type RectangularSection, requireSpan } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import { type MemberStrength, notCovered, strengthBy } from "./strength.ts";
import {
  elasticTorsionStress,
  inelasticTorsionStress,
  roundTorsionStress,
  torsionMoment,
  yieldTorsionStress,
} from "./torsion-formulas.ts";

/** h/t of the longer side up to which H3.1 covers rectangular tube. */
const mostSlenderSide = 260;

/**
 * Strength of a tube in torsion. Where the longer side stops yielding the standard rises by 0.2 %.
 *
 * Left out: bars and angles, whose torsion is mostly warping or weak; crushing at a clamp.
 *
 * Source: AISC 360-22, H3.1; the torsion modulus of round tube is J over its radius.
 *
 * @param section of a member, SI
 * @param steel strengths, Pa
 * @param length between places held against twisting, m
 * @returns moment, N m
 * @throws Refusal `not-positive`, `out-of-range` for the length
 * @example // HSS6X4X1/4, C 10.1 in3, F_y 46 ksi: 279 kip in nominal (Design Examples, H.5A)
 */
export function torsionStrength(
  section: MemberSection,
  steel: Steel,
  length: number,
  sheet: Worksheet = unprinted,
): MemberStrength {
  requireSpan(length, "a length between places held against twisting");
  if (section.kind !== "round" && section.kind !== "rectangular") {
    const reason = "torsion of bars and angles is not computed here";
    return notCovered("solid-torsion", reason, "Use a tube where a part is twisted.");
  }
  const { modulus, yieldStrength } = steel;
  const stress =
    section.kind === "rectangular"
      ? boxStress(section, steel, sheet)
      : sheet.work(roundTorsionStress, [
          modulus,
          yieldStrength,
          length,
          section.outside,
          section.designWall,
        ]);
  if (stress === null) {
    return notCovered("slender-side", "a side with h/t above 260", "Take a thicker wall.");
  }
  const nominal = sheet.work(torsionMoment, [stress, section.torsionModulus]);
  return strengthBy(memberFactors.torsion, ["torsion", "torsion"], nominal, sheet);
}

/** Shear stress at which a rectangular tube gives way; null beyond the rules. */
function boxStress(
  { depth, width, designWall }: RectangularSection,
  { modulus, yieldStrength }: Steel,
  sheet: Worksheet,
): number | null {
  const longer = Math.max(depth, width);
  const ratio = sheet.work(flatOverWallFormula, [longer, designWall], { symbol: "h/t" });
  if (ratio > mostSlenderSide) return null;
  const root = Math.sqrt(modulus / yieldStrength);
  if (ratio <= 2.45 * root) return sheet.work(yieldTorsionStress, [yieldStrength]);
  return ratio <= 3.07 * root
    ? sheet.work(inelasticTorsionStress, [yieldStrength, modulus, ratio])
    : sheet.work(elasticTorsionStress, [modulus, ratio]);
}
