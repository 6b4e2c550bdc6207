import type { SourceId } from "./registry.ts";

/**
 * How a number is known: read in the source itself, read in a second document that quotes it, from
 * memory of the source and still to be confirmed, derived here, or judged here.
 */
export type Grade = "read" | "second-hand" | "memory" | "derived" | "judgement";

export const gradeWords: Record<Grade, string> = {
  read: "read in the source",
  "second-hand": "read in a document that quotes it",
  memory: "from memory of the source, to be confirmed",
  derived: "derived here",
  judgement: "judgement",
};

/** Where a number or formula comes from: source, place in it, and grade. */
export interface Citation {
  readonly source: SourceId;
  readonly place: string;
  readonly grade: Grade;
}

export const cite = (source: SourceId, place: string, grade: Grade): Citation => ({
  source,
  place,
  grade,
});

/** A judgement of this project: what it is and on which side it errs. */
export const judged = (reason: string): Citation => cite("judgement", reason, "judgement");

/** Statics or geometry derived in the design notes. */
export const derived = (place: string): Citation => cite("statics", place, "derived");
