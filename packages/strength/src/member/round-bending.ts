import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { isTooThin } from "./compression.ts";
import type { RoundSection } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import {
  noncompactRoundMoment,
  plasticMoment,
  slenderRoundMoment,
  slenderRoundStress,
} from "./round-bending-formulas.ts";
import { slendernessLimits } from "./slenderness-limits.ts";
import { type MemberStrength, notCovered, strengthBy } from "./strength.ts";

/**
 * Strength of a round tube in bending, about any axis. The standard drops by up to 0.5 % where a
 * compact wall becomes noncompact, and by 0.3 % where it becomes slender.
 *
 * Left out: strength gained by cold bending, ovality, the squash of a point load.
 *
 * Source: AISC 360-22, F8.
 *
 * @param section round tube, SI
 * @param steel strengths, Pa
 * @returns moment, N m; not covered from D/t 0.45 E/F_y up
 * @example // Pipe 8 x-strong, Z 31.0 in3, F_y 35 ksi: 1085 kip in nominal, 54.1 kip ft ASD
 */
export function roundBendingStrength(
  section: RoundSection,
  steel: Steel,
  sheet: Worksheet = unprinted,
): MemberStrength {
  if (isTooThin(section, steel, sheet)) {
    const reason = "the wall is thinner than F8 covers: D/t from 0.45 E/F_y up";
    return notCovered("round-wall", reason, "Take a thicker wall.");
  }
  const { modulus, yieldStrength } = steel;
  const { outside, designWall, elasticModulusX: S, plasticModulusX: Z } = section;
  const ratio = outside / designWall;
  const plastic = sheet.work(plasticMoment, [yieldStrength, Z]);
  const by = (state: readonly [string, string], moment: number) =>
    strengthBy(memberFactors.flexure, state, moment, sheet);
  const compact = sheet.work(slendernessLimits.roundCompact, [modulus, yieldStrength]);
  if (ratio <= compact) return by(["bending-yield", "yielding in bending"], plastic);
  const local = ["local-buckling", "local buckling of the wall in bending"] as const;
  const noncompact = sheet.work(slendernessLimits.roundNoncompact, [modulus, yieldStrength]);
  if (ratio <= noncompact) {
    const inputs = [modulus, ratio, yieldStrength, S, plastic] as const;
    return by(local, sheet.work(noncompactRoundMoment, inputs));
  }
  const stress = sheet.work(slenderRoundStress, [modulus, ratio]);
  return by(local, sheet.work(slenderRoundMoment, [stress, S]));
}
