import { type Document, isMap, isNode, type LineCounter, type Pair, type YAMLMap } from "yaml";

/** Pairs of a map by key; looked up once, since a garbled file may have very many. */
const pairsOf = new WeakMap<YAMLMap, Map<string, Pair>>();

function pairOf(map: YAMLMap, key: PropertyKey): Pair | undefined {
  let pairs = pairsOf.get(map);
  if (!pairs) {
    pairs = new Map(map.items.map((item) => [String(item.key), item]));
    pairsOf.set(map, pairs);
  }
  return pairs.get(String(key));
}

/** Line of the deepest key of a path that exists in the file. */
export function lineOf(
  document: Document.Parsed,
  lines: LineCounter,
  path: readonly PropertyKey[],
): number {
  let offset = 0;
  let node: unknown = document.contents;
  for (const key of path) {
    if (isMap(node)) {
      const pair = pairOf(node, key);
      if (!pair) break;
      if (isNode(pair.key) && pair.key.range) offset = pair.key.range[0];
      node = pair.value;
    } else {
      node = (node as { get?(key: unknown, keep: boolean): unknown } | null)?.get?.(key, true);
      if (!isNode(node) || !node.range) break;
      offset = node.range[0];
    }
  }
  return Math.max(1, lines.linePos(offset).line);
}
