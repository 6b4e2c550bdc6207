import type { Complaint } from "@hoopstay/core";

/** Most bytes of a house or site file. One is a few kilobytes; this is far above any sensible one. */
export const mostBytes = 1_000_000;

export const tooLarge = (file: string): Complaint => ({
  code: "file-too-large",
  file,
  given: "more than 1 MB",
  expected: "a file below 1 MB",
  mend: "Is this the right file?",
});

export const notText = (file: string): Complaint => ({
  code: "file-not-text",
  file,
  given: "bytes that are no UTF-8 text",
  expected: "a YAML or JSON text file",
  mend: "Save it as plain text (UTF-8), not as a spreadsheet or document.",
});
