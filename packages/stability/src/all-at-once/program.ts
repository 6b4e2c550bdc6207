import type { Basis } from "./basis.ts";

/** The wind factor as one more unknown: what it takes from each row, its cap. */
interface WindColumn {
  readonly coefficient: Float64Array;
  readonly cap: number;
}

/**
 * The unknowns of a system that answer a right side and gain most: the wind factor where there is
 * one, the least sum of tensions where there is none.
 */
export interface LinearProgram {
  /** What the program is written from; need not answer the right side. */
  readonly basis: Basis;
  readonly right: Float64Array;
  readonly wind: WindColumn | null;
}
