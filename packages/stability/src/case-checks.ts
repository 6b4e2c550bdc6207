import { type BaseLine, checkIds } from "./base-line.ts";
import type { CheckTerms } from "./check-terms.ts";
import { overturningAbout } from "./lift-and-turn.ts";
import { lift, slide, slidingWindOf, turn } from "./one-check.ts";
import { type ActionTable, type CheckOutcome, stride, worseRatio } from "./outcome.ts";

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
