import type { CheckOutcome, Governing } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation } from "./evaluate.ts";
import { greaterFirst } from "./greater-first.ts";
import { governingOf } from "./summaries.ts";

/** The state and the outcome that govern one check over all states, as the house is held. */
export interface GoverningPlace {
  readonly state: EvaluatedState;
  readonly governing: Governing;
}

/** The worst of all states for every check, in the hold and combination of the verdict. */
export function worstPlaces(evaluation: Evaluation): GoverningPlace[] {
  const hold = evaluation.holds.at(-1)?.id ?? "bare";
  const { combination } = evaluation.site;
  const lists = evaluation.states.map((state) =>
    governingOf(state.set, hold, combination).map((governing) => ({ state, governing })),
  );
  const first = lists[0] ?? [];
  return first.map((_, index) =>
    lists
      .map((list) => list[index] as GoverningPlace)
      .reduce((a, b) => (b.governing.byRatio.ratio > a.governing.byRatio.ratio ? b : a)),
  );
}

/** The state and the case in which one check gives way at the lowest wind. */
export interface LimitPlace {
  readonly state: EvaluatedState;
  readonly outcome: CheckOutcome;
}

/** The lowest limit of all states for every check; it need not be where the ratio is greatest. */
export function lowestPlaces(evaluation: Evaluation): LimitPlace[] {
  const hold = evaluation.holds.at(-1)?.id ?? "bare";
  const { combination } = evaluation.site;
  return worstPlaces(evaluation).map((worst, index) =>
    evaluation.states
      .map((state) => ({
        state,
        outcome: (governingOf(state.set, hold, combination)[index] as Governing).byLimit,
      }))
      .reduce((a, b) => (greaterFirst(a.outcome.limit, b.outcome.limit) < 0 ? b : a), {
        state: worst.state,
        outcome: worst.governing.byLimit,
      }),
  );
}
