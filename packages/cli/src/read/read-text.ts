import { closeSync, openSync, readSync } from "node:fs";
import { Refusal } from "@hoopstay/core";

/** A house or site file is a few kilobytes; this is far above any sensible one. */
const largest = 1_000_000;

const refuse = (
  code: "file-unreadable" | "file-too-large" | "file-not-text",
  file: string,
  given: string,
  expected: string,
  mend: string,
): never => {
  throw new Refusal([{ code, file, given, expected, mend }]);
};

/** The bytes of a file or pipe, as many as tell that it is too large: a device may have no end. */
function readBounded(file: string): Buffer {
  const descriptor = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(largest + 1);
    let size = 0;
    for (let got = -1; got !== 0 && size < bytes.length; size += got) {
      got = readSync(descriptor, bytes, size, bytes.length - size, null);
    }
    return bytes.subarray(0, size);
  } finally {
    closeSync(descriptor);
  }
}

/** The text of a file, or a refusal that says why it cannot be read. */
export function readText(file: string): string {
  let bytes: Buffer;
  try {
    bytes = readBounded(file);
  } catch (error) {
    const given = (error as NodeJS.ErrnoException).code ?? String(error);
    return refuse(
      "file-unreadable",
      file,
      given,
      "a file that can be read",
      "Check the path and its permissions.",
    );
  }
  if (bytes.length > largest) {
    refuse(
      "file-too-large",
      file,
      "more than 1 MB",
      "a file below 1 MB",
      "Is this the right file?",
    );
  }
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // Falls through to the refusal below: bytes that are no UTF-8.
  }
  return refuse(
    "file-not-text",
    file,
    "bytes that are no UTF-8 text",
    "a YAML or JSON text file",
    "Save it as plain text (UTF-8), not as a spreadsheet or document.",
  );
}
