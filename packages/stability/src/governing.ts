import { type CheckId, checkIds } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import type { Extremes } from "./extremes.ts";
import { governingSlides } from "./governing-slides.ts";
import { overturningAbout } from "./lift-and-turn.ts";
import { lift, turn } from "./one-check.ts";
import { type ActionTable, type CheckOutcome, lowerLimit, stride, worseRatio } from "./outcome.ts";

/** The governing outcome of a check over a table: by ratio, and by limit. */
export interface Governing {
  readonly check: CheckId;
  readonly byRatio: CheckOutcome;
  readonly byLimit: CheckOutcome;
}

type Worst = { byRatio: CheckOutcome; byLimit: CheckOutcome };

/** Keeps an outcome where it is worse than what is known of its check. */
function keep(found: Map<CheckId, Worst>, outcome: CheckOutcome): void {
  const known = found.get(outcome.check);
  if (!known) {
    found.set(outcome.check, { byRatio: outcome, byLimit: outcome });
    return;
  }
  known.byRatio = worseRatio(known.byRatio, outcome);
  known.byLimit = lowerLimit(known.byLimit, outcome);
}

/**
 * Whether a check on level ground can be passed over: no more demand and no less resistance than an
 * outcome that is known to govern both ways.
 */
const passedOver = (known: Worst | undefined, demand: number, resistance: number): boolean =>
  known !== undefined &&
  known.byRatio === known.byLimit &&
  demand <= known.byRatio.demand &&
  resistance >= known.byRatio.resistance;

/** The governing outcomes of all checks of one table. */
export function governingChecks(
  terms: CheckTerms,
  table: ActionTable,
  extremes: Extremes,
): Governing[] {
  const { components } = table;
  const { uplift, moments } = extremes;
  const { pressure, combination, holdings } = terms;
  const found = new Map<CheckId, Worst>();
  for (let place = 0; place < holdings.length; place += 1) {
    const { lines, terms: held } = holdings[place] as CheckTerms["holdings"][number];
    const lifting = components[uplift * stride + 2] as number;
    const hold = held.deadNormal + held.anchorDown;
    if (!passedOver(found.get("lift"), combination.wind * Math.max(0, pressure * lifting), hold)) {
      keep(found, lift(terms, place, uplift, lifting));
    }
    for (let linePlace = 0; linePlace < lines.length; linePlace += 1) {
      const { line, terms: about } = lines[linePlace] as (typeof lines)[number];
      const index = moments[linePlace] as number;
      const row = index * stride + 2;
      const [mx, my] = [components[row + 1] as number, components[row + 2] as number];
      const moment = overturningAbout(line, mx, my, components[row] as number);
      const demand = combination.wind * Math.max(0, pressure * moment);
      const resistance = about.weightMoment + about.anchorMoment;
      if (about.slopeMoment === 0 && passedOver(found.get(line.check), demand, resistance))
        continue;
      keep(found, turn(terms, place, linePlace, index, moment));
    }
  }
  found.set("slide", governingSlides(terms, table, extremes.horizontal));
  return checkIds.map((check) => {
    const { byRatio, byLimit } = found.get(check) as Worst;
    return { check, byRatio, byLimit };
  });
}
