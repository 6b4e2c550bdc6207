import { type CST, isMap, isScalar, type Node } from "yaml";
import { isLastOnLine, lineEnd } from "./lines.ts";
import type { Place } from "./place.ts";
import { extentOf, type SourceEntry } from "./source-entry.ts";
import { deletion, insertion, type Splice } from "./splice.ts";
import type { Style } from "./style.ts";
import type { Value } from "./value.ts";
import { type Quote, valueText } from "./write-value.ts";

/** The quotes of a text that does not need them: the owner's choice, and kept. */
function chosenQuote(node: Node | undefined, style: Style): Quote | undefined {
  if (!isScalar(node) || typeof node.value !== "string") return undefined;
  if (valueText(node.value, style) !== node.value) return undefined;
  if (node.type === "QUOTE_DOUBLE") return "double";
  return node.type === "QUOTE_SINGLE" ? "single" : undefined;
}

/** The value of an entry replaced; comments beside it stay. */
export function replaceEntry(
  text: string,
  entry: SourceEntry,
  { node, within }: Place,
  value: Value,
  style: Style,
): Splice[] {
  const ofMap = isMap(within.at(-1));
  const written = valueText(value, style, chosenQuote(node, style));
  const { headEnd, hasColon, value: token } = entry;
  const extent = extentOf(token);
  if (!token || !extent) {
    return [insertion(headEnd, ofMap && !hasColon ? `: ${written}` : ` ${written}`)];
  }
  const [start, end] = extent;
  const ofBlock = token.type === "block-map" || token.type === "block-seq";
  // A block below its key: the value goes beside the key, the lines of the block go.
  if (ofBlock && isLastOnLine(text, headEnd)) {
    return [
      insertion(headEnd, ` ${written}`),
      deletion(lineEnd(text, headEnd), lineEnd(text, end)),
    ];
  }
  if (token.type !== "block-scalar") return [{ from: start, to: end, text: written }];
  // A comment may follow the sign that opens a block of text.
  const [header] = token.props as CST.SourceToken[];
  const headerEnd = start + (header?.source.length ?? 0);
  return [
    { from: start, to: headerEnd, text: written },
    deletion(lineEnd(text, start), Math.max(lineEnd(text, start), end)),
  ];
}
