import { without, withValue } from "@hoopstay/file";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { key as newKey, text, value, type Written, written } from "./arbitrary-text.ts";
import {
  at,
  changed,
  isSingle,
  type Keys,
  lineCount,
  type Plain,
  pathsOf,
  sharedLines,
} from "./plain.ts";

const runs = { seed: 20_260_301, numRuns: 150 };

/** A file, and one of the paths in it. */
const placed = fc.tuple(written, fc.nat()).map(([file, pick]): Written & { path: Keys } => {
  const paths = pathsOf(file.value);
  return { ...file, path: paths[pick % paths.length] as Keys };
});

const comments = (source: string): string[] => source.match(/# (about|before) \w+/g) ?? [];

/** A path to a new entry of the map or list that a path leads to, or that holds it. */
function newPlace(whole: Plain, path: Keys, key: string): Keys {
  const holder = isSingle(at(whole, path)) ? path.slice(0, -1) : path;
  const inner = at(whole, holder);
  return [...holder, Array.isArray(inner) ? inner.length : key];
}

test("what is written is read as itself, and nothing else changes", () => {
  fc.assert(
    fc.property(placed, value, ({ text: file, value: whole, path }, given) => {
      expect(parse(file)).toEqual(whole);
      const after = withValue(file, path, given);
      expect(parse(after)).toEqual(changed(whole, path, given));
    }),
    runs,
  );
});

test("a single value changes its own line only, and keeps every comment", () => {
  const single = value.filter(isSingle);
  fc.assert(
    fc.property(placed, single, ({ text: file, value: whole, path }, given) => {
      fc.pre(isSingle(at(whole, path)));
      const after = withValue(file, path, given);
      expect(sharedLines(file, after)).toBeGreaterThanOrEqual(lineCount(file) - 1);
      expect(lineCount(after)).toBe(lineCount(file));
      expect(comments(after)).toEqual(comments(file));
    }),
    runs,
  );
});

test("a text changed and changed back gives the same bytes", () => {
  fc.assert(
    fc.property(placed, text, ({ text: file, value: whole, path }, given) => {
      const old = at(whole, path);
      fc.pre(typeof old === "string");
      expect(withValue(withValue(file, path, "other"), path, old)).toBe(file);
      const bare = file.replaceAll(/['"]/g, "");
      expect(withValue(withValue(bare, path, given), path, old)).toBe(bare);
    }),
    runs,
  );
});

test("a new entry adds a line or stands in one; taken out again it leaves the same bytes", () => {
  fc.assert(
    fc.property(placed, newKey, value, ({ text: file, value: whole, path }, key, given) => {
      const place = newPlace(whole, path, key);
      const empty = Object.keys(at(whole, place.slice(0, -1))).length === 0;
      const after = withValue(file, place, given);
      expect(parse(after)).toEqual(changed(whole, place, given));
      expect(sharedLines(file, after)).toBeGreaterThanOrEqual(lineCount(file) - 1);
      expect(comments(after)).toEqual(comments(file));
      if (!empty) expect(without(after, place)).toBe(file);
    }),
    runs,
  );
});

test("missing parents are made, and go again with what they were made for", () => {
  const way = fc.array(newKey, { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(written, way, value, ({ text: file, value: whole }, keys, given) => {
      const path = ["new key", ...keys];
      const after = withValue(file, path, given);
      const nested = keys.reduceRight<Plain>(
        (inner, key) => Object.fromEntries([[key, inner]]),
        given,
      );
      expect(parse(after)).toEqual({ ...whole, "new key": nested });
      expect(without(after, path)).toBe(file);
    }),
    runs,
  );
});

test("what goes takes its lines along; no other line is touched but the one before", () => {
  fc.assert(
    fc.property(placed, ({ text: file, value: whole, path }) => {
      let going = path;
      while (going.length > 1 && Object.keys(at(whole, going.slice(0, -1))).length === 1) {
        going = going.slice(0, -1);
      }
      const after = without(file, path);
      const left = changed(whole, going, undefined);
      expect(parse(after) ?? {}).toEqual(left);
      expect(sharedLines(file, after)).toBeGreaterThanOrEqual(lineCount(after) - 1);
    }),
    runs,
  );
});

test("JSON stays JSON, in its own layout", () => {
  const indent = fc.constantFrom(0, 2, 4);
  const entries = fc.dictionary(text, value, { minKeys: 1, maxKeys: 4, noNullPrototype: true });
  fc.assert(
    fc.property(entries, indent, fc.nat(), text, value, (made, space, pick, key, given) => {
      const file = JSON.stringify(made, null, space);
      const whole: Plain = JSON.parse(file.replaceAll("null", "0"));
      const source = JSON.stringify(whole, null, space);
      const paths = pathsOf(whole);
      const path = paths[pick % paths.length] as Keys;
      const finite: Plain = JSON.parse(JSON.stringify(given).replaceAll("null", "0"));
      const replaced = withValue(source, path, finite);
      expect(JSON.parse(replaced)).toEqual(changed(whole, path, finite));
      const place = newPlace(whole, path, key);
      const added = withValue(source, place, finite);
      expect(JSON.parse(added)).toEqual(changed(whole, place, finite));
      expect(sharedLines(source, added)).toBeGreaterThanOrEqual(lineCount(source) - 1);
      JSON.parse(without(source, path));
    }),
    runs,
  );
});
