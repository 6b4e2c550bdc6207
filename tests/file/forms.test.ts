import { type Path, type Value, without, withValue } from "@hoopstay/file";
import { describe, expect, test } from "vitest";

type Row = readonly [
  name: string,
  text: string,
  path: Path,
  value: Value | undefined,
  made: string,
];

const rows: readonly Row[] = [
  ["a new file", "", ["house"], "x", "house: x\n"],
  ["a new list", "", [0], "x", "- x\n"],
  ["a file of comments only", "# mine", ["a", "b", 0], 1, "# mine\na: { b: [1] }\n"],
  ["the last key of a file", "# mine\na: 1 # one\n", ["a"], undefined, "# mine\n"],
  ["no final newline", "a: 1", ["b"], 2, "a: 1\nb: 2"],
  ["no final newline, last key out", "a: 1\nb: 2", ["b"], undefined, "a: 1"],
  [
    "lines of the other kind",
    "a: 1 # c\r\n\r\n# d\r\n",
    ["b"],
    "x: y",
    'a: 1 # c\r\nb: "x: y"\r\n\r\n# d\r\n',
  ],
  ["a byte order mark", "\ufeffa: 1\n", ["b"], 2, "\ufeffa: 1\nb: 2\n"],
  ["a start of the document", "---\na: 1\n", ["a"], 2, "---\na: 2\n"],
  ["a key without value", "a:   # c\nb:\n", ["a"], "x", "a: x   # c\nb:\n"],
  ["a key within a key without value", "a:\nb:\n", ["b", "c"], "x", "a:\nb: { c: x }\n"],
  ["an item without value", "-\n- 2\n", [0], 1, "- 1\n- 2\n"],
  ["a bare key in braces", "a: {b, c:}\n", ["a", "b"], 1, "a: {b: 1, c:}\n"],
  ["a key in braces without value", "a: {b, c:}\n", ["a", "c"], 1, "a: {b, c: 1}\n"],
  ["empty braces", "a: {}\nb: []\n", ["a", "c"], 1, "a: { c: 1 }\nb: []\n"],
  ["empty brackets", "a: {}\nb: []\n", ["b", 0], 1, "a: {}\nb: [1]\n"],
  ["a comma at the end", "a: [1, 2,]\n", ["a", 2], 3, "a: [1, 2, 3,]\n"],
  ["a comma at the end, the last out", "a: [1, 2,]\n", ["a", 1], undefined, "a: [1,]\n"],
  ["the first of a list in brackets", "a: [1, 2]\n", ["a", 0], undefined, "a: [2]\n"],
  ["the first key beside a dash", "- a: 1 # c\n  b: 2\n", [0, "a"], undefined, "- b: 2\n"],
  [
    "lines in braces",
    "a: {\n  b: 1, # one\n  c: 2  # two\n}\n",
    ["a", "d"],
    3,
    "a: {\n  b: 1, # one\n  c: 2,  # two\n  d: 3\n}\n",
  ],
  [
    "lines in braces, the last out",
    "a: {\n  b: 1, # one\n  c: 2  # two\n}\n",
    ["a", "c"],
    undefined,
    "a: {\n  b: 1 # one\n}\n",
  ],
  [
    "a block becomes a word",
    "a: # c\n  # d\n  b: 1\n  e: 2 # f\ng: 3\n",
    ["a"],
    "x",
    "a: x # c\ng: 3\n",
  ],
  ["a word becomes a map", "a: x # c\n", ["a"], { b: [1, "y"] }, "a: { b: [1, y] } # c\n"],
  ["lines of text", "a: |  # c\n  x\n  y\n\nb: 1\n", ["a"], "z", "a: z  # c\n\nb: 1\n"],
  [
    "lines of text that keep their end",
    "a: |+\n  x\n\n\n# c\n",
    ["b"],
    "z",
    "a: |+\n  x\n\n\nb: z\n# c\n",
  ],
  ["a text over two lines", "a: x\n  y # c\nb: 1\n", ["a"], "z", "a: z # c\nb: 1\n"],
  ["a quoted text over two lines", 'a: "x\n  y" # c\nb: 1\n', ["b"], 2, 'a: "x\n  y" # c\nb: 2\n'],
  ["quotes that were chosen stay", "a: 'x'\nb: \"4A\"\n", ["a"], "it's", "a: 'it''s'\nb: \"4A\"\n"],
  ["quotes that were needed go", 'a: "true"\n', ["a"], "x", "a: x\n"],
  ["an alias", "a: &x {b: 1}\nc: *x\nd: *x\n", ["c", "b"], 2, "a: &x {b: 1}\nc: { b: 2 }\nd: *x\n"],
  [
    "what aliases repeat",
    "a: &x\n  b: 1\nc: [*x]\nd: 1\n",
    ["a", "b"],
    2,
    "a: &x\n  b: 2\nc: [{ b: 1 }]\nd: 1\n",
  ],
  ["what aliases repeat, out", "a: &x 5\nb: *x\n", ["a"], undefined, "b: 5\n"],
  ["an alias of another place", "a: &x 5\nb: *x\nc: 1\n", ["c"], 2, "a: &x 5\nb: *x\nc: 2\n"],
  [
    "a key in place of a merged one",
    "%YAML 1.1\n---\na: &x {b: 1}\nc:\n  <<: *x\n",
    ["c", "b"],
    2,
    "%YAML 1.1\n---\na: &x {b: 1}\nc:\n  <<: *x\n  b: 2\n",
  ],
  ["yes in the older YAML", "%YAML 1.1\n---\na: 1\n", ["a"], "yes", '%YAML 1.1\n---\na: "yes"\n'],
  ["JSON", '{"a": 1}', ["b", "c"], "x", '{"a": 1, "b": { "c": "x" }}'],
  ["an empty JSON file", "{}\n", ["a"], "x", '{ "a": "x" }\n'],
  ["the last key of a JSON file", '{ "a": 1 }\n', ["a"], undefined, "{}\n"],
  ["JSON indented by tabs", '{\n\t"a": 1,\n\t"b": 2\n}\n', ["b"], undefined, '{\n\t"a": 1\n}\n'],
  ["a key that would be a number twice", "1: a\n", ["1"], "b", "1: b\n"],
  ["a long key in question form", "? a\n: b # c\n", ["a"], "z", "? a\n: z # c\n"],
  ["what is not there", "a: 1\n", ["b", "c"], undefined, "a: 1\n"],
];

test.each(rows)("%s", (_, text, path, value, made) => {
  expect(value === undefined ? without(text, path) : withValue(text, path, value)).toBe(made);
});

/** Forms that the library writes anew: what they hold is right, their layout is the library's. */
test("a pair within brackets", () => {
  expect(withValue("a: [b: 1, c] # d\n", ["a", 0, "e"], 2)).toBe("a: [ { b: 1, e: 2 }, c ] # d\n");
});

describe("cannot be", () => {
  test("a key within a single value", () => {
    expect(() => withValue("a: x\n", ["a", "b"], 1)).toThrow(RangeError);
  });

  test("a place past the end of a list, or no place in it", () => {
    for (const key of [3, -1, 0.5, "0"]) {
      expect(() => withValue("a: [1]\n", ["a", key], 1)).toThrow(RangeError);
    }
  });

  test("a broken text", () => {
    expect(() => withValue("a: [\n", ["a"], 1)).toThrow("yaml-broken");
    expect(() => without("a: 1\na: 2\n", ["a"])).toThrow("key-duplicate");
  });

  test("a merged key taken out where it is merged", () => {
    const text = "%YAML 1.1\n---\na: &x {b: 1, d: 2}\nc:\n  <<: *x\n";
    expect(() => without(text, ["c", "b"])).toThrow("without changing more");
  });
});
