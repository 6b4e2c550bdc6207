import { flatOverWallFormula } from "@hoopstay/section";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { type BentBox, bentBox } from "./bent-box.ts";
import {
  effectiveFlange,
  effectiveModulus,
  noncompactFlangeMoment,
  noncompactWebMoment,
  slenderFlangeMoment,
} from "./box-bending-formulas.ts";
import { turningMoment } from "./lateral-torsional.ts";
import { type Axis, type RectangularSection, requireSpan } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import { plasticMoment } from "./round-bending-formulas.ts";
import { slendernessLimits } from "./slenderness-limits.ts";
import {
  lowerStrength,
  type MemberStrength,
  notCovered,
  type Strength,
  strengthBy,
} from "./strength.ts";

/**
 * Strength of a square or rectangular tube in bending about one axis: yielding, local buckling of
 * flange and web, and turning out sideways of a tube deeper than wide, with C_b 1.
 *
 * Left out: slender webs; a modifier C_b above 1, which would only help; holes (`flangeHolesStrength`).
 *
 * Source: AISC 360-22, F7.
 *
 * @param section rectangular tube, SI
 * @param axis about which it bends; x works the depth
 * @param lateral L_b, m: between points held sideways
 * @returns moment, N m; not covered where a web has h/t above 5.70 sqrt(E/F_y)
 * @throws Refusal `not-positive`, `out-of-range` for the length
 * @example // HSS3X3X1/8, F_y 50 ksi: 70.0 kip in nominal, 41.9 ASD, 63.0 LRFD
 */
export function boxBendingStrength(
  section: RectangularSection,
  axis: Axis,
  steel: Steel,
  lateral: number,
  sheet: Worksheet = unprinted,
): MemberStrength {
  requireSpan(lateral, "a length between points held sideways");
  const box = bentBox(section, axis);
  const { modulus, yieldStrength } = steel;
  const web = sheet.work(flatOverWallFormula, [box.depth, box.wall], { symbol: "h/t" });
  const webLimit = slendernessLimits.webNoncompact.evaluate(modulus, yieldStrength);
  if (web > webLimit) {
    const reason = "the sides along the depth are slender webs, h/t above 5.70 sqrt(E/F_y)";
    return notCovered("slender-web", reason, "Take a thicker wall or a lower tube.");
  }
  const plastic = sheet.work(plasticMoment, [yieldStrength, box.plasticModulus]);
  const by = (state: readonly [string, string], moment: number): Strength =>
    strengthBy(memberFactors.flexure, state, moment, sheet);
  const states = [
    by(["bending-yield", "yielding in bending"], plastic),
    ...flangeState(box, steel, plastic, by, sheet),
    ...webState(box, web, steel, plastic, by, sheet),
  ];
  const turning = turningMoment(box, steel, plastic, lateral, sheet);
  if (turning !== null) states.push(by(["turning", "turning out sideways in bending"], turning));
  return states.reduce(lowerStrength);
}

type By = (state: readonly [string, string], moment: number) => Strength;

function flangeState(
  { width, depth, wall, secondMoment, elasticModulus }: BentBox,
  { modulus, yieldStrength }: Steel,
  plastic: number,
  by: By,
  sheet: Worksheet,
): readonly Strength[] {
  const state = ["flange-buckling", "local buckling of the flange in bending"] as const;
  const ratio = sheet.work(flatOverWallFormula, [width, wall]);
  const compact = sheet.work(slendernessLimits.flangeCompact, [modulus, yieldStrength]);
  if (ratio <= compact) return [];
  const limit = sheet.work(slendernessLimits.flangeNoncompact, [modulus, yieldStrength]);
  if (ratio <= limit) {
    const inputs = [plastic, yieldStrength, elasticModulus, ratio, compact, limit] as const;
    return [by(state, sheet.work(noncompactFlangeMoment, inputs))];
  }
  const flat = width - 3 * wall;
  const part = sheet.work(effectiveFlange, [flat, wall, modulus, yieldStrength]);
  const effective = sheet.work(effectiveModulus, [secondMoment, flat, part, wall, depth]);
  return [by(state, sheet.work(slenderFlangeMoment, [yieldStrength, effective]))];
}

function webState(
  { elasticModulus }: BentBox,
  ratio: number,
  { modulus, yieldStrength }: Steel,
  plastic: number,
  by: By,
  sheet: Worksheet,
): readonly Strength[] {
  const compact = sheet.work(slendernessLimits.webCompact, [modulus, yieldStrength]);
  if (ratio <= compact) return [];
  const limit = sheet.work(slendernessLimits.webNoncompact, [modulus, yieldStrength]);
  const inputs = [plastic, yieldStrength, elasticModulus, ratio, compact, limit] as const;
  const moment = sheet.work(noncompactWebMoment, inputs);
  return [by(["web-buckling", "local buckling of the web in bending"], moment)];
}
