/**
 * A response is a row of numbers, all linear in loads and foot displacements:
 *
 * - 0 to 5: forces of the ground on the feet (x, z, counter-clockwise couple; left, right);
 * - 6 to 11: displacements of the feet (x, z, counter-clockwise turn; left, right);
 * - 12 to 14: resultant of the loads (x, z, counter-clockwise couple about the origin);
 * - for each bar: N, V, M where it starts, N, V, M where it ends, weight now on it (N/m);
 * - for each free joint: displacement in x and z, and turn (zero where no bar is rigid);
 * - for each interval of the hoop, at its start: displacement in x and z and turn, sum of the forces
 *   up to there in x and z, bending moment; and normal load, weight and push on it (N/m).
 */
export interface ResponseLayout {
  readonly bars: number;
  readonly joints: number;
  readonly intervals: number;
  /** Numbers in a response. */
  readonly size: number;
}

export const footMovesAt = 6;
export const resultantAt = 12;
const barsAt = 15;
export const barWidth = 7;
export const jointWidth = 3;
export const intervalWidth = 9;

export function responseLayout(bars: number, joints: number, intervals: number): ResponseLayout {
  const jointsAt = barsAt + barWidth * bars;
  const intervalsAt = jointsAt + jointWidth * joints;
  return {
    bars: barsAt,
    joints: jointsAt,
    intervals: intervalsAt,
    size: intervalsAt + intervalWidth * intervals,
  };
}

/**
 * Adds responses: the sum of each row times its coefficient.
 *
 * @param rows responses one after another
 * @param size numbers in one
 * @param coefficients one for each row
 * @param into the sum; must not be a part of `rows`
 */
export function superpose(
  rows: Float64Array,
  size: number,
  coefficients: ArrayLike<number>,
  into: Float64Array,
): void {
  into.fill(0, 0, size);
  addRows(rows, size, coefficients, into);
}

/** Adds to `into` each row times its coefficient. */
export function addRows(
  rows: Float64Array,
  size: number,
  coefficients: ArrayLike<number>,
  into: Float64Array,
): void {
  for (let row = 0; row < coefficients.length; row += 1) {
    const factor = coefficients[row] as number;
    if (factor === 0) continue;
    const at = row * size;
    for (let i = 0; i < size; i += 1) {
      into[i] = (into[i] as number) + factor * (rows[at + i] as number);
    }
  }
}
