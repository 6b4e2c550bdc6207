import type { RailInPlan } from "./base.ts";
import { turnAt, wayAt } from "./plan-equations.ts";
import type { RailActions } from "./rail-actions.ts";
import type { RailResponse } from "./response.ts";

/**
 * Sums what acts on a rail from its front end on: moments, shears and torques just behind each
 * station. Behind the last one they are what equilibrium leaves: zero but for rounding.
 *
 * @param evenHold line load at mid-length and its rise
 */
export function sumAlongRail(
  y: Float64Array,
  { side, torque }: RailActions,
  evenHold: Float64Array,
  into: RailResponse,
): void {
  const last = y.length - 1;
  const middle = (y[last] as number) / 2;
  const rise = evenHold[1] as number;
  let moment = 0;
  let shear = 0;
  let twisting = 0;
  for (let station = 0; station <= last; station += 1) {
    shear += side[station] as number;
    twisting -= torque[station] as number;
    into.moment[station] = moment;
    into.shear[station] = shear;
    into.torque[station] = twisting;
    if (station === last) return;
    const start = y[station] as number;
    const h = (y[station + 1] as number) - start;
    const q = (evenHold[0] as number) + rise * (start - middle);
    moment += h * (shear + h * (q / 2 + (h * rise) / 6));
    shear += h * (q + (h * rise) / 2);
  }
}

/**
 * Writes ways, slopes and twists of a rail, after its moments.
 *
 * @param rail 0 left, 1 right
 */
export function shapeRail(
  rail: number,
  { bending }: RailInPlan,
  y: Float64Array,
  evenHold: Float64Array,
  solved: Float64Array,
  into: RailResponse,
): void {
  const last = y.length - 1;
  const middle = (y[last] as number) / 2;
  const rise = evenHold[1] as number;
  for (let station = 0; station <= last; station += 1) {
    into.deflection[station] = solved[wayAt(rail, station)] as number;
    into.twist[station] = solved[turnAt(rail, station)] as number;
  }
  for (let station = 0; station < last; station += 1) {
    const start = y[station] as number;
    const h = (y[station + 1] as number) - start;
    const q = (evenHold[0] as number) + rise * (start - middle);
    const chord =
      ((into.deflection[station + 1] as number) - (into.deflection[station] as number)) / h;
    const here = into.moment[station] as number;
    const next = into.moment[station + 1] as number;
    const part = h / bending;
    into.slope[station] =
      chord - part * ((2 * here + next) / 6 - h * h * (q / 24 + (7 * h * rise) / 360));
    if (station + 1 < last) continue;
    into.slope[last] =
      chord + part * ((here + 2 * next) / 6 - h * h * (q / 24 + (8 * h * rise) / 360));
  }
}
