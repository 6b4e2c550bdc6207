import { cite, judged } from "@hoopstay/core";

export type CombinationId = "ASD" | "LRFD";

/** Load factors of one combination that resists wind with weight. */
export interface Combination {
  readonly id: CombinationId;
  readonly words: string;
  readonly wind: number;
  readonly dead: number;
  /** On the downslope part of the weight. */
  readonly slope: number;
  /** On the allowable pull of an anchor. */
  readonly anchor: number;
}

export const asd: Combination = {
  id: "ASD",
  words: "0.6 D + 0.6 W",
  wind: 0.6,
  dead: 0.6,
  slope: 1,
  anchor: 1,
};

export const lrfd: Combination = {
  id: "LRFD",
  words: "0.9 D + 1.0 W",
  wind: 1,
  dead: 0.9,
  slope: 1.2,
  anchor: 1.5,
};

export const combinations: readonly Combination[] = [asd, lrfd];

export const combinationCitations = {
  ASD: cite("asce-7-16", "2.4.1, combination 7", "second-hand"),
  LRFD: cite("asce-7-16", "2.3.1, combination 5", "second-hand"),
  slope: cite(
    "asce-7-16",
    "1.0 D of 2.4.1, combination 5; 1.2 D of 2.3.1, combination 4",
    "memory",
  ),
  anchor: judged("the allowable pull whole in ASD; phi T_n = 1.5 times it in LRFD"),
};
