import { caseStride, type LeastLoad } from "@hoopstay/load";
import {
  type CheckId,
  type CheckOutcome,
  type CombinationId,
  combinations,
  extremesOf,
  governingChecks,
} from "@hoopstay/stability";
import type { Hold, HoldId } from "./hold.ts";

/** The least-load check of one kind of check: it passes or fails and has no limit speed. */
export interface LeastOutcome {
  readonly hold: HoldId;
  readonly combination: CombinationId;
  readonly check: CheckId;
  readonly load: LeastLoad;
  readonly outcome: CheckOutcome;
}

/** Worst least load of every check, for every hold and combination. */
export function leastOutcomes(least: readonly LeastLoad[], holds: readonly Hold[]): LeastOutcome[] {
  if (least.length === 0) return [];
  const components = new Float64Array(least.length * caseStride);
  least.forEach(({ axis, sense, force, height }, index) => {
    const push = sense * force;
    const row =
      axis === "across"
        ? [push, 0, 0, 0, push * height, 0, push]
        : [0, push, 0, -push * height, 0, 0, 0];
    components.set(row, index * caseStride);
  });
  const table = { count: least.length, components };
  return holds.flatMap(({ id, terms, lines }) => {
    const extremes = extremesOf(table, lines);
    return combinations.flatMap((combination) => {
      // The loads are forces already: they run at a pressure of one.
      const at = { ...terms[combination.id], pressure: 1 };
      return governingChecks(at, table, extremes).map(({ check, byRatio }): LeastOutcome => {
        const load = least[byRatio.caseIndex] as LeastLoad;
        return { hold: id, combination: combination.id, check, load, outcome: byRatio };
      });
    });
  });
}
