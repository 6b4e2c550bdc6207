import { Refusal } from "@hoopstay/core";
import { type ParsedDocument, parseAnew } from "../parse/parse-document.ts";
import { samePlain } from "./same-plain.ts";
import { sizeOf } from "./value.ts";

/** No text, an empty map, an empty list. */
const isNothing = (whole: unknown): boolean =>
  whole === undefined || whole === null || (typeof whole === "object" && sizeOf(whole) === 0);

/**
 * Whether a text is sound and holds exactly what is expected; one that holds nothing may be empty.
 *
 * @param parse how it is read: one that remembers, where it is read again
 */
export function holds(
  text: string,
  expected: unknown,
  parse: (text: string, file: string) => ParsedDocument = parseAnew,
): boolean {
  try {
    const { value } = parse(text, "text");
    return samePlain(value, expected) || (isNothing(value) && isNothing(expected));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return false;
  }
}
