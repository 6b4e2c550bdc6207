import { type Document, isMap, isScalar, isSeq, parseDocument, visit } from "yaml";

/** Exact metric sizes of the units the example files use; weights in kilograms. */
const metric: Readonly<Record<string, readonly [number, string]>> = {
  in: [25.4, "mm"],
  ft: [0.3048, "m"],
  mil: [0.0254, "mm"],
  lb: [0.45359237, "kg"],
  "lb/ft2": [0.45359237 / 0.3048 ** 2, "kg/m2"],
  mph: [0.44704, "m/s"],
};

const feetAndInches = /^(-?)(\d+) ft (\d+) in$/;
const single = /^(-?)([\d.]+)(?:\/(\d+))? (in|ft|mil|lb|lb\/ft2|mph)$/;

/** One size typed in metric units, to sixteen digits; other texts as they are. */
function inMetric(text: string): string {
  const both = feetAndInches.exec(text);
  if (both) return `${both[1]}${(Number(both[2]) * 12 + Number(both[3])) * 0.0254} m`;
  const one = single.exec(text);
  if (!one) return text;
  const [factor, unit] = metric[one[4] as string] as readonly [number, string];
  return `${one[1]}${(Number(one[2]) / Number(one[3] ?? 1)) * factor} ${unit}`;
}

function changed(text: string, change: (document: Document) => void): string {
  const document = parseDocument(text);
  change(document);
  return document.toString();
}

/** A house or site file with every size typed in metric units. */
export const typedInMetric = (text: string): string =>
  changed(text, (document) => {
    visit(document, {
      Scalar: (key, node) => {
        if (key !== "key" && typeof node.value === "string") node.value = inMetric(node.value);
      },
    });
  });

/** A file with the keys of every block in the reverse order; lists stay as they are. */
export const reordered = (text: string): string =>
  changed(text, (document) => {
    visit(document, {
      Map: (_, map) => {
        map.items.reverse();
      },
    });
  });

/** Every key of a file in its order, to see that an order is another one. */
export function keysOf(text: string): string[] {
  const keys: string[] = [];
  visit(parseDocument(text), {
    Pair: (_, pair) => {
      if (isScalar(pair.key) && !isMap(pair.value) && !isSeq(pair.value))
        keys.push(String(pair.key));
    },
  });
  return keys;
}

/** Every number of a result with its path, and every text in place of one that differs in kind. */
export function leaves(value: unknown, path = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, part]) => leaves(part, `${path}/${key}`));
}
