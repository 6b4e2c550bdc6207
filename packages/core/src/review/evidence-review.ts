import type { Grade } from "../source/citation.ts";
import type { SourceId } from "../source/registry.ts";

/**
 * What a comparison came to. `known` is a printed number held to be wrong or rounded, with its
 * reason: ours lies outside its tolerance and inside its wider allowance. `differs` is a fault.
 */
export type EvidenceVerdict = "agrees" | "known" | "differs";

/** One published value, or a set of them that was worked at once, beside what is computed now. */
export interface EvidenceRow {
  /** Where it stands under `fixtures`. */
  readonly file: string;
  readonly source: SourceId;
  readonly edition: string;
  readonly place: string;
  readonly grade: Grade;
  /** Citation and case. */
  readonly title: string;
  readonly case: string;
  /** What is given, with its units, as in the source. */
  readonly inputs: string;
  readonly quantity: string;
  /** Unit of the printed value; a ratio is `1`. */
  readonly unit: string;
  /** As printed: a number, the code of a refusal, or what a set is of. */
  readonly published: string;
  /** The same computed, in the printed unit; in words where it is a code or a set. */
  readonly ours: number | string;
  /** How many published values stand in this row. */
  readonly values: number;
  /** Difference and what is allowed of it, in the printed unit; of a set, as parts of its size. */
  readonly off: number;
  readonly allowed: number;
  /** Where the allowance comes from. */
  readonly tolerance: string;
  readonly verdict: EvidenceVerdict;
  /** Why a known disagreement stands. */
  readonly reason: string | null;
}

/** The rows of one chapter of the calculation. */
export interface EvidenceChapter {
  readonly id: string;
  readonly title: string;
  readonly rows: readonly EvidenceRow[];
}

/** A formula of the working, and whether a row moves with it. */
export interface FormulaReach {
  readonly id: string;
  readonly name: string;
  readonly source: SourceId;
  readonly place: string;
  readonly grade: Grade;
  /** How many rows evaluate it. */
  readonly rows: number;
  /** The first row whose value changes when the formula's does; null where none does. */
  readonly heldBy: string | null;
  /** Why no row reaches it; null where one does. */
  readonly reason: string | null;
}

/** Values compared, by how it went. */
export interface EvidenceCounts {
  readonly values: number;
  readonly agree: number;
  readonly known: number;
  readonly differ: number;
}

/** Totals of the verification sheet, as every report names them. */
export interface EvidenceTotals extends EvidenceCounts {
  readonly grades: Readonly<Partial<Record<Grade, number>>>;
  readonly formulas: { readonly declared: number; readonly reached: number };
}

/** The verification sheet: every published value beside what the program computes now. */
export interface EvidenceReview {
  readonly totals: EvidenceTotals;
  readonly chapters: readonly (EvidenceChapter & { readonly counts: EvidenceCounts })[];
  readonly formulas: readonly FormulaReach[];
}
