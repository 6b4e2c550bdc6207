import type { CST } from "yaml";

export type Collection = CST.BlockMap | CST.BlockSequence | CST.FlowCollection;
type Item = CST.CollectionItem;

/** A pair of a map or an item of a list in the source: where it begins and ends, its value. */
export interface SourceEntry {
  readonly start: number;
  readonly end: number;
  /** Where what stands before the value ends: colon, dash, anchor, tag. */
  readonly headEnd: number;
  readonly hasColon: boolean;
  readonly value?: CST.Token;
}

type Extent = readonly [start: number, end: number];

const unsaid = new Set(["space", "newline", "comment", "comma"]);

export const isCollection = (token: CST.Token | undefined): token is Collection =>
  token?.type === "block-map" || token?.type === "block-seq" || token?.type === "flow-collection";

const endOf = ({ offset, source }: CST.SourceToken): number => offset + source.length;

/** Blank lines after a block scalar are no part of it, unless a plus in its header says so. */
function blockScalarExtent({ props, source }: CST.BlockScalar): Extent | undefined {
  const tokens = props as CST.SourceToken[];
  const header = tokens.find(({ type }) => type === "block-scalar-header");
  const last = tokens.at(-1);
  if (!header || !last) return undefined;
  const blank = header.source.includes("+") ? /\r?\n$/ : /(\r?\n[ \t]*)+$/;
  const body = source.replace(blank, "");
  return [header.offset, body ? endOf(last) + body.length : endOf(header)];
}

/** Where a token begins and ends, comments and space around it left out. */
export function extentOf(token: CST.Token | null | undefined): Extent | undefined {
  if (!token || unsaid.has(token.type)) return undefined;
  if (token.type === "block-scalar") return blockScalarExtent(token);
  if (token.type === "flow-collection") {
    const close = token.end[0];
    return [token.offset, close ? endOf(close) : token.offset + 1];
  }
  if (isCollection(token)) {
    const entries = entriesOf(token);
    const [first, last] = [entries[0], entries.at(-1)];
    return first && last ? [first.start, last.end] : undefined;
  }
  if (!("source" in token) || token.source === "") return undefined;
  return [token.offset, token.offset + token.source.length];
}

function entryOf({ start, key, sep = [], value }: Item): SourceEntry | undefined {
  const head = [...start, key, ...sep].flatMap((token) => extentOf(token) ?? []);
  const body = extentOf(value);
  const all = [...head, ...(body ?? [])];
  if (all.length === 0) return undefined;
  return {
    start: Math.min(...all),
    end: Math.max(...all),
    headEnd: Math.max(...head),
    hasColon: sep.some(({ type }) => type === "map-value-ind"),
    ...(body && value ? { value } : {}),
  };
}

/** The entries of a collection in order. */
export const entriesOf = (token: Collection): SourceEntry[] =>
  token.items.flatMap((item) => entryOf(item) ?? []);

/** Where the commas of a flow collection stand. */
export const commasOf = (token: CST.FlowCollection): number[] =>
  token.items.flatMap(({ start }) =>
    start.flatMap((one) => (one.type === "comma" ? [one.offset] : [])),
  );
