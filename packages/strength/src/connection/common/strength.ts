import type { Measure } from "@hoopstay/core";

/** The two design methods of AISC 360-22: allowable and design strengths. */
export type ConnectionMethod = "ASD" | "LRFD";

/** One way in which a connection gives way, and what it can take: N, N m or N/m. */
export interface LimitState {
  readonly id: string;
  /** In words: "bearing of the bolt on the hoop's walls". */
  readonly name: string;
  readonly measure: Measure;
  readonly nominal: number;
  /** R_n over Omega. */
  readonly ASD: number;
  /** phi times R_n. */
  readonly LRFD: number;
}

/** Something to know about a connection: an assumption, a broken rule, a thing not checked. */
export interface ConnectionNote {
  readonly id: string;
  readonly words: string;
  /** The value given or assumed, SI, where there is one. */
  readonly value: number | null;
  readonly measure: Measure;
}

/** What a connection can take. The lowest limit state is the strength. */
export interface ConnectionStrength {
  readonly covered: true;
  readonly limitStates: readonly LimitState[];
  readonly ASD: number;
  readonly LRFD: number;
  readonly assumed: readonly ConnectionNote[];
  readonly findings: readonly ConnectionNote[];
  readonly notChecked: readonly ConnectionNote[];
}

/** Outside what the rules cover: no number, and what would give one. */
export interface NotCovered {
  readonly covered: false;
  readonly id: string;
  readonly reason: string;
  readonly mend: string;
}

/**
 * The limit state that decides.
 *
 * @param strength a covered connection; at least one limit state
 */
export function governing(strength: ConnectionStrength, method: ConnectionMethod): LimitState {
  const [first, ...rest] = strength.limitStates;
  if (!first) throw new Error("a connection without a limit state");
  return rest.reduce((low, one) => (one[method] < low[method] ? one : low), first);
}

/** A connection's strength out of its limit states. */
export function strengthOf(
  limitStates: readonly LimitState[],
  notes: Partial<Pick<ConnectionStrength, "assumed" | "findings" | "notChecked">> = {},
): ConnectionStrength {
  return {
    covered: true,
    limitStates,
    ASD: Math.min(...limitStates.map((one) => one.ASD)),
    LRFD: Math.min(...limitStates.map((one) => one.LRFD)),
    assumed: notes.assumed ?? [],
    findings: notes.findings ?? [],
    notChecked: notes.notChecked ?? [],
  };
}

export const note = (
  id: string,
  words: string,
  value: number | null = null,
  measure: Measure = "ratio",
): ConnectionNote => ({ id, words, value, measure });
