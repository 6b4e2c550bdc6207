import { closeSync, openSync, readSync } from "node:fs";
import { Refusal } from "@hoopstay/core";
import { mostBytes, notText, tooLarge } from "@hoopstay/file";

/** The bytes of a file or pipe, as many as tell that it is too large: a device may have no end. */
function readBounded(file: string): Buffer {
  const descriptor = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(mostBytes + 1);
    let size = 0;
    for (let got = -1; got !== 0 && size < bytes.length; size += got) {
      got = readSync(descriptor, bytes, size, bytes.length - size, null);
    }
    return bytes.subarray(0, size);
  } finally {
    closeSync(descriptor);
  }
}

function bytesOf(file: string): Buffer {
  try {
    return readBounded(file);
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

/** The text of a file, or a refusal that says why it cannot be read. */
export function readText(file: string): string {
  const bytes = bytesOf(file);
  if (bytes.length > mostBytes) throw new Refusal([tooLarge(file)]);
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch {
    // Falls through to the refusal below: bytes that are no UTF-8.
  }
  throw new Refusal([notText(file)]);
}
