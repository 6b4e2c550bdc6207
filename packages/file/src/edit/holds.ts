import { Refusal } from "@hoopstay/core";
import { parseText } from "../parse/parse-document.ts";
import { samePlain } from "./same-plain.ts";
import { sizeOf } from "./value.ts";

/** No text, an empty map, an empty list. */
const isNothing = (whole: unknown): boolean =>
  whole === undefined || whole === null || (typeof whole === "object" && sizeOf(whole) === 0);

/** Whether a text is sound and holds exactly what is expected; one that holds nothing may be empty. */
export function holds(text: string, expected: unknown): boolean {
  try {
    const { value } = parseText(text, "text");
    return samePlain(value, expected) || (isNothing(value) && isNothing(expected));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return false;
  }
}
