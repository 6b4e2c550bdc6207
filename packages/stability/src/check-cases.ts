import { type BaseLine, type CheckId, checkIds } from "./base-line.ts";
import type { Combination } from "./combination.ts";
import {
  type Holding,
  type HoldingTerms,
  holdingTerms,
  type LineTerms,
  lineTerms,
} from "./holding.ts";
import { demandOf, limitOf, overturning, overturningAbout, resistanceOf } from "./lift-and-turn.ts";
import { ratioOf } from "./ratio.ts";
import { type SlidingTerms, type SlidingWind, slidingTerms } from "./slide.ts";
import { slideLimit, slidingLimit } from "./slide-limit.ts";
import { worstSlideAt } from "./slide-search.ts";

/** Load cases per unit of K_d q_h: F_x, F_y, F_z, M_x, M_y, M_z, F_x without the arch, a row each. */
export interface ActionTable {
  readonly count: number;
  readonly components: Float64Array;
}
const stride = 7;

/** One check of one case, or the governing one of many. */
export interface CheckOutcome {
  readonly check: CheckId;
  readonly caseIndex: number;
  readonly weight: "low" | "high";
  readonly line: BaseLine | null;
  /** Sliding only: the arch's horizontal part left out. */
  readonly withoutArch: boolean;
  readonly demand: number;
  readonly resistance: number;
  readonly ratio: number;
  /** K_d q_h at which the check is just met, Pa; infinite where it is not limited. */
  readonly limit: number;
}

/** Everything about one combination that no case changes. */
export interface CheckTerms {
  readonly combination: Combination;
  readonly pressure: number;
  readonly holdings: readonly {
    readonly terms: HoldingTerms;
    readonly lines: readonly { readonly line: BaseLine; readonly terms: LineTerms }[];
    readonly sliding: SlidingTerms;
  }[];
}

/**
 * @param holdings what holds the house, low and high weight
 * @param lines base lines; right and left rail come first
 * @param pressure design K_d q_h, Pa
 */
export function checkTerms(
  holdings: readonly Holding[],
  lines: readonly BaseLine[],
  combination: Combination,
  pressure: number,
): CheckTerms {
  const [right, left] = lines as readonly [BaseLine, BaseLine];
  return {
    combination,
    pressure,
    holdings: holdings.map((holding) => {
      const terms = holdingTerms(holding, combination);
      return {
        terms,
        lines: lines.map((line) => ({ line, terms: lineTerms(terms, line) })),
        sliding: slidingTerms(terms, right, left),
      };
    }),
  };
}

/** Lift off of one case with the given uplift, m2, for one holding. */
function lift(terms: CheckTerms, place: number, caseIndex: number, uplift: number): CheckOutcome {
  const { holdings, combination, pressure } = terms;
  const { terms: held } = holdings[place] as CheckTerms["holdings"][number];
  const resistance = resistanceOf.evaluate(held.deadNormal, held.anchorDown);
  const demand = demandOf.evaluate(combination.wind, pressure * uplift, 0);
  return {
    check: "lift",
    caseIndex,
    weight: held.holding.weight.name,
    line: null,
    withoutArch: false,
    demand,
    resistance,
    ratio: ratioOf(demand, resistance),
    limit: limitOf(resistance, 0, combination.wind, uplift),
  };
}

/** Turning of one case about one line for one holding; `moment` per unit of K_d q_h, m3. */
function turn(
  terms: CheckTerms,
  place: number,
  linePlace: number,
  caseIndex: number,
  moment: number,
): CheckOutcome {
  const { holdings, combination, pressure } = terms;
  const held = holdings[place] as CheckTerms["holdings"][number];
  const { line, terms: about } = held.lines[linePlace] as (typeof held.lines)[number];
  const resistance = resistanceOf.evaluate(about.weightMoment, about.anchorMoment);
  const demand = demandOf.evaluate(combination.wind, pressure * moment, about.slopeMoment);
  return {
    check: line.check,
    caseIndex,
    weight: held.terms.holding.weight.name,
    line,
    withoutArch: false,
    demand,
    resistance,
    ratio: ratioOf(demand, resistance),
    limit: limitOf(resistance, about.slopeMoment, combination.wind, moment),
  };
}

/** The sliding wind of a case row, with or without the arch's horizontal part. */
export function slidingWindOf(
  table: ActionTable,
  index: number,
  withoutArch: boolean,
  right: BaseLine,
  left: BaseLine,
): SlidingWind {
  const { components } = table;
  const at = index * stride;
  const fz = components[at + 2] as number;
  const mx = components[at + 3] as number;
  const my = components[at + 4] as number;
  return {
    fx: components[at + (withoutArch ? 6 : 0)] as number,
    fy: components[at + 1] as number,
    fz,
    turnRight: overturningAbout(right, mx, my, fz),
    turnLeft: overturningAbout(left, mx, my, fz),
  };
}

function slide(
  terms: CheckTerms,
  place: number,
  caseIndex: number,
  withoutArch: boolean,
  wind: SlidingWind,
): CheckOutcome {
  const held = terms.holdings[place] as CheckTerms["holdings"][number];
  const { demand, resistance } = worstSlideAt(held.sliding, wind, terms.pressure);
  return {
    check: "slide",
    caseIndex,
    weight: held.terms.holding.weight.name,
    line: null,
    withoutArch,
    demand,
    resistance,
    ratio: ratioOf(demand, resistance),
    limit: slideLimit(held.sliding, wind, terms.pressure),
  };
}

/** Worse of two outcomes by ratio, then by limit. */
const worseRatio = (a: CheckOutcome, b: CheckOutcome): CheckOutcome =>
  b.ratio > a.ratio || (b.ratio === a.ratio && b.limit < a.limit) ? b : a;
const lowerLimit = (a: CheckOutcome, b: CheckOutcome): CheckOutcome =>
  b.limit < a.limit || (b.limit === a.limit && b.ratio > a.ratio) ? b : a;

/** Every check of one case, the worst weight, line place and sliding reading kept. */
export function checksOfCase(terms: CheckTerms, table: ActionTable, index: number): CheckOutcome[] {
  const found = allOutcomes(terms, table, index);
  return checkIds.map((check) =>
    found.filter((outcome) => outcome.check === check).reduce(worseRatio),
  );
}

/** Every outcome of one case: each weight, line, and sliding with and without the arch. */
export function allOutcomes(terms: CheckTerms, table: ActionTable, index: number): CheckOutcome[] {
  const { components } = table;
  const at = index * stride;
  const fz = components[at + 2] as number;
  const mx = components[at + 3] as number;
  const my = components[at + 4] as number;
  return terms.holdings.flatMap(({ lines }, place) => {
    const [right, left] = [lines[0]?.line as BaseLine, lines[1]?.line as BaseLine];
    return [
      lift(terms, place, index, fz),
      ...lines.map(({ line }, linePlace) =>
        turn(terms, place, linePlace, index, overturningAbout(line, mx, my, fz)),
      ),
      ...[false, true].map((withoutArch) =>
        slide(
          terms,
          place,
          index,
          withoutArch,
          slidingWindOf(table, index, withoutArch, right, left),
        ),
      ),
    ];
  });
}

/** The governing outcome of a check over a table: by ratio, and by limit. */
export interface Governing {
  readonly check: CheckId;
  readonly byRatio: CheckOutcome;
  readonly byLimit: CheckOutcome;
}

/** Rows of greatest uplift and of greatest moment about each line: they govern those checks. */
export interface Extremes {
  readonly uplift: number;
  readonly moments: readonly number[];
  /** Horizontal wind of every case with and without the arch's part, m2: two numbers a case. */
  readonly horizontal: Float64Array;
}

/**
 * For lift off and turning the resistance is the same in every case, so the case of greatest wind
 * effect governs, whatever the weight and the combination.
 */
export function extremesOf(table: ActionTable, lines: readonly BaseLine[]): Extremes {
  const { components, count } = table;
  const moments = lines.map((line) => greatestMoment(table, line));
  const horizontal = new Float64Array(2 * count);
  let uplift = 0;
  let highest = Number.NEGATIVE_INFINITY;
  for (let index = 0, at = 0; index < count; index += 1, at += stride) {
    const fx = components[at] as number;
    const fy = components[at + 1] as number;
    const fz = components[at + 2] as number;
    const bare = components[at + 6] as number;
    horizontal[2 * index] = Math.sqrt(fx * fx + fy * fy);
    horizontal[2 * index + 1] = Math.sqrt(bare * bare + fy * fy);
    if (fz > highest) {
      highest = fz;
      uplift = index;
    }
  }
  return { uplift, moments, horizontal };
}

function greatestMoment({ components, count }: ActionTable, line: BaseLine): number {
  const { nx, ny, distance } = line;
  let highest = Number.NEGATIVE_INFINITY;
  let found = 0;
  for (let index = 0, at = 2; index < count; index += 1, at += stride) {
    const moment = overturning.evaluate(
      nx,
      ny,
      components[at + 1] as number,
      components[at + 2] as number,
      components[at] as number,
      distance,
    );
    if (moment > highest) {
      highest = moment;
      found = index;
    }
  }
  return found;
}

/** The governing outcomes of all checks of one table. */
export function governingChecks(
  terms: CheckTerms,
  table: ActionTable,
  extremes: Extremes,
): Governing[] {
  const { components } = table;
  const found = new Map<CheckId, { byRatio: CheckOutcome; byLimit: CheckOutcome }>();
  const keep = (outcome: CheckOutcome): void => {
    const known = found.get(outcome.check);
    if (!known) {
      found.set(outcome.check, { byRatio: outcome, byLimit: outcome });
      return;
    }
    known.byRatio = worseRatio(known.byRatio, outcome);
    known.byLimit = lowerLimit(known.byLimit, outcome);
  };
  terms.holdings.forEach(({ lines }, place) => {
    const { uplift } = extremes;
    keep(lift(terms, place, uplift, components[uplift * stride + 2] as number));
    lines.forEach(({ line }, linePlace) => {
      const index = extremes.moments[linePlace] as number;
      const row = index * stride + 2;
      const moment = overturningAbout(
        line,
        components[row + 1] as number,
        components[row + 2] as number,
        components[row] as number,
      );
      keep(turn(terms, place, linePlace, index, moment));
    });
  });
  found.set("slide", governingSlides(terms, table, extremes.horizontal));
  return checkIds.map((check) => {
    const known = found.get(check);
    if (!known) throw new Error(`no outcome for ${check}`);
    return { check, byRatio: known.byRatio, byLimit: known.byLimit };
  });
}

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
  for (let row = 0; row < horizontal.length; row += 1) {
    const h = horizontal[row] as number;
    const v = components[(row >> 1) * stride + 2] as number;
    const demand = loaded * h + downslope;
    const contact = deadNormal - loaded * v;
    const resistance = contact > 0 ? friction * contact : 0;
    // Compared crosswise: a division only where a worse case was found.
    if (found.ratio < Number.POSITIVE_INFINITY && demand > found.ratio * resistance) {
      found.ratio = ratioOf(demand, resistance);
      found.worst = [place, row];
    }
    const pull = h + friction * v;
    if (pull <= 0 && !stuck) continue;
    const limit = stuck ? 0 : slidingLimit.evaluate(friction, deadNormal, downslope, factor, h, v);
    if (limit < found.limit) {
      found.limit = limit;
      found.lowest = [place, row];
    }
  }
}

/** Slides on slanted tethers, or across a slope. */
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

function governingSlides(
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
