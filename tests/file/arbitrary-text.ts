import fc from "fast-check";
import type { Plain } from "./plain.ts";

/** Text that YAML would read as something else, or that ends what it stands in. */
const hostile = [
  ..."yes|no|on|null|~|true|False|1e3|0x1F|0o7|1_000|.inf|-.INF|.nan|-0|12|1.50|2026-11-19".split(
    "|",
  ),
  ...'- a|a: b|a:|: a|a #b|#a|a#b|\'|"|it\'s "so"|{|}|a}|[|]|a, b|,|%x|@x|`|*a|&a|!!str x'.split(
    "|",
  ),
  ..."|>|---|...|? x|?|-|=|<<|\\|\\n|//|/*".split("|"),
  ...["", " ", " x", "x ", "\t", "a\tb", "a\nb", "a\r\nb", "\n", "a\n\n", "|", "| x", "\u0007"],
  ...["\u0000", "\u0085", "\u00a0x", "\u2028", "\u2029x", "\ufeff", "\ud800", "\udc00x", "é", "🐑"],
  ...["__proto__", "constructor", "toString", "length", "a".repeat(1100), "a b ".repeat(60)],
];

export const text = fc.oneof(
  fc.constantFrom(...hostile),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: "binary", maxLength: 6 }),
);

const single = fc.oneof(text, fc.integer(), fc.double({ noNaN: false }), fc.boolean());

/** A key: YAML has no longer ones without a sign of their own. */
export const key = text.filter(({ length }) => length < 1000);

/** Any value a file can hold. */
export const value: fc.Arbitrary<Plain> = fc.letrec<{ value: Plain }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 2, depthSize: "small" },
    single,
    fc.array(tie("value"), { maxLength: 3 }),
    fc.dictionary(text, tie("value"), { maxKeys: 3, noNullPrototype: true }),
  ),
})).value;

export interface Written {
  readonly text: string;
  readonly value: { [key: string]: Plain };
}

type Choose = (below: number) => number;

/** A value in braces and brackets, its text in one of three kinds of quotes. */
function flow(inner: Plain, choose: Choose): string {
  if (typeof inner === "string") return [inner, `'${inner}'`, `"${inner}"`][choose(3)] as string;
  if (typeof inner !== "object") return String(inner);
  const pad = choose(2) ? " " : "";
  if (Array.isArray(inner))
    return `[${pad}${inner.map((one) => flow(one, choose)).join(", ")}${pad}]`;
  const pairs = Object.entries(inner).map(([key, one]) => `${key}: ${flow(one, choose)}`);
  return `{${pad}${pairs.join(", ")}${pad}}`;
}

/** Lines of a value below its key, with comments, blank lines and alignment as owners write them. */
function block(inner: Plain, indent: string, choose: Choose): string[] {
  if (typeof inner !== "object") throw new Error("a single value stands beside its key");
  return Object.entries(inner).flatMap(([key, one]) => {
    const head = Array.isArray(inner) ? `${indent}-` : `${indent}${key}:`;
    const comment = choose(3) === 0 ? `${" ".repeat(1 + choose(4))}# about ${key}` : "";
    const above = [[], [], [""], [`${indent}# before ${key}`]][choose(4)] as string[];
    const nested = typeof one === "object" && Object.keys(one).length > 0 && choose(3) > 0;
    if (!nested)
      return [...above, `${head}${" ".repeat(1 + choose(3))}${flow(one, choose)}${comment}`];
    const [first = "", ...more] = block(one, `${indent}  `, choose);
    const compact =
      Array.isArray(inner) && !first.trim().startsWith("#") && first.trim() && choose(2);
    return compact
      ? [...above, `${head} ${first.slice(indent.length + 2)}`, ...more]
      : [...above, head + comment, first, ...more];
  });
}

const word = fc.integer({ min: 0, max: 99_999 }).map((n) => `word ${n}`);
const plainKey = fc.integer({ min: 0, max: 99 }).map((n) => `key_${n}`);
const tree = fc.letrec<{ tree: Plain }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4, depthSize: "medium" },
    fc.oneof(word, fc.integer(), fc.boolean()),
    fc.array(tie("tree"), { maxLength: 4 }),
    fc.dictionary(plainKey, tie("tree"), { minKeys: 1, maxKeys: 4, noNullPrototype: true }),
  ),
})).tree;

/** A file as an owner might write it, with what it holds. */
export const written: fc.Arbitrary<Written> = fc
  .tuple(
    fc.dictionary(plainKey, tree, { minKeys: 1, maxKeys: 5, noNullPrototype: true }),
    fc.nat(),
    fc.boolean(),
    fc.boolean(),
  )
  .map(([whole, seed, carriage, final]) => {
    let state = seed;
    const choose: Choose = (below) => {
      state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
      return (state >>> 16) % below;
    };
    const lines = block(whole, "", choose).join(carriage ? "\r\n" : "\n");
    return { text: lines + (final ? (carriage ? "\r\n" : "\n") : ""), value: whole };
  });
