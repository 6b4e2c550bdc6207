import { type SlidingTerms, type SlidingWind, worstSlideAt } from "@hoopstay/stability";

/** Multiple of the design pressure beyond which no wind blows. */
export const farOff = 1000;
/** Relative width at which bisection ends. */
const width = 1e-6;

/**
 * A K_d q_h below a known one, Pa, at which a house on slanted tethers slides; infinite where it does
 * not slide at the known one. Never below the first at which it does.
 */
export function slidingBelow(sliding: SlidingTerms, wind: SlidingWind, known: number): number {
  const slides = (q: number): boolean => {
    const { demand, resistance } = worstSlideAt(sliding, wind, q);
    return demand > resistance;
  };
  if (!slides(known)) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, known];
  while (high - low > width * high) {
    const middle = (low + high) / 2;
    if (slides(middle)) high = middle;
    else low = middle;
  }
  return high;
}
