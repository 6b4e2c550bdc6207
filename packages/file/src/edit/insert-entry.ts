import { type CST, isMap } from "yaml";
import { before, isFirstOnLine, isLastOnLine, lineEnd, newlineOf } from "./lines.ts";
import type { Place } from "./place.ts";
import { type Collection, commasOf, entriesOf } from "./source-entry.ts";
import { insertion, type Splice } from "./splice.ts";
import { styleWithin } from "./style.ts";
import { isMapValue, type Value } from "./value.ts";
import { keyText, valueText } from "./write-value.ts";

/** A new last entry in braces or brackets: beside the last one, or below it as that stands. */
function insertInFlow(text: string, token: CST.FlowCollection, written: string): Splice[] {
  const last = entriesOf(token).at(-1);
  if (!last) {
    const open = token.offset + 1;
    const isBare = text[open] === "}";
    const spaced = token.start.type === "flow-map-start" ? ` ${written}` : written;
    return [insertion(open, isBare ? `${spaced} ` : spaced)];
  }
  const comma = commasOf(token).find((at) => at >= last.end);
  const below = isFirstOnLine(text, last.start);
  const space = below ? newlineOf(text) + before(text, last.start) : " ";
  const at = below && isLastOnLine(text, last.end) ? lineEnd(text, last.end) : undefined;
  return comma === undefined
    ? at === undefined
      ? [insertion(last.end, `,${space}${written}`)]
      : [insertion(last.end, ","), insertion(at, space + written)]
    : [insertion(at ?? comma + 1, `${space}${written},`)];
}

/** A new last line in a block, before the comments and blank lines that follow it. */
function insertInBlock(
  text: string,
  token: CST.BlockMap | CST.BlockSequence,
  written: string,
): Splice[] {
  const entries = entriesOf(token);
  const [first, last] = [entries[0], entries.at(-1)];
  if (!first || !last) return [];
  const indent = " ".repeat(before(text, first.start).length);
  return [insertion(lineEnd(text, last.end), newlineOf(text) + indent + written)];
}

/** A key with its value, or an item, after the last one of the innermost map or list. */
export function insertEntry(text: string, place: Place, token: Collection, value: Value): Splice[] {
  const style = styleWithin(place.within);
  const inner = valueText(value, style);
  const written = isMap(place.within.at(-1))
    ? `${keyText(String(place.path.at(-1)), style)}: ${inner}`
    : inner;
  if (token.type === "flow-collection") return insertInFlow(text, token, written);
  return insertInBlock(text, token, token.type === "block-seq" ? `- ${written}` : written);
}

/** The first entries of a text that holds none, after its comments. */
export function insertFirst(text: string, whole: Value): Splice[] {
  const style = { flow: false, json: false };
  const lines = isMapValue(whole)
    ? Object.entries(whole as Readonly<Record<string, Value>>).map(
        ([key, value]) => `${keyText(key, style)}: ${valueText(value, style)}`,
      )
    : (whole as readonly Value[]).map((value) => `- ${valueText(value, style)}`);
  const newline = newlineOf(text);
  const open = text === "" || text.endsWith("\n") ? "" : newline;
  return [insertion(text.length, open + lines.map((line) => line + newline).join(""))];
}
