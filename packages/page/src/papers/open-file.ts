import type { Complaint } from "@hoopstay/core";
import { mostBytes, notText, tooLarge } from "@hoopstay/file/no-text";
import type { FileName } from "../engine/messages.ts";
import { names, notice, texts } from "../session/state.ts";
import { open, whatIsWrong } from "../session/steps.ts";

/** The text of a file, or why it is none. */
async function textOf(file: File): Promise<string | Complaint> {
  if (file.size > mostBytes) return tooLarge(file.name);
  try {
    const bytes = await file.arrayBuffer();
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // Falls through to the refusal below: bytes that are no UTF-8, or that cannot be had.
  }
  return notText(file.name);
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
