import type { VariantReview } from "@hoopstay/core";

/** What limits a house: the gust, the state and what gives way in it. */
export interface Weakest {
  readonly gust: number;
  readonly state: string;
  readonly words: string;
}

/** The lowest gust of any state, of the house as a whole or of a link. */
export function weakestOf({ states }: VariantReview): Weakest | undefined {
  return states
    .flatMap(({ words: state, whole, link }) => [
      { state, ...whole },
      { state, ...link },
    ])
    .toSorted((one, other) => one.gust - other.gust)[0];
}
