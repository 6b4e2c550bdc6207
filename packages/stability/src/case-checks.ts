import { type BaseLine, checkIds } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import { overturningAbout } from "./lift-and-turn.ts";
import { lift, slide, slidingWindOf, turn } from "./one-check.ts";
import { type ActionTable, type CheckOutcome, stride, worseRatio } from "./outcome.ts";
import { ratioOf } from "./ratio.ts";
import type { SlidingWind } from "./slide.ts";
import { slideLimit } from "./slide-limit.ts";
import { searchesTurns, worstSlideAt } from "./slide-search.ts";
import { WorstOfChecks } from "./worst.ts";

/** Every check of one case, the worst weight, line place and sliding reading kept. */
export function checksOfCase(terms: CheckTerms, table: ActionTable, index: number): CheckOutcome[] {
  const found = allOutcomes(terms, table, index);
  return checkIds.map((check) =>
    found.filter((outcome) => outcome.check === check).reduce(worseRatio),
  );
}

/**
 * Every outcome of one case: each weight, line, and sliding with and without the arch. Of slides that
 * take a search over the slope's directions only those worse than the ones before.
 */
export function allOutcomes(terms: CheckTerms, table: ActionTable, index: number): CheckOutcome[] {
  const { components } = table;
  const at = index * stride;
  const fz = components[at + 2] as number;
  const mx = components[at + 3] as number;
  const my = components[at + 4] as number;
  const worst = new WorstOfChecks();
  return terms.holdings.flatMap(({ lines }, place) => {
    const [right, left] = [lines[0]?.line as BaseLine, lines[1]?.line as BaseLine];
    return [
      lift(terms, place, index, fz),
      ...lines.map(({ line }, linePlace) =>
        turn(terms, place, linePlace, index, overturningAbout(line, mx, my, fz)),
      ),
      ...[false, true].flatMap((withoutArch) => {
        const wind = slidingWindOf(table, index, withoutArch, right, left);
        const found = slideBeyond(terms, place, index, withoutArch, wind, worst);
        if (found === null) return [];
        worst.take("slide", found.ratio, found.limit, 0);
        return [found];
      }),
    ];
  });
}

/** Sliding of one case; none where it takes a search and is no worse than those before, by ratio and limit. */
function slideBeyond(
  terms: CheckTerms,
  place: number,
  caseIndex: number,
  withoutArch: boolean,
  wind: SlidingWind,
  worst: WorstOfChecks,
): CheckOutcome | null {
  const { holdings, pressure } = terms;
  const { sliding } = holdings[place] as CheckTerms["holdings"][number];
  if (!searchesTurns(sliding.terms)) return slide(terms, place, caseIndex, withoutArch, wind);
  const [ratio, lowest] = [worst.ratio("slide"), worst.limit("slide")];
  const { demand, resistance } = worstSlideAt(sliding, wind, pressure, ratio);
  const limit = slideLimit(sliding, wind, pressure, lowest);
  if (ratioOf(demand, resistance) <= ratio && limit >= lowest) return null;
  return slide(terms, place, caseIndex, withoutArch, wind, limit < lowest ? limit : undefined);
}
