import type { CheckSummary } from "./review.ts";

/** What one state stands when the wind comes from one side: the lowest limit of every check. */
export interface FromSide {
  /** Owner's words, with the compass where it is known: from the left (north-east). */
  readonly from: string;
  readonly checks: readonly (Pick<CheckSummary, "check" | "words" | "workingGust"> & {
    readonly ratio: number;
    /** Case of the lowest limit, by its name in the table of load cases. */
    readonly id: string;
  })[];
}
