import type { Evaluation } from "@hoopstay/house";

export interface Outcome {
  readonly state: string;
  readonly hold: string;
  readonly combination: string;
  readonly check: string;
  readonly demand: number;
  readonly ratio: number;
  /** K_d q_h at which it just holds, Pa. */
  readonly limit: number;
}

const keyOf = ({ state, hold, combination, check }: Outcome): string =>
  [state, hold, combination, check].join(" ");

/** The governing outcome of every check in every state, hold and combination, by what it is of. */
export function outcomesOf({ states }: Evaluation): Map<string, Outcome> {
  const found = new Map<string, Outcome>();
  for (const { state, set } of states) {
    for (const { hold, combination, checks, worst } of set.governing) {
      for (const { check, byRatio } of checks) {
        const { demand, ratio } = byRatio;
        const limit = worst.limit(check);
        const one = { state: state.id, hold, combination, check, demand, ratio, limit };
        found.set(keyOf(one), one);
      }
    }
  }
  return found;
}

/** The outcomes as the house is held, in the combination of the verdict. */
export function heldOutcomes(evaluation: Evaluation): Outcome[] {
  const hold = evaluation.holds.at(-1)?.id;
  return [...outcomesOf(evaluation).values()].filter(
    (one) => one.hold === hold && one.combination === evaluation.site.combination,
  );
}

/** Whether no single check fails, at the design wind or at a lighter one. */
export const standsAt = (evaluation: Evaluation): boolean =>
  heldOutcomes(evaluation).every(
    ({ ratio, limit }) => ratio <= 1 && limit >= evaluation.pressure * (1 - 1e-12),
  );

/** Equal but for rounding. */
export const near = (a: number, b: number, most = 1e-9): boolean =>
  a === b || Math.abs(a - b) <= most * Math.max(Math.abs(a), Math.abs(b), 1e-9);

/** Not above, but for rounding. */
export const upTo = (a: number, b: number): boolean => a <= b || near(a, b);
