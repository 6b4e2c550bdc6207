import { type EvidenceRow, sources } from "@hoopstay/core";
import { type NumberSet, type RowHead, setRow } from "../row.ts";

/** A file of `fixtures/statics`, worked by other code, and how. */
export interface StaticsFile {
  readonly file: string;
  /** By which method, in words. */
  readonly place: string;
}

/** One quantity of a case of such a file: all its numbers, and what part may be off and why. */
export interface StaticsSet {
  readonly case: string;
  readonly inputs: string;
  readonly quantity: string;
  readonly sets: readonly NumberSet[];
  readonly allowed: number;
  readonly why: string;
}

/** The row of a set; none of it is printed anywhere, so its grade is `derived`. */
export function staticsRow(
  { file, place }: StaticsFile,
  { case: name, inputs, quantity, sets, allowed, why }: StaticsSet,
): EvidenceRow {
  const { title, edition } = sources.statics;
  const head: RowHead = {
    file: `statics/${file}`,
    source: "statics",
    edition,
    place,
    grade: "derived",
    title: `${title}, ${place} [derived]: ${name}`,
    case: name,
    inputs,
    quantity,
    unit: "1",
    tolerance: `${allowed} of the greatest: ${why}`,
  };
  return setRow(head, sets, { allowed });
}
