import type { CutProblem, Pattern } from "./cut-problem.ts";
import { fewestSticks } from "./fewest-bound.ts";
import { fullestPatterns } from "./fullest-patterns.ts";
import { longestFirst } from "./longest-first.ts";

/** Sticks tried and ways to cut one stick that are listed before the search gives up its proof. */
const mostTried = 30_000;
const mostPatterns = 3000;
/** Bounds at every stick are coarser than the first one. */
const stepsInside = 3;

/** How sticks are cut, and what is known of fewer. */
export interface CutPatterns {
  readonly patterns: readonly Pattern[];
  /** No plan has fewer sticks than this. */
  readonly least: number;
}

/**
 * A plan with the fewest sticks: the longest piece left is cut next, in every way that leaves no
 * room for another piece; what a bound shows to be no better is left out, and so is what was met
 * before with no more sticks.
 *
 * @param problem no piece is longer than a stick
 * @returns the plan; it has the fewest sticks where it has no more than `least`
 */
export function fewestPatterns(problem: CutProblem): CutPatterns {
  const left = problem.cuts.map(({ count }) => count);
  const least = fewestSticks(problem, left);
  let best: readonly Pattern[] = longestFirst(problem);
  let tried = 0;
  let complete = true;
  const met = new Map<string, number>();
  const chosen: Pattern[] = [];
  const search = (): void => {
    if (best.length <= least) return;
    if (left.every((count) => count === 0)) {
      if (chosen.length < best.length) best = chosen.slice();
      return;
    }
    if (chosen.length + fewestSticks(problem, left, stepsInside) >= best.length) return;
    const key = left.join(" ");
    if ((met.get(key) ?? Number.POSITIVE_INFINITY) <= chosen.length) return;
    met.set(key, chosen.length);
    const { patterns, all } = fullestPatterns(problem, left, mostPatterns);
    complete &&= all;
    for (const pattern of patterns) {
      tried += 1;
      if (tried > mostTried) {
        complete = false;
        return;
      }
      take(left, pattern, -1);
      chosen.push(pattern);
      search();
      chosen.pop();
      take(left, pattern, 1);
      if (best.length <= least) return;
    }
  };
  search();
  return { patterns: best, least: complete ? best.length : least };
}

function take(left: number[], pattern: Pattern, sign: 1 | -1): void {
  for (let place = 0; place < left.length; place += 1) {
    left[place] = (left[place] as number) + sign * (pattern[place] as number);
  }
}
