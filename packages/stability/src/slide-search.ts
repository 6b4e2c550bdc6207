import type { HoldingTerms } from "./holding.ts";
import { ratioOf } from "./ratio.ts";
import { type Sliding, type SlidingTerms, type SlidingWind, slideAt } from "./slide.ts";
import { kinks, straightLimit, straightSlide } from "./straight-slide.ts";

/** Steps of the search between two pressures at which a tether or the contact changes its part. */
const stepsBetween = 16;
/** Beyond four times the design pressure the search goes on in doublings, up to a thousand times. */
const doublings = 8;
/** Below it, stations also stand at halvings, so that a narrow first failure is not stepped over. */
const halvings = 12;
/** Downhill directions tried on each side of the wind where the direction is unknown. */
const turns = 12;
const golden = (Math.sqrt(5) - 1) / 2;

const unknownDownhill = ({ holding, downslope }: HoldingTerms): boolean =>
  downslope > 0 && holding.slope?.downhill === null;

/**
 * First pressure at which `fails` holds: steps between the kinks, then bisection to 1e-12.
 *
 * @param below only a pressure below this is asked for; infinite where there is none
 */
function firstFailure(
  fails: (q: number) => boolean,
  kinksAt: number[],
  design: number,
  below = Number.POSITIVE_INFINITY,
): number {
  if (fails(0)) return 0;
  const reach = 4 * design;
  const stations = kinksAt.filter((q) => q > 0 && q < reach);
  for (let power = 1; power <= halvings; power += 1) stations.push(reach / 2 ** power);
  stations.sort((a, b) => a - b);
  stations.push(reach);
  for (let power = 1; power <= doublings; power += 1) stations.push(reach * 2 ** power);
  let low = 0;
  for (const station of stations) {
    const step = (station - low) / stepsBetween;
    const start = low;
    for (let index = 1; index <= stepsBetween; index += 1) {
      if (low >= below) return Number.POSITIVE_INFINITY;
      const high = index === stepsBetween ? station : start + index * step;
      if (fails(high)) return bisect(fails, low, high);
      low = high;
    }
  }
  return Number.POSITIVE_INFINITY;
}

function bisect(fails: (q: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (fails(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** The turn of the downhill direction at which `bad` is greatest: steps, then golden section. */
function worstTurn(bad: (turned: number) => number): number {
  const step = Math.PI / turns;
  let best = 0;
  let worst = bad(0);
  for (let index = 1 - turns; index <= turns; index += 1) {
    const found = bad(index * step);
    if (found > worst) {
      worst = found;
      best = index * step;
    }
  }
  let [low, high] = [best - step, best + step];
  for (let round = 0; round < 24; round += 1) {
    const [inner, outer] = [high - golden * (high - low), low + golden * (high - low)];
    if (bad(inner) > bad(outer)) high = outer;
    else low = inner;
  }
  const middle = (low + high) / 2;
  return bad(middle) > worst ? middle : best;
}

/** How far from the wind the downhill direction is worst at a pressure, rad; 0 where it is known. */
export function turnedWorst(sliding: SlidingTerms, wind: SlidingWind, pressure: number): number {
  if (!sliding.terms.sideways || !unknownDownhill(sliding.terms)) return 0;
  return worstTurn((angle) => {
    const { demand, resistance } = slideAt(sliding, wind, pressure, angle);
    return ratioOf(demand, resistance);
  });
}

/** Sliding at a pressure with the slope turned the worst way, where its direction is unknown. */
export const worstSlideAt = (sliding: SlidingTerms, wind: SlidingWind, pressure: number): Sliding =>
  slideAt(sliding, wind, pressure, turnedWorst(sliding, wind, pressure));

/**
 * The lowest pressure at which a house on slanted tethers slides; see `slideLimit`. Where the slope's
 * direction is unknown `below` is not heeded: between two turns tried, a limit may fall far.
 */
export function searchSlideLimit(
  sliding: SlidingTerms,
  wind: SlidingWind,
  design: number,
  below?: number,
): number {
  if (sliding.terms.downslope === 0) return straightLimit(straightSlide(sliding, wind), design);
  const stations = kinks(sliding, wind);
  const limitAt = (turned: number, most?: number): number =>
    firstFailure(
      (q) => {
        const { demand, resistance } = slideAt(sliding, wind, q, turned);
        return demand > resistance;
      },
      stations,
      design,
      most,
    );
  if (!unknownDownhill(sliding.terms)) return limitAt(0, below);
  return limitAt(worstTurn((turned) => -limitAt(turned)));
}
