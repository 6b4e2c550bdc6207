import type { Base, RailInPlan } from "./base.ts";
import { momentAt, wayAt } from "./plan-equations.ts";

/** Right-hand sides of the plan equations of line loads on both rails, toward +x. */
export interface EvenLoad {
  /** Of 1 N/m all along. */
  readonly uniform: Float64Array;
  /** Of a load that rises by 1 N/m each metre and is zero at mid-length. */
  readonly rise: Float64Array;
}

export function evenLoad({ left, right }: Base, y: Float64Array, unknowns: number): EvenLoad {
  const load = { uniform: new Float64Array(unknowns), rise: new Float64Array(unknowns) };
  for (const [rail, one] of [left, right].entries()) {
    lineLoad(load.uniform, rail, one, y, 1, 0);
    lineLoad(load.rise, rail, one, y, 0, 1);
  }
  return load;
}

/** Each span as a simple beam: what it lays on its ends, and the slopes there. */
function lineLoad(
  side: Float64Array,
  rail: number,
  { bending }: RailInPlan,
  y: Float64Array,
  uniform: number,
  rise: number,
): void {
  const last = y.length - 1;
  const middle = (y[last] as number) / 2;
  const add = (unknown: number, value: number): void => {
    side[unknown] = (side[unknown] as number) + value;
  };
  for (let station = 0; station < last; station += 1) {
    const start = y[station] as number;
    const h = (y[station + 1] as number) - start;
    const q = uniform + rise * (start - middle);
    add(wayAt(rail, station), h * (q / 2 + (h * rise) / 6));
    add(wayAt(rail, station + 1), h * (q / 2 + (h * rise) / 3));
    const cube = (h * h * h) / bending;
    if (station > 0) add(momentAt(rail, station), -cube * (q / 24 + (7 * h * rise) / 360));
    if (station + 1 < last) {
      add(momentAt(rail, station + 1), -cube * (q / 24 + (8 * h * rise) / 360));
    }
  }
}
