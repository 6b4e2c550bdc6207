import type { LineTerms } from "./holding.ts";
import {
  contactForce,
  type SlidingTerms,
  type SlidingWind,
  slidingResistance,
  type TetherParts,
  tetherParts,
  tetherPull,
} from "./slide.ts";

/** Sliding of one case on level ground: the direction is the wind's, whatever the pressure. */
export interface StraightSlide {
  readonly sliding: SlidingTerms;
  readonly wind: SlidingWind;
  /** Horizontal wind per unit of K_d q_h, m2. */
  readonly h: number;
  readonly parts: TetherParts;
}

/** @param known tether parts of this wind's direction, where they have been worked out before */
export function straightSlide(
  sliding: SlidingTerms,
  wind: SlidingWind,
  known?: TetherParts,
): StraightSlide {
  const h = Math.sqrt(wind.fx * wind.fx + wind.fy * wind.fy);
  const size = h > 0 ? h : 1;
  const parts = known ?? tetherParts(sliding.terms, wind.fx / size, wind.fy / size);
  return { sliding, wind, h, parts };
}

/** Resistance of a straight slide at a pressure, N. */
export function straightResistance({ sliding, wind, parts }: StraightSlide, q: number): number {
  const { terms } = sliding;
  const contact = contactForce.evaluate(terms.deadNormal, terms.combination.wind, q * wind.fz);
  const tether = tetherPull(sliding, wind, q, parts);
  return slidingResistance.evaluate(terms.holding.friction, contact, tether);
}

const spareAt = (slide: StraightSlide, q: number): number =>
  straightResistance(slide, q) - slide.sliding.terms.combination.wind * q * slide.h;

/** Pressures at which contact ends or a rail's need of its tethers begins or is complete, Pa. */
export function kinks({ terms, right, left }: SlidingTerms, wind: SlidingWind): number[] {
  const factor = terms.combination.wind;
  const need = (rail: LineTerms, turn: number): number[] => [
    (rail.weightMoment - rail.slopeMoment) / (factor * turn),
    (rail.weightMoment + rail.anchorMoment - rail.slopeMoment) / (factor * turn),
  ];
  return [
    terms.deadNormal / (factor * wind.fz),
    ...need(right, wind.turnRight),
    ...need(left, wind.turnLeft),
  ];
}

/** A need that sets in at once, where no moment could grow it, shows just past its kink, not before. */
const justPast = 1 + 1e-13;
const justBefore = 1 - 1e-13;

/** Spare where the pressure sets in; a need that no moment holds back is there at once. */
function spareAtStart(slide: StraightSlide, stations: readonly number[], design: number): number {
  const still = spareAt(slide, 0);
  return stations.includes(0) ? Math.min(still, spareAt(slide, 1e-13 * design)) : still;
}

/** Whether nothing fails up to a pressure: on straight lines the kinks and the end tell. */
function holdsUpTo(slide: StraightSlide, stations: readonly number[], q: number): boolean {
  if (spareAt(slide, q) < 0) return false;
  for (const kink of stations) {
    if (!(kink > 0 && kink < q)) continue;
    if (spareAt(slide, kink * justPast) < 0) return false;
  }
  return true;
}

/**
 * The lowest pressure at which a straight slide begins. Every part of it is a straight line between
 * two kinks, so the first failure is read off the first line that crosses.
 *
 * @param below only a limit below this pressure is asked for; infinite where there is none
 */
export function straightLimit(
  slide: StraightSlide,
  design: number,
  below = Number.POSITIVE_INFINITY,
): number {
  const bounded = below < Number.POSITIVE_INFINITY;
  // Without a wind that presses down the spare only falls, so that its end tells.
  if (bounded && slide.wind.fz >= 0 && spareAt(slide, below) >= 0) return Number.POSITIVE_INFINITY;
  const found = kinks(slide.sliding, slide.wind);
  let from = 0;
  let before = spareAtStart(slide, found, design);
  if (before < 0) return 0;
  if (bounded && holdsUpTo(slide, found, below)) return Number.POSITIVE_INFINITY;
  const stations = found.filter((q) => q > 0 && Number.isFinite(q)).sort((a, b) => a - b);
  for (const to of stations) {
    const end = to * justBefore;
    const after = spareAt(slide, end);
    if (after < 0) return from + ((end - from) * before) / (before - after);
    from = to * justPast;
    before = spareAt(slide, from);
    if (before < 0) return to;
  }
  const reach = Math.max(design, 2 * from);
  const after = spareAt(slide, reach);
  if (after >= before) return Number.POSITIVE_INFINITY;
  return from + ((reach - from) * before) / (before - after);
}
