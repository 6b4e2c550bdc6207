import type { StateSummary } from "@hoopstay/core";

/** A state with both ways of holding it. */
export interface StatePair {
  readonly words: string;
  readonly bare?: StateSummary;
  readonly fitted?: StateSummary;
}

/** States in order, the two ways of holding each side by side. */
export function statePairs(states: readonly StateSummary[]): StatePair[] {
  const pairs = new Map<string, StatePair>();
  for (const state of states) {
    const { words, hold } = state;
    pairs.set(words, { ...pairs.get(words), words, [hold]: state });
  }
  return [...pairs.values()];
}
