import type { Citation, Step } from "@hoopstay/core";

/** A capacity along the tether, N. Other loads (hardware, rail) are not looked at here. */
export interface RatedCapacity {
  readonly rated: true;
  readonly ultimate: number;
  /** ASD. */
  readonly allowable: number;
  /** LRFD design strength, 1.5 times the allowable. */
  readonly lrfdStrength: number;
  /** EN 1997-1 design resistance: R_k = ultimate/2, R_d = R_k/1.4. */
  readonly enResistance: number;
  readonly basis: "theory" | "presumptive" | "table";
  readonly factor: number;
  readonly factorCitation: Citation;
  /** The model that gave the number, in words. */
  readonly governing: string;
  /** Formulas and numbers in the order of calculation; the last is the allowable. */
  readonly trail: readonly Step[];
  /** What a reader has to know about this number. */
  readonly findings: readonly string[];
}

/** No number, and what is needed to get one. */
export interface NotRated {
  readonly rated: false;
  readonly needs: "pull test" | "pull test in this direction" | "engineer" | "another shape";
  readonly reason: string;
}

export type Capacity = RatedCapacity | NotRated;

export const notRated = (needs: NotRated["needs"], reason: string): NotRated => ({
  rated: false,
  needs,
  reason,
});
