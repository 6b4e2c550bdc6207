import { readFileSync } from "node:fs";
import { join } from "node:path";
import { writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";

/** The offline page, as it lies beside the program. */
export const pageText = (): string => readFileSync(join(__dirname, "page.html"), "utf8");

/** Writes the offline page to a file, whole or not at all. */
export function page(to: string): Outcome {
  writeWhole(to, pageText());
  return {
    text: `The page: ${to}\nOpen it in a browser, here or on a phone: it needs no network and sends nothing.\n`,
    code: 0,
  };
}
