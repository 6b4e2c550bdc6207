import type { RailSide } from "./base.ts";
import type { BasePlan } from "./base-plan.ts";
import type { PlanResponse } from "./response.ts";

/** What a rail carries most in plan, and where, m; the exact places, those between stations too. */
export interface RailPeaks {
  /** Greatest and least plan moment, N m: zero or beyond, the ends being free. */
  momentMost: number;
  momentMostAt: number;
  momentLeast: number;
  momentLeastAt: number;
  /** Greatest shear by size, N. */
  shear: number;
  shearAt: number;
  /** Greatest torque by size, N m, and the station behind which it acts. */
  torque: number;
  torqueAt: number;
}

export const noPeaks = (): RailPeaks => ({
  momentMost: 0,
  momentMostAt: 0,
  momentLeast: 0,
  momentLeastAt: 0,
  shear: 0,
  shearAt: 0,
  torque: 0,
  torqueAt: 0,
});

/** Writes the peaks of a rail to `into`; nothing is allocated. Those of no result are NaN. */
export function findPeaks(
  { y, base: { length } }: BasePlan,
  response: PlanResponse,
  side: RailSide,
  into: RailPeaks,
): void {
  const { moment, shear, torque } = response[side];
  const rise = response.evenHold[1] as number;
  const none = 0 * (moment[0] as number);
  into.momentMost = into.momentLeast = into.shear = into.torque = none;
  into.momentMostAt = into.momentLeastAt = into.shearAt = into.torqueAt = none;
  for (let station = 0; station + 1 < y.length; station += 1) {
    const start = y[station] as number;
    const h = (y[station + 1] as number) - start;
    const q = (response.evenHold[0] as number) + rise * (start - length / 2);
    const m = moment[station] as number;
    const v = shear[station] as number;
    meet(into, start, 0, m, v, q, rise);
    meet(into, start, h, m, v, q, rise);
    // Moments peak where the shear passes zero, the shear where the line load does.
    const root = Math.sqrt(Math.max(0, q * q - 2 * rise * v));
    const stable = -q - (q < 0 ? -root : root);
    meetInside(into, start, (2 * v) / stable, h, m, v, q, rise);
    meetInside(into, start, stable / rise, h, m, v, q, rise);
    meetInside(into, start, -q / rise, h, m, v, q, rise);
    const twisting = torque[station] as number;
    if (Math.abs(twisting) > Math.abs(into.torque)) {
      into.torque = twisting;
      into.torqueAt = start;
    }
  }
}

/** Meets a place only if it lies within the span; NaN does not. */
function meetInside(
  into: RailPeaks,
  start: number,
  way: number,
  h: number,
  m: number,
  v: number,
  q: number,
  rise: number,
): void {
  if (way > 0 && way < h) meet(into, start, way, m, v, q, rise);
}

/** Keeps what a place a way behind a station carries, if it is more. */
function meet(
  into: RailPeaks,
  start: number,
  way: number,
  m: number,
  v: number,
  q: number,
  rise: number,
): void {
  const moment = m + way * (v + way * (q / 2 + (way * rise) / 6));
  const shear = v + way * (q + (way * rise) / 2);
  const at = start + way;
  if (moment > into.momentMost) {
    into.momentMost = moment;
    into.momentMostAt = at;
  }
  if (moment < into.momentLeast) {
    into.momentLeast = moment;
    into.momentLeastAt = at;
  }
  if (Math.abs(shear) > Math.abs(into.shear)) {
    into.shear = shear;
    into.shearAt = at;
  }
}
