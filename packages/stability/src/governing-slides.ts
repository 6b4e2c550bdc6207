import type { BaseLine } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import { slide, slidingWindOf } from "./one-check.ts";
import { type ActionTable, type CheckOutcome, stride } from "./outcome.ts";
import { ratioOf } from "./ratio.ts";
import { slideLimit, slidingLimit } from "./slide-limit.ts";
import { worstSlideAt } from "./slide-search.ts";
import { straightLimit, straightResistance, straightSlide } from "./straight-slide.ts";

interface WorstSlides {
  ratio: number;
  limit: number;
  /** Holding and row of the worst ratio, and of the lowest limit; rows as in `Extremes.horizontal`. */
  worst: [number, number];
  lowest: [number, number];
}

/** Slides without slanted tethers and with the slope, if any, straight along the wind. */
function plainSlides(
  found: WorstSlides,
  terms: CheckTerms,
  table: ActionTable,
  place: number,
  horizontal: Float64Array,
): void {
  const { terms: held } = terms.holdings[place] as CheckTerms["holdings"][number];
  const { components } = table;
  const { wind: factor } = terms.combination;
  const { deadNormal, downslope } = held;
  const { friction } = held.holding;
  const loaded = factor * terms.pressure;
  const stuck = friction * deadNormal < downslope;
  // A row with no more wind and no more uplift than one already worked can govern nothing.
  let [knownH, knownV] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let least = Number.POSITIVE_INFINITY;
  for (let row = 0; row < horizontal.length; row += 1) {
    const h = horizontal[row] as number;
    const v = components[(row >> 1) * stride + 2] as number;
    if (h <= knownH && v <= knownV) continue;
    const contact = deadNormal - loaded * v;
    const ratio = ratioOf(loaded * h + downslope, contact > 0 ? friction * contact : 0);
    if (ratio > found.ratio) {
      found.ratio = ratio;
      found.worst = [place, row];
    }
    const pull = h + friction * v;
    if (pull <= 0 && !stuck) continue;
    const limit = stuck ? 0 : slidingLimit.evaluate(friction, deadNormal, downslope, factor, h, v);
    if (limit < least) {
      least = limit;
      [knownH, knownV] = [h, v];
    }
    if (limit < found.limit) {
      found.limit = limit;
      found.lowest = [place, row];
    }
  }
}

/** Slides on slanted tethers on level ground. */
function levelSlides(
  found: WorstSlides,
  terms: CheckTerms,
  table: ActionTable,
  place: number,
  horizontal: Float64Array,
): void {
  const held = terms.holdings[place] as CheckTerms["holdings"][number];
  const [right, left] = [held.lines[0]?.line as BaseLine, held.lines[1]?.line as BaseLine];
  const { pressure } = terms;
  const loaded = terms.combination.wind * pressure;
  for (let row = 0; row < horizontal.length; row += 1) {
    const wind = slidingWindOf(table, row >> 1, (row & 1) === 1, right, left);
    const straight = straightSlide(held.sliding, wind);
    if (found.ratio < Number.POSITIVE_INFINITY) {
      const ratio = ratioOf(loaded * straight.h, straightResistance(straight, pressure));
      if (ratio > found.ratio) {
        found.ratio = ratio;
        found.worst = [place, row];
      }
    }
    const limit = straightLimit(straight, pressure, found.limit);
    if (limit < found.limit) {
      found.limit = limit;
      found.lowest = [place, row];
    }
  }
}

/** Slides on slanted tethers on a slope, or across a slope. */
function tetheredSlides(
  found: WorstSlides,
  terms: CheckTerms,
  table: ActionTable,
  place: number,
): void {
  const held = terms.holdings[place] as CheckTerms["holdings"][number];
  const [right, left] = [held.lines[0]?.line as BaseLine, held.lines[1]?.line as BaseLine];
  for (let row = 0; row < 2 * table.count; row += 1) {
    const wind = slidingWindOf(table, row >> 1, (row & 1) === 1, right, left);
    const { demand, resistance } = worstSlideAt(held.sliding, wind, terms.pressure);
    const ratio = ratioOf(demand, resistance);
    if (ratio > found.ratio) {
      found.ratio = ratio;
      found.worst = [place, row];
    }
    const limit = slideLimit(held.sliding, wind, terms.pressure);
    if (limit < found.limit) {
      found.limit = limit;
      found.lowest = [place, row];
    }
  }
}

/** The worst ratio and the lowest limit of sliding over a table. */
export function governingSlides(
  terms: CheckTerms,
  table: ActionTable,
  horizontal: Float64Array,
): { byRatio: CheckOutcome; byLimit: CheckOutcome } {
  const found: WorstSlides = {
    ratio: Number.NEGATIVE_INFINITY,
    limit: Number.POSITIVE_INFINITY,
    worst: [0, 0],
    lowest: [0, 0],
  };
  terms.holdings.forEach(({ terms: held }, place) => {
    const along = held.downslope === 0 || held.holding.slope?.downhill === null;
    if (along && !held.sideways) plainSlides(found, terms, table, place, horizontal);
    else if (held.downslope === 0) levelSlides(found, terms, table, place, horizontal);
    else tetheredSlides(found, terms, table, place);
  });
  const outcome = ([place, row]: [number, number]): CheckOutcome => {
    const { lines } = terms.holdings[place] as CheckTerms["holdings"][number];
    const [right, left] = [lines[0]?.line as BaseLine, lines[1]?.line as BaseLine];
    const withoutArch = (row & 1) === 1;
    const wind = slidingWindOf(table, row >> 1, withoutArch, right, left);
    return slide(terms, place, row >> 1, withoutArch, wind);
  };
  return { byRatio: outcome(found.worst), byLimit: outcome(found.lowest) };
}
