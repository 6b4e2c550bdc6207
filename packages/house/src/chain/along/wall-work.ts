import type { Worksheet } from "@hoopstay/strength";
import { found } from "../superposed.ts";
import { endWallPush, wallPressure, wallToTop } from "./hoop-along-formulas.ts";

const pressed =
  "outside and inside pressure of the wall, G C_p - GC_pi (ASCE 7-16 figure 27.3-1); of both walls together, their sum downwind";
const freeStanding =
  "film off: 1.3 on each wall as on a free-standing one, neither shields the other (judgement); of both walls together, their sum";

/**
 * Net coefficient of a wall, by what acts on it per unit of K_d q_h, m2, and its area. Hoops catch
 * wind beside a wall only with the film off, when the walls stand free.
 */
function workCoefficient(sheet: Worksheet, size: number, area: number, line: number): number {
  const by = line === 0 ? pressed : freeStanding;
  return sheet.work(found("C_e", "net coefficient of the end wall", size / area, "ratio", by), []);
}

/**
 * The part of an end wall's load that reaches its hoop, N, on a sheet.
 *
 * @param size wind on the wall per unit of K_d q_h, m2
 * @param area of the wall, m2
 * @param line wind on a metre of every hoop along the house, m
 */
export function workWallTop(
  sheet: Worksheet,
  q: number,
  size: number,
  area: number,
  line: number,
): number {
  const coefficient = workCoefficient(sheet, size, area, line);
  return sheet.work(wallToTop, [sheet.work(endWallPush, [q, coefficient, area])]);
}

/** Main-frame pressure on an end wall, Pa, on a sheet. */
export const workWallPressure = (
  sheet: Worksheet,
  q: number,
  size: number,
  area: number,
  line: number,
): number => sheet.work(wallPressure, [q, workCoefficient(sheet, size, area, line)]);
