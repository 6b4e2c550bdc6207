import type { Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import type { BentBox } from "./bent-box.ts";
import {
  elasticLength,
  elasticTurning,
  firstYieldMoment,
  inelasticTurning,
  plasticLength,
} from "./lateral-torsional-formulas.ts";

/**
 * Moment at which a rectangular tube turns out sideways, N m; null where it does not: square tube,
 * bending about the weaker axis, and lengths up to L_p.
 */
export function turningMoment(
  box: BentBox,
  { modulus, yieldStrength }: Steel,
  plastic: number,
  lateral: number,
  sheet: Worksheet,
): number | null {
  if (box.depth <= box.width) return null;
  const { otherRadius, torsionConstant, area } = box;
  const stiffness = [modulus, otherRadius, torsionConstant, area] as const;
  const short = sheet.work(plasticLength, [...stiffness, plastic]);
  if (lateral <= short) return null;
  const first = sheet.work(firstYieldMoment, [yieldStrength, box.elasticModulus]);
  const long = sheet.work(elasticLength, [...stiffness, first]);
  return lateral <= long
    ? sheet.work(inelasticTurning, [plastic, first, lateral, short, long])
    : sheet.work(elasticTurning, [...stiffness, lateral]);
}
