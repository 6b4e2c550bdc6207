import type { Worksheet } from "@hoopstay/strength";
import { found } from "../superposed.ts";
import { endWallPush, wallPressure, wallToTop } from "./hoop-along-formulas.ts";

const by = "outside and inside pressure of the wall, G C_p - GC_pi (ASCE 7-16 figure 27.3-1)";

/** Net coefficient of a wall, by what acts on it per unit of K_d q_h, m2, and its area. */
const workCoefficient = (sheet: Worksheet, size: number, area: number): number =>
  sheet.work(found("C_e", "net coefficient of the end wall", size / area, "ratio", by), []);

/**
 * The part of an end wall's load that reaches its hoop, N, on a sheet.
 *
 * @param size wind on the wall per unit of K_d q_h, m2
 * @param area of the wall, m2
 */
export function workWallTop(sheet: Worksheet, q: number, size: number, area: number): number {
  const coefficient = workCoefficient(sheet, size, area);
  return sheet.work(wallToTop, [sheet.work(endWallPush, [q, coefficient, area])]);
}

/** Main-frame pressure on an end wall, Pa, on a sheet. */
export const workWallPressure = (sheet: Worksheet, q: number, size: number, area: number): number =>
  sheet.work(wallPressure, [q, workCoefficient(sheet, size, area)]);
