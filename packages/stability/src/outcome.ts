import type { BaseLine, CheckId } from "./base-line.ts";

/** Load cases per unit of K_d q_h: F_x, F_y, F_z, M_x, M_y, M_z, F_x without the arch, a row each. */
export interface ActionTable {
  readonly count: number;
  readonly components: Float64Array;
}
/** Numbers in a row of an action table. */
export const stride = 7;

/** One check of one case, or the governing one of many. */
export interface CheckOutcome {
  readonly check: CheckId;
  readonly caseIndex: number;
  readonly weight: "low" | "high";
  readonly line: BaseLine | null;
  /** Sliding only: the arch's horizontal part left out. */
  readonly withoutArch: boolean;
  readonly demand: number;
  readonly resistance: number;
  readonly ratio: number;
  /** K_d q_h at which the check is just met, Pa; infinite where it is not limited. */
  readonly limit: number;
}

/** Worse of two outcomes by ratio, then by limit. */
export const worseRatio = (a: CheckOutcome, b: CheckOutcome): CheckOutcome =>
  b.ratio > a.ratio || (b.ratio === a.ratio && b.limit < a.limit) ? b : a;
export const lowerLimit = (a: CheckOutcome, b: CheckOutcome): CheckOutcome =>
  b.limit < a.limit || (b.limit === a.limit && b.ratio > a.ratio) ? b : a;
