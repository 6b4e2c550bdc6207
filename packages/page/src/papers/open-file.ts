import type { Complaint } from "@hoopstay/core";
import type { FileName } from "../engine/messages.ts";
import { open, whatIsWrong } from "../work/steps.ts";
import { names, notice, texts } from "../work/work.ts";

/** A house or site file is a few kilobytes; this is far above any sensible one. */
const largest = 1_000_000;

const refused = (
  file: string,
  code: Complaint["code"],
  given: string,
  expected: string,
  mend: string,
): Complaint => ({ code, file, given, expected, mend });

/** The text of a file, or why it is none. */
async function textOf(file: File): Promise<string | Complaint> {
  if (file.size > largest) {
    return refused(
      file.name,
      "file-too-large",
      "more than 1 MB",
      "a file below 1 MB",
      "Is this the right file?",
    );
  }
  try {
    const bytes = await file.arrayBuffer();
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // Falls through to the refusal below: bytes that are no UTF-8, or that cannot be had.
  }
  return refused(
    file.name,
    "file-not-text",
    "bytes that are no UTF-8 text",
    "a YAML or JSON text file",
    "Save it as plain text (UTF-8), not as a spreadsheet or document.",
  );
}

/**
 * Opens a house or site file beside the other one; the work stays as it is where the file cannot be
 * read.
 *
 * @returns what is wrong with the file's form; nothing where it is open now
 */
export async function openFile(file: File, as: FileName): Promise<readonly Complaint[]> {
  const text = await textOf(file);
  if (typeof text !== "string") return [text];
  const wrong = await whatIsWrong(as, text);
  if (wrong.length > 0) return wrong.map((one) => ({ ...one, file: file.name }));
  const now = texts.value ?? { house: "", site: "" };
  open({ ...now, [as]: text }, { ...names.value, [as]: file.name });
  notice.value = `${file.name} is open.`;
  return [];
}
