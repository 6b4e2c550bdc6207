import { closeSync, openSync, readSync } from "node:fs";
import { type Complaint, Refusal } from "@hoopstay/core";
import { mostBytes, notText, tooLarge } from "@hoopstay/file";

/** The bytes of a file or pipe, as many as tell that it is too large: a device may have no end. */
function readBounded(file: string, most: number): Buffer {
  const descriptor = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(most + 1);
    let size = 0;
    for (let got = -1; got !== 0 && size < bytes.length; size += got) {
      got = readSync(descriptor, bytes, size, bytes.length - size, null);
    }
    return bytes.subarray(0, size);
  } finally {
    closeSync(descriptor);
  }
}

interface Refused {
  readonly tooLarge: Complaint;
  readonly notText: Complaint;
}

function bytesOf(file: string, most: number): Buffer {
  try {
    return readBounded(file, most);
  } catch (error) {
    throw new Refusal([
      {
        code: "file-unreadable",
        file,
        given: (error as NodeJS.ErrnoException).code ?? String(error),
        expected: "a file that can be read",
        mend: "Check the path and its permissions.",
      },
    ]);
  }
}

/** The text of a house or site file, or a refusal that says why it cannot be read. */
export const readText = (file: string): string =>
  textWithin(file, mostBytes, { tooLarge: tooLarge(file), notText: notText(file) });

/** The text of a file of at most so many bytes; beyond that, or if it is none, it is refused as given. */
export function textWithin(file: string, most: number, refused: Refused): string {
  const bytes = bytesOf(file, most);
  if (bytes.length > most) throw new Refusal([refused.tooLarge]);
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // Falls through to the refusal below: bytes that are no UTF-8.
  }
  throw new Refusal([refused.notText]);
}
