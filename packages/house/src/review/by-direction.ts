import type { FromSide } from "@hoopstay/core";
import type { WindCase } from "@hoopstay/load";
import { allOutcomes, type CheckOutcome, checkIds, lowerLimit } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation } from "./evaluate.ts";
import type { HoldId } from "./hold.ts";
import { caseId, gustOf, setLetters, speedOf } from "./summaries.ts";
import { checkWords, fromWords } from "./words.ts";

/**
 * Lifting, tipping and sliding of one state by the side the wind comes from, by ASD. Everything at
 * once is not told by side: it has one answer for all of them.
 */
export function byDirection(
  evaluation: Evaluation,
  { set }: EvaluatedState,
  holdId: HoldId,
): FromSide[] {
  const hold = set.holds.find(({ id }) => id === holdId);
  if (!hold) throw new Error(`no checks for ${holdId}`);
  const letter = setLetters(evaluation).get(set) ?? "";
  const sides = new Map<string, CheckOutcome[]>();
  set.table.cases.forEach((windCase: WindCase, index) => {
    const from = fromWords(windCase, evaluation.site.frontBearing);
    const outcomes = allOutcomes(hold.terms.ASD, set.table, index);
    sides.set(from, [...(sides.get(from) ?? []), ...outcomes]);
  });
  return [...sides].map(([from, outcomes]) => ({
    from,
    checks: checkIds.map((check) => {
      const { limit, ratio, caseIndex } = outcomes
        .filter((outcome) => outcome.check === check)
        .reduce(lowerLimit);
      return {
        check,
        words: checkWords[check].verb,
        workingGust: gustOf(speedOf(evaluation, limit)),
        ratio,
        id: caseId(letter, caseIndex),
      };
    }),
  }));
}
