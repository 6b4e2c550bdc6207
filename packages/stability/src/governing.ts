import { type BaseLine, type CheckId, checkIds } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import type { Extreme, Extremes } from "./extremes.ts";
import { takeSlides } from "./governing-slides.ts";
import { demandOf, limitOf, resistanceOf } from "./lift-and-turn.ts";
import { lift, slide, slidingWindOf, turn } from "./one-check.ts";
import type { ActionTable, CheckOutcome } from "./outcome.ts";
import { ratioOf } from "./ratio.ts";
import { WorstOfChecks } from "./worst.ts";

/** The governing outcomes of one check over a table: by ratio, and by limit. */
export interface Governing {
  readonly check: CheckId;
  readonly byRatio: CheckOutcome;
  readonly byLimit: CheckOutcome;
}

function takeLift(worst: WorstOfChecks, terms: CheckTerms, { effect }: Extreme): void {
  const { pressure, combination, holdings } = terms;
  const demand = demandOf.evaluate(combination.wind, pressure * effect, 0);
  for (let place = 0; place < holdings.length; place += 1) {
    const { terms: held } = holdings[place] as CheckTerms["holdings"][number];
    const resistance = resistanceOf.evaluate(held.deadNormal, held.anchorDown);
    const limit = limitOf(resistance, 0, combination.wind, effect);
    worst.take("lift", ratioOf(demand, resistance), limit, place);
  }
}

/** Turning about one line; outcome numbers are `linePlace + place * lines`. */
function takeTurns(
  worst: WorstOfChecks,
  terms: CheckTerms,
  linePlace: number,
  { effect }: Extreme,
): void {
  const { pressure, combination, holdings } = terms;
  for (let place = 0; place < holdings.length; place += 1) {
    const { lines } = holdings[place] as CheckTerms["holdings"][number];
    const { line, terms: about } = lines[linePlace] as (typeof lines)[number];
    const resistance = resistanceOf.evaluate(about.weightMoment, about.anchorMoment);
    const demand = demandOf.evaluate(combination.wind, pressure * effect, about.slopeMoment);
    const limit = limitOf(resistance, about.slopeMoment, combination.wind, effect);
    worst.take(line.check, ratioOf(demand, resistance), limit, linePlace + place * lines.length);
  }
}

/** The worst of every check over a table, told in numbers. */
export function worstOfChecks(
  terms: CheckTerms,
  table: ActionTable,
  extremes: Extremes,
): WorstOfChecks {
  const { uplift, moments } = extremes;
  const worst = new WorstOfChecks();
  takeLift(worst, terms, uplift);
  for (let place = 0; place < moments.length; place += 1) {
    takeTurns(worst, terms, place, moments[place] as Extreme);
  }
  takeSlides(worst, terms, table, extremes);
  return worst;
}

/** The outcomes that `worstOfChecks` told of, written out, in the order of `checkIds`. */
export function governingOutcomes(
  worst: WorstOfChecks,
  terms: CheckTerms,
  table: ActionTable,
  { uplift, moments }: Extremes,
): Governing[] {
  const lines = (terms.holdings[0] as CheckTerms["holdings"][number]).lines;
  const written = (check: CheckId, at: number): CheckOutcome => {
    if (check === "lift") return lift(terms, at, uplift.index, uplift.effect);
    if (check === "slide") {
      const row = at % (2 * table.count);
      const place = (at - row) / (2 * table.count);
      const [right, left] = [lines[0]?.line as BaseLine, lines[1]?.line as BaseLine];
      const withoutArch = row % 2 === 1;
      const wind = slidingWindOf(table, row >> 1, withoutArch, right, left);
      return slide(terms, place, row >> 1, withoutArch, wind);
    }
    const linePlace = at % lines.length;
    const { index, effect } = moments[linePlace] as Extreme;
    return turn(terms, (at - linePlace) / lines.length, linePlace, index, effect);
  };
  return checkIds.map((check): Governing => {
    const byRatio = written(check, worst.ratioAt(check));
    return { check, byRatio, byLimit: written(check, worst.limitAt(check)) };
  });
}

/** The governing outcomes of all checks of one table, in the order of `checkIds`. */
export const governingChecks = (
  terms: CheckTerms,
  table: ActionTable,
  extremes: Extremes,
): Governing[] => governingOutcomes(worstOfChecks(terms, table, extremes), terms, table, extremes);
