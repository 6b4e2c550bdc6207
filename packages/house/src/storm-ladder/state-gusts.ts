import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import type { HoldId } from "../review/hold.ts";
import { governingOf, gustOf, speedOf } from "../review/summaries.ts";
import type { SummaryId } from "../review/words.ts";
import type { HouseState } from "../state/states.ts";
import { jointBelow, singleFactor } from "../together/joint.ts";

/** The working gust of a state, m/s, and the check that gives it, everything at once among them. */
export interface StateGust {
  readonly state: HouseState;
  readonly gust: number;
  readonly check: SummaryId;
}

/** The lowest working gust of a state, always of the ASD combination. */
export function stateGust(
  evaluation: Evaluation,
  { state, set }: EvaluatedState,
  hold: HoldId,
): StateGust {
  const { check, byLimit } = governingOf(set, hold, "ASD").reduce((first, one) =>
    one.byLimit.limit < first.byLimit.limit ? one : first,
  );
  const gust = gustOf(speedOf(evaluation, byLimit.limit));
  const joint = jointBelow(
    evaluation,
    set,
    hold,
    "ASD",
    singleFactor(evaluation, set, hold, "ASD"),
  );
  if (!joint) return { state, check, gust };
  const together = gustOf(speedOf(evaluation, joint.factor * evaluation.pressure));
  return together < gust * (1 - 1e-9)
    ? { state, check: "together", gust: together }
    : { state, check, gust };
}

const openArea = ({ state }: EvaluatedState): number =>
  Object.values(state.openings).reduce((sum, area) => sum + area, 0);

/** The house shut; where only the owner's own states are checked, the one with the least openings. */
export function closedStateOf({ states }: Evaluation): EvaluatedState {
  const covered = states.filter(({ state }) => state.filmOn);
  const shut = covered.find(({ state }) => state.id === "shut");
  return shut ?? covered.reduce((least, one) => (openArea(one) < openArea(least) ? one : least));
}

/** The states with the film on that are not the shut one. */
export function openStatesOf(evaluation: Evaluation): EvaluatedState[] {
  const closed = closedStateOf(evaluation);
  return evaluation.states.filter((one) => one !== closed && one.state.filmOn);
}

export const hasEnds = ({ state }: EvaluatedState): boolean => state.ends.front && state.ends.back;

export const lowest = (gusts: readonly StateGust[]): StateGust | undefined =>
  gusts.length === 0 ? undefined : gusts.reduce((a, b) => (b.gust < a.gust ? b : a));

/** The state in which the whole house gives way first, as it is held. */
export function lowestState(evaluation: Evaluation): StateGust | undefined {
  const hold = evaluation.holds.at(-1)?.id ?? "bare";
  return lowest(evaluation.states.map((state) => stateGust(evaluation, state, hold)));
}
