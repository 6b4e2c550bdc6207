import { type Complaint, type InputRow, showMeasured } from "@hoopstay/core";
import { type Path, valueAt as plainAt } from "@hoopstay/file/value";
import { fileNames } from "../engine/file-names.ts";
import type { FileName } from "../engine/messages.ts";
import { answer, complaints, reading, system } from "../session/state.ts";

export const keyOf = (path: Path): string => path.join(".");

/** What stands in a file at a path; undefined where nothing does. */
export const valueAt = (file: FileName, path: Path): unknown =>
  plainAt(reading.value?.values[file], path);

/** Complaints about exactly this key. */
export const complaintsAt = (file: FileName, key: string): readonly Complaint[] =>
  complaints.value.filter((one) => one.file === fileNames[file] && one.key === key);

/** Complaints about this key and what is below it. */
export const complaintsUnder = (file: FileName, key: string): readonly Complaint[] =>
  complaints.value.filter(
    (one) =>
      one.file === fileNames[file] && (one.key === key || one.key?.startsWith(`${key}.`) === true),
  );

/** What was taken where nothing was told, with the reason; the last answer knows it. */
export function assumedAt(file: FileName, key: string): { used: string; why: string } | null {
  const row = answer.value?.review.inputs.find(
    (one: InputRow) => one.assumed && one.file === file && one.key === key,
  );
  if (!row) return null;
  const { used, why } = row;
  return { used: typeof used === "string" ? used : showMeasured(used, system.value), why };
}

/** A length, count or another number of a file in SI, as the last answer used it. */
export function usedAt(file: FileName, key: string): number | null {
  const row = answer.value?.review.inputs.find((one) => one.file === file && one.key === key);
  if (!row) return null;
  const value = typeof row.used === "string" ? Number(row.used) : row.used.value;
  return Number.isFinite(value) ? value : null;
}
