import { diameterOverWallFormula, flatOverWallFormula } from "@hoopstay/section";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import {
  bucklingForce,
  elasticBucklingStress,
  inelasticBucklingStress,
  memberSlenderness,
  slenderBucklingStress,
} from "./buckling-formulas.ts";
import {
  type MemberLengths,
  type MemberSection,
  type RectangularSection,
  type RoundSection,
  requireSpan,
} from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import {
  effectiveFlat,
  elasticLocalStress,
  rectangularEffectiveArea,
  roundEffectiveArea,
} from "./slender-wall-formulas.ts";
import { slendernessLimits } from "./slenderness-limits.ts";
import { type MemberStrength, notCovered, strengthBy } from "./strength.ts";

type BucklingLengths = Pick<MemberLengths, "bucklingX" | "bucklingY">;

/**
 * Strength in compression: flexural buckling about the weaker axis, with the effective area of
 * slender walls. Closed and solid sections do not buckle by twisting.
 *
 * Left out: angles (E5); dents, swaged ends, the bow of a bent hoop beyond what E3 holds in it.
 *
 * Source: AISC 360-22, E3 and E7.
 *
 * @param section of a tube or bar, SI
 * @param steel strengths, Pa
 * @param lengths effective lengths about both axes, m
 * @returns force, N; not covered for angles and for round tube with D/t from 0.45 E/F_y up
 * @throws Refusal `not-positive`, `out-of-range` for lengths
 * @example // A 28.3 in2, r 6.31 in, L_c 216 in, F_y 46 ksi: 1203 kip nominal (McCormac 5-3)
 */
export function compressionStrength(
  section: MemberSection,
  steel: Steel,
  lengths: BucklingLengths,
  sheet: Worksheet = unprinted,
): MemberStrength {
  requireSpan(lengths.bucklingX, "an effective length");
  requireSpan(lengths.bucklingY, "an effective length");
  if (section.kind === "angle") {
    const mend = "Use a tube or a bar, or have an engineer check it by E5.";
    return notCovered("angle", "an angle in compression is not computed here", mend);
  }
  if (section.kind === "round" && isTooThin(section, steel, sheet)) {
    const reason = "the wall is thinner than AISC 360 covers: D/t from 0.45 E/F_y up";
    return notCovered("round-wall", reason, "Take a thicker wall.");
  }
  const stress = bucklingStress(section, steel, lengths, sheet);
  const area = effectiveArea(section, steel, stress, sheet);
  const slender = area < section.area ? " with slender walls" : "";
  return strengthBy(
    memberFactors.compression,
    ["compression", `buckling in compression${slender}`],
    sheet.work(bucklingForce, [stress, area]),
    sheet,
  );
}

/** Greatest effective length over radius of gyration of both axes. */
export function greatestSlenderness(
  section: MemberSection,
  { bucklingX, bucklingY }: BucklingLengths,
  sheet: Worksheet = unprinted,
): number {
  const aboutX = bucklingX / section.radiusX;
  const aboutY = bucklingY / section.radiusY;
  return aboutX >= aboutY
    ? sheet.work(memberSlenderness, [bucklingX, section.radiusX], { note: "about x" })
    : sheet.work(memberSlenderness, [bucklingY, section.radiusY], { note: "about y" });
}

/** Whether D/t reaches the end of the rules for round tube, 0.45 E/F_y. */
export function isTooThin(
  { outside, designWall }: RoundSection,
  { modulus, yieldStrength }: Steel,
  sheet: Worksheet = unprinted,
): boolean {
  const ratio = sheet.work(diameterOverWallFormula, [outside, designWall]);
  return ratio >= slendernessLimits.roundCovered.evaluate(modulus, yieldStrength);
}

function bucklingStress(
  section: MemberSection,
  { modulus, yieldStrength }: Steel,
  lengths: BucklingLengths,
  sheet: Worksheet,
): number {
  const slenderness = greatestSlenderness(section, lengths, sheet);
  const border = sheet.work(slendernessLimits.inelasticBuckling, [modulus, yieldStrength]);
  const elastic = sheet.work(elasticBucklingStress, [modulus, slenderness]);
  return slenderness <= border
    ? sheet.work(inelasticBucklingStress, [yieldStrength, elastic])
    : sheet.work(slenderBucklingStress, [elastic]);
}

function effectiveArea(
  section: MemberSection,
  steel: Steel,
  critical: number,
  sheet: Worksheet,
): number {
  const { modulus, yieldStrength } = steel;
  if (section.kind === "rectangular") return effectiveWalls(section, steel, critical, sheet);
  if (section.kind !== "round") return section.area;
  const ratio = section.outside / section.designWall;
  const limit = sheet.work(slendernessLimits.roundInCompression, [modulus, yieldStrength]);
  if (ratio <= limit) return section.area;
  return sheet.work(roundEffectiveArea, [section.area, modulus, yieldStrength, ratio]);
}

function effectiveWalls(
  section: RectangularSection,
  { modulus, yieldStrength }: Steel,
  critical: number,
  sheet: Worksheet,
): number {
  const { area, designWall, width, depth } = section;
  const limit = sheet.work(slendernessLimits.wallInCompression, [modulus, yieldStrength]);
  const whole = limit * Math.sqrt(yieldStrength / critical);
  const flatOf = (side: number): number => side - 3 * designWall;
  const effectiveOf = (side: number): number => {
    const ratio = sheet.work(flatOverWallFormula, [side, designWall]);
    if (ratio <= whole) return flatOf(side);
    const local = sheet.work(elasticLocalStress, [limit, ratio, yieldStrength]);
    return sheet.work(effectiveFlat, [flatOf(side), local, critical]);
  };
  const [b, h] = [flatOf(width), flatOf(depth)];
  const [be, he] = [effectiveOf(width), effectiveOf(depth)];
  if (be === b && he === h) return area;
  return sheet.work(rectangularEffectiveArea, [area, b, be, h, he, designWall]);
}
