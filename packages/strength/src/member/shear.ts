import { flatOverWallFormula } from "@hoopstay/section";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import {
  type Axis,
  type FlatSection,
  type MemberSection,
  type RectangularSection,
  type RoundSection,
  requireSpan,
} from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import {
  elasticWebFactor,
  inelasticWebFactor,
  roundShear,
  roundShearStress,
  webShear,
  webShearArea,
} from "./shear-formulas.ts";
import { type MemberStrength, notCovered, strengthBy } from "./strength.ts";

/** h/t above which a web needs stiffeners and the rules end (F13.2). */
const mostSlenderWeb = 260;
/** b/t up to which a flat bar, k_v 1.2, yields in shear before it buckles, over sqrt(E/F_y). */
const flatShear = 1.1 * Math.sqrt(1.2);

/**
 * Strength in shear: both webs of a rectangular tube, half the area of a round one, the whole of a
 * flat bar. Where a web stops yielding the standard rises by 0.2 %.
 *
 * Left out: solid round bars and angles; holes; a flat bar that buckles.
 *
 * Source: AISC 360-22, G4 and G5.
 *
 * @param section of a member, SI
 * @param axis of the bending that goes with the shear: x for a force along the depth
 * @param steel strengths, Pa
 * @param shearLength L_v, m: from the greatest shear force to none
 * @returns force, N
 * @throws Refusal `not-positive`, `out-of-range` for the length
 * @example // HSS6X4X3/8, F_y 46 ksi: 95.4 kip nominal (Design Examples, G.4)
 */
export function shearStrength(
  section: MemberSection,
  axis: Axis,
  steel: Steel,
  shearLength: number,
  sheet: Worksheet = unprinted,
): MemberStrength {
  requireSpan(shearLength, "a length of shear");
  switch (section.kind) {
    case "round":
      return roundShearStrength(section, steel, shearLength, sheet);
    case "rectangular":
      return boxShearStrength(section, axis, steel, sheet);
    case "flat":
      return flatShearStrength(section, steel, sheet);
    case "bar":
    case "angle": {
      const reason = "shear of solid rounds and angles is not computed here";
      return notCovered("solid-shear", reason, "Use a tube or a flat bar.");
    }
  }
}

const shearState = ["shear", "shear"] as const;

function roundShearStrength(
  { outside, designWall, area }: RoundSection,
  { modulus, yieldStrength }: Steel,
  shearLength: number,
  sheet: Worksheet,
): MemberStrength {
  const inputs = [modulus, yieldStrength, shearLength, outside, designWall] as const;
  const stress = sheet.work(roundShearStress, inputs);
  const nominal = sheet.work(roundShear, [stress, area]);
  return strengthBy(memberFactors.shear, shearState, nominal, sheet);
}

function boxShearStrength(
  { depth, width, designWall }: RectangularSection,
  axis: Axis,
  { modulus, yieldStrength }: Steel,
  sheet: Worksheet,
): MemberStrength {
  const side = axis === "x" ? depth : width;
  const ratio = sheet.work(flatOverWallFormula, [side, designWall], { symbol: "h/t" });
  if (ratio > mostSlenderWeb) {
    return notCovered("slender-web", "a web with h/t above 260", "Take a thicker wall.");
  }
  const area = sheet.work(webShearArea, [side - 3 * designWall, designWall]);
  const root = Math.sqrt((5 * modulus) / yieldStrength);
  const factor =
    ratio <= 1.1 * root
      ? 1
      : ratio <= 1.37 * root
        ? sheet.work(inelasticWebFactor, [ratio, modulus, yieldStrength])
        : sheet.work(elasticWebFactor, [ratio, modulus, yieldStrength]);
  const nominal = sheet.work(webShear, [yieldStrength, area, factor]);
  return strengthBy(memberFactors.shear, shearState, nominal, sheet);
}

function flatShearStrength(
  { width, thickness, area }: FlatSection,
  { modulus, yieldStrength }: Steel,
  sheet: Worksheet,
): MemberStrength {
  if (width / thickness > flatShear * Math.sqrt(modulus / yieldStrength)) {
    const reason = "a flat bar that buckles in shear: b/t above 1.10 sqrt(1.2 E/F_y)";
    return notCovered("thin-flat", reason, "Take a thicker bar.");
  }
  const nominal = sheet.work(webShear, [yieldStrength, area, 1]);
  return strengthBy(memberFactors.shear, shearState, nominal, sheet);
}
