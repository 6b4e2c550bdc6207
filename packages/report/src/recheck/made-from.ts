import type { Review, System } from "@hoopstay/core";

/** What a report was asked for: the checks alone, with what holds the house, or with the load path. */
type Asked = "check" | "hold" | "first";

/** What it takes to make a report again: both files word for word, and what was asked of them. */
export interface MadeFrom {
  readonly program: "hoopstay";
  readonly version: string;
  readonly asked: Asked;
  readonly units: System;
  /** Name of the load case worked in full besides; null where none was asked for. */
  readonly case: string | null;
  readonly files: Review["files"];
}

const id = "made-from";
const opening = `<script type="application/json" id="${id}">`;
const closing = "</script>";

/**
 * Data that a browser neither shows nor runs. No sign of the files can end the element early: `<` and
 * `>` are written as their codes, and so is what could reverse the direction of a line in an editor.
 */
export function madeFromMarkup(review: Review, units: System, of: string | null): string {
  const asked: Asked = review.hold ? "hold" : review.chain ? "first" : "check";
  const { version, files } = review;
  const from: MadeFrom = { program: "hoopstay", version, asked, units, case: of, files };
  const coded = JSON.stringify(from).replace(
    /[<>\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufffe\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
  return `${opening}${coded}${closing}`;
}

/** What a report says it was made from; undefined where the text carries nothing of the kind. */
export function madeFrom(html: string): MadeFrom | undefined {
  const start = html.lastIndexOf(opening);
  const end = html.indexOf(closing, start);
  if (start < 0 || end < 0) return undefined;
  try {
    const from: unknown = JSON.parse(html.slice(start + opening.length, end));
    return isMadeFrom(from) ? from : undefined;
  } catch {
    return undefined;
  }
}

function isMadeFrom(value: unknown): value is MadeFrom {
  const isText = (one: unknown): boolean => typeof one === "string";
  const from = value as MadeFrom | null;
  return (
    from?.program === "hoopstay" &&
    isText(from.version) &&
    ["check", "hold", "first"].includes(from.asked) &&
    ["us", "si"].includes(from.units) &&
    (from.case === null || isText(from.case)) &&
    isText(from.files?.house) &&
    isText(from.files?.site)
  );
}
