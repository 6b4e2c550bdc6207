import type { BaseLine } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import { demandOf, limitOf, overturningAbout, resistanceOf } from "./lift-and-turn.ts";
import { type ActionTable, type CheckOutcome, stride } from "./outcome.ts";
import { ratioOf } from "./ratio.ts";
import type { SlidingWind } from "./slide.ts";
import { slideLimit } from "./slide-limit.ts";
import { worstSlideAt } from "./slide-search.ts";

/** Lift off of one case with the given uplift, m2, for one holding. */
export function lift(
  terms: CheckTerms,
  place: number,
  caseIndex: number,
  uplift: number,
): CheckOutcome {
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
export function turn(
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

/**
 * Sliding of one case for one holding.
 *
 * @param limit where it has been worked out before
 */
export function slide(
  terms: CheckTerms,
  place: number,
  caseIndex: number,
  withoutArch: boolean,
  wind: SlidingWind,
  limit?: number,
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
    limit: limit ?? slideLimit(held.sliding, wind, terms.pressure),
  };
}
