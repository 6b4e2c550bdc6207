import {
  type Document,
  isCollection,
  isMap,
  isScalar,
  type Node,
  type Pair,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { Path } from "./value.ts";

/** Where a path leads in the source: as far as it can be followed there. */
export interface Place {
  /** The path up to here; shorter than the one asked for where an alias or nothing stands. */
  readonly path: Path;
  /** The maps and lists around it, from the whole file inward. */
  readonly within: readonly (YAMLMap | YAMLSeq)[];
  /** Which entry of the innermost it is; their number, where it is a new one. */
  readonly at: number;
  /** What stands there. */
  readonly node?: Node;
}

/** A key as the plain value has it. */
const keyOf = ({ key }: Pair): string =>
  isScalar(key) && key.value !== null ? String(key.value) : "";

function entryIndex(node: YAMLMap | YAMLSeq, key: string | number): number {
  if (!isMap(node)) return Number(key);
  const at = node.items.findIndex((pair) => keyOf(pair) === String(key));
  return at < 0 ? node.items.length : at;
}

export function placeOf(document: Document.Parsed, path: Path): Place {
  const within: (YAMLMap | YAMLSeq)[] = [];
  let at = 0;
  let node: unknown = document.contents;
  for (const [depth, key] of path.entries()) {
    if (!isCollection(node)) return made(path.slice(0, depth), within, at, node);
    const collection = node as YAMLMap | YAMLSeq;
    at = entryIndex(collection, key);
    within.push(collection);
    if (at >= collection.items.length) return made(path.slice(0, depth + 1), within, at);
    node = isMap(collection) ? collection.items[at]?.value : collection.items[at];
  }
  return made(path, within, at, node);
}

const made = (path: Path, within: Place["within"], at: number, node?: unknown): Place => ({
  path,
  within,
  at,
  ...(node ? { node: node as Node } : {}),
});
