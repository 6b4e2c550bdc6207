import type { EvidenceRow } from "@hoopstay/core";
import { failedRow, numberRow, type RowHead, refusalRow } from "../row.ts";
import { type Compute, Given, givenWords } from "./given.ts";
import type { PublishedCase, PublishedFile } from "./published-case.ts";
import { worthOf } from "./units.ts";

/** One row that waits to be computed; the same each time. */
export type Work = () => EvidenceRow;

/** The rows of a published file, each a computation of its own. */
export const publishedRows = (file: PublishedFile, compute: Compute): readonly Work[] =>
  file.cases.flatMap((one) => caseRows(file, one, compute));

function caseRows(file: PublishedFile, one: PublishedCase, compute: Compute): Work[] {
  const given = new Given(file, one);
  const headOf = (quantity: string, unit: string, tolerance: string): RowHead => ({
    file: `published/${file.file}`,
    source: file.source,
    edition: file.edition,
    place: one.place,
    grade: one.grade,
    title: one.title,
    case: one.name,
    inputs: givenWords(file, one),
    quantity,
    unit,
    tolerance,
  });
  const values = one.values.map((value): Work => {
    const head = headOf(value.quantity, value.unit, value.tolerance);
    return () => {
      try {
        const computed = compute(given, value.quantity) ?? Number.NaN;
        return numberRow(head, computed / worthOf(value.unit), value);
      } catch (error) {
        return failedRow(head, value.printed, String(error));
      }
    };
  });
  const { refused } = one;
  if (refused === undefined) return values;
  const head = headOf(file.quantity, "1", "none: a code");
  return [...values, () => refusalRow(head, refused, () => compute(given, ""))];
}
