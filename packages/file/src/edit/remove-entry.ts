import type { CST } from "yaml";
import { isFirstOnLine, isLastOnLine, lineEnd, lineStart, newlineOf } from "./lines.ts";
import {
  type Collection,
  commasOf,
  entriesOf,
  extentOf,
  type SourceEntry,
} from "./source-entry.ts";
import { deletion, type Splice } from "./splice.ts";

/** The lines of an entry, with the newline after them or, at the end of a text, before them. */
function wholeLines(text: string, { start, end }: SourceEntry): Splice {
  const newline = newlineOf(text).length;
  const [from, to] = [lineStart(text, start), lineEnd(text, end)];
  if (to < text.length) return deletion(from, to + (text[to] === "\r" ? 2 : 1));
  return deletion(Math.max(0, from - newline), to);
}

function removeFromBlock(text: string, entries: readonly SourceEntry[], at: number): Splice[] {
  const entry = entries[at];
  const next = entries[at + 1];
  if (!entry) return [];
  if (isFirstOnLine(text, entry.start)) return [wholeLines(text, entry)];
  // Beside the dash of a list: the next key moves up, unless comments stand between.
  const end = lineEnd(text, entry.end);
  const moves = next && !text.slice(end, next.start).trim();
  return [deletion(entry.start, moves ? next.start : end)];
}

function removeFromFlow(
  text: string,
  token: CST.FlowCollection,
  entries: readonly SourceEntry[],
  at: number,
): Splice[] {
  const [previous, entry, next] = [entries[at - 1], entries[at], entries[at + 1]];
  if (!entry) return [];
  const [open, close] = extentOf(token) ?? [0, 0];
  if (!previous && !next) return [deletion(open + 1, close - 1)];
  const commas = commasOf(token);
  const commaBefore = previous && commas.find((one) => one >= previous.end);
  // JSON has no comma after its last entry.
  const closing = next || commas.some((one) => one >= entry.end) ? undefined : commaBefore;
  const withComma = closing === undefined ? [] : [deletion(closing, closing + 1)];
  if (isFirstOnLine(text, entry.start) && isLastOnLine(text, entry.end)) {
    return [...withComma, wholeLines(text, entry)];
  }
  if (next) return [deletion(entry.start, next.start)];
  const from = previous?.end ?? entry.start;
  return text.slice(from, entry.start).includes("#")
    ? [...withComma, deletion(entry.start, entry.end)]
    : [deletion(from, entry.end)];
}

/** An entry taken out with its line and the comment on it. */
export function removeEntry(text: string, token: Collection, at: number): Splice[] {
  const entries = entriesOf(token);
  return token.type === "flow-collection"
    ? removeFromFlow(text, token, entries, at)
    : removeFromBlock(text, entries, at);
}
