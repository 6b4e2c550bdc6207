import { type Complaint, quotable } from "@hoopstay/core";
import type { PathComplaint } from "@hoopstay/house";
import type { ParsedDocument } from "../parse/parse-document.ts";

/** Turns the complaints of one file into complaints with file, line and key, numbers as typed. */
export const placed = (
  complaints: readonly PathComplaint[],
  file: string,
  document: ParsedDocument,
): Complaint[] =>
  complaints.map(({ path, ...complaint }) => {
    const number = document.typedNumber(path);
    const quoted = number !== undefined && complaint.given === String(number.value);
    return {
      ...complaint,
      ...(quoted ? { given: quotable(number.typed) } : {}),
      file,
      line: document.lineOf(path),
      key: path.map(String).join(".") || "(whole file)",
    };
  });

/** What was typed on the command line has no file and no line. */
export const placedOrTyped = (
  complaints: readonly PathComplaint[],
  file: string,
  document: ParsedDocument,
): Complaint[] =>
  complaints.flatMap((one) => {
    const { path, ...complaint } = one;
    const typed = String(path[0]).startsWith("--");
    return typed
      ? [{ ...complaint, key: path.map(String).join(" ") }]
      : placed([one], file, document);
  });
