import { Size } from "./size.ts";

/** What a house or site file holds, its quantities still as numbers. A key without a value is left out. */
export type Entry =
  | string
  | number
  | boolean
  | Size
  | undefined
  | Entry[]
  | { [key: string]: Entry };
export type Tree = { [key: string]: Entry };

const isTree = (entry: Entry): entry is Tree =>
  typeof entry === "object" && !Array.isArray(entry) && !(entry instanceof Size);

/** The same tree with other sizes. */
export function withSizes(entry: Entry, change: (size: Size) => Size): Entry {
  if (entry instanceof Size) return change(entry);
  if (Array.isArray(entry)) return entry.map((one) => withSizes(one, change));
  if (!isTree(entry)) return entry;
  return Object.fromEntries(
    Object.entries(entry).map(([key, one]) => [key, withSizes(one, change)]),
  );
}

/** The same tree, its keys put in another order by a rule that takes how many there are. */
export function reordered(entry: Entry, order: (count: number) => readonly number[]): Entry {
  if (Array.isArray(entry)) return entry.map((one) => reordered(one, order));
  if (!isTree(entry)) return entry;
  const pairs = Object.entries(entry);
  return Object.fromEntries(
    order(pairs.length).map((at) => {
      const [key, one] = pairs[at] as [string, Entry];
      return [key, reordered(one, order)];
    }),
  );
}

/** As YAML: short parts in braces, others in lines of their own; a comment where one is wanted. */
export function written(tree: Tree, comment: (key: string) => string = () => ""): string {
  const lines = (entry: Tree, indent: string): string[] =>
    Object.entries(entry).flatMap(([key, one]): string[] => {
      if (one === undefined) return [];
      const head = `${indent}${key}:`;
      const flat = flow(one);
      if (indent.length > 2 || flat.length < 70 || (!isTree(one) && !Array.isArray(one)))
        return [`${head} ${flat}${comment(key)}`];
      if (Array.isArray(one)) {
        return [
          head + comment(key),
          ...one.map((item) => `${indent}  - ${flow(item)}${comment(key)}`),
        ];
      }
      return [head + comment(key), ...lines(one as Tree, `${indent}  `)];
    });
  return `${lines(tree, "").join("\n")}\n`;
}

function flow(entry: Entry): string {
  if (entry instanceof Size) return String(entry);
  if (Array.isArray(entry)) return `[${entry.map(flow).join(", ")}]`;
  if (isTree(entry)) {
    const pairs = Object.entries(entry).filter(([, one]) => one !== undefined);
    return `{ ${pairs.map(([key, one]) => `${key}: ${flow(one)}`).join(", ")} }`;
  }
  return typeof entry === "string" && /^\d|^-|[:#{}[\],]/.test(entry)
    ? JSON.stringify(entry)
    : String(entry);
}
