import type { Evaluation } from "../review/evaluate.ts";
import { designCombinations, type LinkCombination } from "./combination.ts";
import type { LinkRow } from "./link.ts";

/** Relative width at which a search ends; below the least pressure, Pa, its own: a breath of wind. */
const width = 1e-9;
const leastPressure = 1;

/** Parts of a pressure at which a row that may fail and hold again is looked at. */
const parts = [0.3, 0.6, 0.85] as const;

/** Pressures up to `top` at which a row is looked at, upward; the top alone where that tells all. */
const looks = ({ touches }: LinkRow, top: number): number[] =>
  touches ? [...parts.map((part) => part * top), top] : [top];

/** Whether a row carries one wind: where a quick bound tells it, by that. */
const holdsAt = (row: LinkRow, q: number, combination: LinkCombination): boolean =>
  (row.atMost !== undefined && row.atMost(q, combination) <= 1) || row.ratio(q, combination) <= 1;

/** Whether a row carries every wind up to `q`, and the weight without wind. */
export function carries(row: LinkRow, q: number, combination: LinkCombination): boolean {
  const top = Math.min(q, row.lasts(combination));
  return [...looks(row, top), 0].every((one) => holdsAt(row, one, combination));
}

/**
 * The pressure at which a row first fails. What weight and wind make of a row grows straight with
 * the wind and what it can take is convex, so that it fails once and for all; only where the rail's
 * contact with the ground changes may it fail, hold and fail again: there it is
 * looked at below as well. A share that rises by a percent or two above one between two looks and
 * falls again may be passed by.
 *
 * @param most pressure beyond which the answer is of no interest
 * @returns Pa; infinite where it does not fail up to `most`; zero where it fails without wind
 */
export function firstFailure(
  row: LinkRow,
  method: LinkCombination["method"],
  most: number,
): number {
  let first = Number.POSITIVE_INFINITY;
  for (const combination of designCombinations(method)) {
    const ratio = (q: number): number => row.ratio(q, combination);
    const top = Math.min(most, row.lasts(combination), first);
    if (!(ratio(0) <= 1)) return 0;
    let carried = 0;
    for (const next of looks(row, top)) {
      if (!(ratio(next) <= 1)) {
        first = crossing(ratio, carried, next);
        break;
      }
      carried = next;
    }
  }
  return first;
}

/**
 * Beyond this no wind blows outside a tornado, and a limit is none, m/s: 113 m/s is the greatest gust
 * ever measured (World Meteorological Organization, Barrow Island 1996; from memory).
 */
const strongestWind = 120;

/** The strongest wind at a place as K_d q_h, Pa. */
export const strongestPressure = ({ factors }: Pick<Evaluation, "factors">): number =>
  factors.perSpeedSquared * strongestWind ** 2;

/** Where a search for a failing wind begins, Pa: many times beyond any wind. */
const beyond = 1e5;

/** Where a ratio that rises for good first comes to one, Pa; infinite where it does not. */
export function firstAbove(ratio: (q: number) => number): number {
  if (!(ratio(0) <= 1)) return 0;
  return ratio(beyond) <= 1 ? Number.POSITIVE_INFINITY : crossing(ratio, 0, beyond);
}

/**
 * Where a ratio comes to one between a wind it carries and one it does not: false position after
 * Illinois, halving where a ratio is infinite.
 *
 * @returns the side that holds
 */
function crossing(ratio: (q: number) => number, holds: number, fails: number): number {
  let [low, high] = [holds, fails];
  let [below, above] = [ratio(low) - 1, ratio(high) - 1];
  let kept: "low" | "high" | null = null;
  while (high - low > width * Math.max(high, leastPressure)) {
    const secant = high - (above * (high - low)) / (above - below);
    const q = secant > low && secant < high ? secant : (low + high) / 2;
    const value = ratio(q) - 1;
    if (!(value <= 0)) {
      [high, above] = [q, value];
      if (kept === "low") below /= 2;
      kept = "low";
    } else {
      [low, below] = [q, value];
      if (kept === "high") above /= 2;
      kept = "high";
    }
  }
  return low;
}
