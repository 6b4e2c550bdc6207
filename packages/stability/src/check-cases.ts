import { type BaseLine, type CheckId, checkIds } from "./base-line.ts";
import type { Combination } from "./combination.ts";
import { type Holding, type HoldingTerms, holdingTerms, type LineTerms, lineTerms } from "./holding.ts";
import { demandOf, limitOf, overturningAbout, resistanceOf } from "./lift-and-turn.ts";
import { ratioOf } from "./ratio.ts";
import { type SlidingTerms, type SlidingWind, slidingTerms } from "./slide.ts";
import { slideLimit } from "./slide-limit.ts";
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
        slide(terms, place, index, withoutArch, slidingWindOf(table, index, withoutArch, right, left)),
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
}

/**
 * For lift off and turning the resistance is the same in every case, so the case of greatest wind
 * effect governs, whatever the weight and the combination.
 */
export function extremesOf(table: ActionTable, lines: readonly BaseLine[]): Extremes {
  const { components, count } = table;
  let uplift = 0;
  const moments = new Array<number>(lines.length).fill(0);
  const highest = new Float64Array(lines.length + 1).fill(Number.NEGATIVE_INFINITY);
  for (let index = 0, at = 0; index < count; index += 1, at += stride) {
    const fz = components[at + 2] as number;
    const mx = components[at + 3] as number;
    const my = components[at + 4] as number;
    if (fz > (highest[0] as number)) {
      highest[0] = fz;
      uplift = index;
    }
    for (let place = 0; place < lines.length; place += 1) {
      const line = lines[place] as BaseLine;
      const moment = line.nx * my - line.ny * mx + line.distance * fz;
      if (moment > (highest[place + 1] as number)) {
        highest[place + 1] = moment;
        moments[place] = index;
      }
    }
  }
  return { uplift, moments };
}

/** The governing outcomes of all checks of one table. */
export function governingChecks(
  terms: CheckTerms,
  table: ActionTable,
  extremes: Extremes,
): Governing[] {
  const outcomes: CheckOutcome[] = [];
  const { components } = table;
  terms.holdings.forEach(({ lines }, place) => {
    outcomes.push(lift(terms, place, extremes.uplift, components[extremes.uplift * stride + 2] as number));
    lines.forEach(({ line }, linePlace) => {
      const index = extremes.moments[linePlace] as number;
      const [fz, mx, my] = components.subarray(index * stride + 2, index * stride + 5);
      const moment = overturningAbout(line, mx as number, my as number, fz as number);
      outcomes.push(turn(terms, place, linePlace, index, moment));
    });
  });
  const slides = governingSlides(terms, table);
  return checkIds.map((check) => {
    if (check === "slide") return { check, ...slides };
    const mine = outcomes.filter((outcome) => outcome.check === check);
    return { check, byRatio: mine.reduce(worseRatio), byLimit: mine.reduce(lowerLimit) };
  });
}

function governingSlides(
  terms: CheckTerms,
  table: ActionTable,
): { byRatio: CheckOutcome; byLimit: CheckOutcome } {
  let ratio = Number.NEGATIVE_INFINITY;
  let limit = Number.POSITIVE_INFINITY;
  let worst = [0, 0, 0] as [number, number, number];
  let lowest = [0, 0, 0] as [number, number, number];
  terms.holdings.forEach((held, place) => {
    const [right, left] = [held.lines[0]?.line as BaseLine, held.lines[1]?.line as BaseLine];
    for (let index = 0; index < table.count; index += 1) {
      for (let arch = 0; arch < 2; arch += 1) {
        const wind = slidingWindOf(table, index, arch === 1, right, left);
        const { demand, resistance } = worstSlideAt(held.sliding, wind, terms.pressure);
        const found = ratioOf(demand, resistance);
        if (found > ratio) {
          ratio = found;
          worst = [place, index, arch];
        }
        const least = slideLimit(held.sliding, wind, terms.pressure);
        if (least < limit) {
          limit = least;
          lowest = [place, index, arch];
        }
      }
    }
  });
  const outcome = ([place, index, arch]: [number, number, number]): CheckOutcome => {
    const { lines } = terms.holdings[place] as CheckTerms["holdings"][number];
    const [right, left] = [lines[0]?.line as BaseLine, lines[1]?.line as BaseLine];
    const wind = slidingWindOf(table, index, arch === 1, right, left);
    return slide(terms, place, index, arch === 1, wind);
  };
  return { byRatio: outcome(worst), byLimit: outcome(lowest) };
}
