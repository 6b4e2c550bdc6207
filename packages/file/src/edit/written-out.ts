import { type Document, isNode, type Node, visit } from "yaml";
import type { Place } from "./place.ts";
import type { Splice } from "./splice.ts";
import { styleWithin } from "./style.ts";
import type { Value } from "./value.ts";
import { valueText } from "./write-value.ts";

/** Nodes that change with a place: those around it, and all that stands there. */
function changedNodes({ within, node }: Place): Set<Node> {
  const changed = new Set<Node>(within);
  if (node) {
    visit(node, {
      Node: (_, inner) => {
        changed.add(inner);
      },
    });
  }
  return changed;
}

/** Aliases elsewhere of what changes at a place, written out so that they keep their value. */
export function writtenOut(document: Document.Parsed, place: Place): Splice[] {
  const changed = changedNodes(place);
  const splices: Splice[] = [];
  visit(document, {
    Alias: (_, alias, path) => {
      const source = alias.resolve(document);
      if (!source || !changed.has(source) || changed.has(alias)) return;
      const [from, to] = alias.range ?? [0, 0];
      const text = valueText(alias.toJS(document) as Value, styleWithin(path.filter(isNode)));
      splices.push({ from, to, text });
    },
  });
  return splices;
}
