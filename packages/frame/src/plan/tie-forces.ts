import { turnAt, wayAt } from "./plan-equations.ts";
import { springsEach } from "./tie-springs.ts";

/** Numbers a tie in `tieForces`. */
export const forcesEach = 3;

/**
 * What the movement of its feet alone asks of each tie: force on its right foot toward +x (the
 * left one has the opposite), moment on its left foot and on its right one.
 */
export function tieForces(
  ofTie: Int32Array,
  springs: Float64Array,
  solved: Float64Array,
  forces: Float64Array,
): void {
  for (let tie = 0; tie < ofTie.length; tie += 1) {
    const station = ofTie[tie] as number;
    const spread = (solved[wayAt(1, station)] as number) - (solved[wayAt(0, station)] as number);
    const left = solved[turnAt(0, station)] as number;
    const right = solved[turnAt(1, station)] as number;
    const k = springsEach * tie;
    const spreadLeft = springs[k + 1] as number;
    const spreadRight = springs[k + 2] as number;
    const leftRight = springs[k + 4] as number;
    const place = forcesEach * tie;
    forces[place] = (springs[k] as number) * spread + spreadLeft * left + spreadRight * right;
    forces[place + 1] = spreadLeft * spread + (springs[k + 3] as number) * left + leftRight * right;
    forces[place + 2] =
      spreadRight * spread + leftRight * left + (springs[k + 5] as number) * right;
  }
}
