import { cite } from "@hoopstay/core";
import type { CombinationId } from "@hoopstay/stability";

/** Load factors of one combination of a link: with weight against the wind, or with it. */
export interface LinkCombination {
  readonly method: CombinationId;
  readonly words: string;
  readonly dead: number;
  readonly wind: number;
  /** Which estimate of the weight acts. */
  readonly weight: "low" | "high";
}

export const linkCombinations: readonly LinkCombination[] = [
  { method: "ASD", words: "0.6 D + 0.6 W", dead: 0.6, wind: 0.6, weight: "low" },
  { method: "ASD", words: "D + 0.6 W", dead: 1, wind: 0.6, weight: "high" },
  { method: "LRFD", words: "0.9 D + W", dead: 0.9, wind: 1, weight: "low" },
  { method: "LRFD", words: "1.2 D + W", dead: 1.2, wind: 1, weight: "high" },
];

export const linkCombinationCitations = [
  cite("asce-7-16", "2.4.1, combinations 5 and 7", "second-hand"),
  cite("asce-7-16", "2.3.1, combinations 4 and 5", "second-hand"),
];

const ofMethod = (method: CombinationId) => linkCombinations.filter((one) => one.method === method);
const byMethod = { ASD: ofMethod("ASD"), LRFD: ofMethod("LRFD") };

/** The combinations of one method. */
export const designCombinations = (method: CombinationId): readonly LinkCombination[] =>
  byMethod[method];
