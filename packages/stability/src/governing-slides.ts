import type { BaseLine } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import type { Extremes, SlideRow } from "./extremes.ts";
import { slidingWindOf } from "./one-check.ts";
import type { ActionTable } from "./outcome.ts";
import { ratioOf } from "./ratio.ts";
import type { SlidingWind } from "./slide.ts";
import { slideLimit, slidingLimit } from "./slide-limit.ts";
import { worstSlideAt } from "./slide-search.ts";
import { straightLimit, straightResistance, straightSlide } from "./straight-slide.ts";
import type { TetherRows } from "./tether-rows.ts";
import type { WorstOfChecks } from "./worst.ts";

type Held = CheckTerms["holdings"][number];

/** Slides without slanted tethers and with the slope, if any, straight along the wind. */
function plainSlides(
  worst: WorstOfChecks,
  terms: CheckTerms,
  { terms: held }: Held,
  rows: readonly SlideRow[],
  first: number,
): void {
  const { wind: factor } = terms.combination;
  const { deadNormal, downslope } = held;
  const { friction } = held.holding;
  const loaded = factor * terms.pressure;
  const stuck = friction * deadNormal < downslope;
  for (let place = 0; place < rows.length; place += 1) {
    const { row, h, v } = rows[place] as SlideRow;
    const contact = deadNormal - loaded * v;
    const ratio = ratioOf(loaded * h + downslope, friction * Math.max(0, contact));
    let limit = Number.POSITIVE_INFINITY;
    if (stuck) limit = 0;
    else if (h + friction * v > 0) {
      limit = slidingLimit.evaluate(friction, deadNormal, downslope, factor, h, v);
    }
    worst.take("slide", ratio, limit, first + row);
  }
}

/** Slides on slanted tethers on level ground. A limit above the lowest known is not worked out. */
function levelSlides(
  worst: WorstOfChecks,
  terms: CheckTerms,
  held: Held,
  table: ActionTable,
  tethers: TetherRows | null,
  first: number,
): void {
  const [right, left] = [held.lines[0]?.line as BaseLine, held.lines[1]?.line as BaseLine];
  const { pressure } = terms;
  const loaded = terms.combination.wind * pressure;
  for (let row = 0; row < 2 * table.count; row += 1) {
    const wind = slidingWindOf(table, row >> 1, row % 2 === 1, right, left);
    const straight = straightSlide(held.sliding, wind, tethers?.at(row, terms.combination.anchor));
    const ratio = ratioOf(loaded * straight.h, straightResistance(straight, pressure));
    worst.take(
      "slide",
      ratio,
      straightLimit(straight, pressure, worst.limit("slide")),
      first + row,
    );
  }
}

interface RowWind {
  readonly row: number;
  readonly wind: SlidingWind;
}

/** Whether one wind slides the house no less than another: as hard a push, as little left to hold it. */
const noLess = (one: SlidingWind, other: SlidingWind): boolean =>
  one.fx === other.fx &&
  one.fy === other.fy &&
  one.fz >= other.fz &&
  one.turnRight >= other.turnRight &&
  one.turnLeft >= other.turnLeft;

/** Rows of which no other slides the house no less. */
function unbeatenRows(table: ActionTable, right: BaseLine, left: BaseLine): RowWind[] {
  let kept: RowWind[] = [];
  for (let row = 0; row < 2 * table.count; row += 1) {
    const wind = slidingWindOf(table, row >> 1, row % 2 === 1, right, left);
    if (kept.some((other) => noLess(other.wind, wind))) continue;
    kept = kept.filter((other) => !noLess(wind, other.wind));
    kept.push({ row, wind });
  }
  return kept;
}

/**
 * Slides on slanted tethers on a slope, or across a slope. Where a slope's direction is unknown, neither
 * a limit above the lowest known nor a ratio below the worst is worked out.
 */
function tetheredSlides(
  worst: WorstOfChecks,
  terms: CheckTerms,
  held: Held,
  table: ActionTable,
  first: number,
): void {
  const [right, left] = [held.lines[0]?.line as BaseLine, held.lines[1]?.line as BaseLine];
  for (const { row, wind } of unbeatenRows(table, right, left)) {
    const { sliding } = held;
    const limit = slideLimit(sliding, wind, terms.pressure, worst.limit("slide"));
    const { demand, resistance } = worstSlideAt(
      sliding,
      wind,
      terms.pressure,
      worst.ratio("slide"),
    );
    worst.take("slide", ratioOf(demand, resistance), limit, first + row);
  }
}

/** Takes in the slides of a table. Outcome numbers are `row + place * 2 * count`; see `SlideRow`. */
export function takeSlides(
  worst: WorstOfChecks,
  terms: CheckTerms,
  table: ActionTable,
  { slides: rows, tethers }: Extremes,
): void {
  const { holdings } = terms;
  for (let place = 0; place < holdings.length; place += 1) {
    const held = holdings[place] as Held;
    const { downslope, sideways, holding } = held.terms;
    const first = place * 2 * table.count;
    const along = downslope === 0 || holding.slope?.downhill === null;
    if (along && !sideways) plainSlides(worst, terms, held, rows, first);
    else if (downslope === 0) levelSlides(worst, terms, held, table, tethers, first);
    else tetheredSlides(worst, terms, held, table, first);
  }
}
