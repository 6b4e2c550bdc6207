import { designCombinations } from "../combination.ts";
import type { LinkRow } from "../link.ts";

const combinations = designCombinations("ASD");
/** Relative width at which bisection ends. */
const width = 1e-5;

const fails = (row: LinkRow, q: number): boolean =>
  combinations.some((combination) => row.ratio(q, combination) > 1);

/**
 * A K_d q_h at which one of some rows fails by ASD, Pa, or the one known already if all stand it. Never
 * below the pressure at which the first of them fails: a failure that wind beyond it ends is passed by.
 *
 * @param known pressure that needs no row to fail below it
 */
export function quickLimit(rows: readonly LinkRow[], known: number): number {
  let lowest = known;
  for (const row of rows) if (fails(row, lowest)) lowest = failure(row, lowest);
  return lowest;
}

function failure(row: LinkRow, failing: number): number {
  let [low, high] = [0, failing];
  while (high - low > width * high) {
    const middle = (low + high) / 2;
    if (fails(row, middle)) high = middle;
    else low = middle;
  }
  return high;
}
