import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { without, withValue } from "@hoopstay/file";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { at, changed, isSingle, lineCount, type Plain, pathsOf, sharedLines } from "./plain.ts";

const fixtures = resolve(import.meta.dirname, "../../fixtures");
const read = (name: string): string => readFileSync(join(fixtures, name), "utf8");
const names = ["houses", "sites"].flatMap((folder) =>
  readdirSync(join(fixtures, folder)).map((name) => join(folder, name)),
);
const carriage = (text: string): string => text.replaceAll("\n", "\r\n");

describe.each(names)("%s", (name) => {
  const layouts = [read(name), carriage(read(name)), read(name).trimEnd()];
  const whole: Plain = parse(read(name));
  // What comes later in a list is written as its first items are.
  const paths = pathsOf(whole).filter((path) => path.every((key) => !(Number(key) > 1)));
  const singles = paths.filter((path) => isSingle(at(whole, path)));

  test("every single value, changed and changed back, gives the same bytes", () => {
    const text = layouts[0] as string;
    for (const path of singles) {
      const after = withValue(text, path, "3 ft 7 in");
      expect(sharedLines(text, after)).toBeGreaterThanOrEqual(lineCount(text) - 1);
      expect(withValue(after, path, at(whole, path) as string)).toBe(text);
    }
  });

  test("a key added to the file and every part of it, then taken out, gives the same bytes", () => {
    const parts = [[], ...paths].filter((path) => !isSingle(at(whole, path)));
    for (const part of parts) {
      const inner = at(whole, part);
      const path = [...part, Array.isArray(inner) ? inner.length : "new_key"];
      for (const text of part.length > 1 ? layouts.slice(0, 1) : layouts) {
        const after = withValue(text, path, { what: "hay, wet", weight: 3 });
        expect(sharedLines(text, after)).toBeGreaterThanOrEqual(lineCount(text) - 1);
        expect(without(after, path)).toBe(text);
      }
    }
  });

  test("every part can be taken out by itself", () => {
    const text = layouts[1] as string;
    for (const path of paths.filter(({ length }) => length < 3)) {
      const held = at(whole, path.slice(0, -1));
      if (path.length > 1 && Object.keys(held).length === 1) continue;
      expect(parse(without(text, path))).toEqual(changed(whole, path, undefined));
    }
  });

  test("written over itself, nothing changes", () => {
    for (const text of layouts) {
      for (const [key, value] of Object.entries(whole))
        expect(withValue(text, [key], value)).toBe(text);
    }
  });
});

const house = read("houses/harrow-brook.yaml");
/** The one line that another text has in place of this one. */
const changedLine = (after: string, was: string): string => {
  const [start = "", end = ""] = house.split(was);
  expect(house.split(was)).toHaveLength(2);
  expect(after.startsWith(start) && after.endsWith(end)).toBe(true);
  return after.slice(start.length, after.length - end.length);
};

describe("the lines of Harrow Brook", () => {
  test("a comment keeps its distance to the value", () => {
    expect(changedLine(withValue(house, ["hoops", "span"], "20 ft"), "span: 18 ft ")).toBe(
      "span: 20 ft ",
    );
  });

  test("a value within braces", () => {
    const after = withValue(house, ["hoops", "tube", "gauge"], 16);
    const tube = "tube: { outside: 2.375 in, gauge: 14, gauge_table: birmingham, standard: other,";
    expect(changedLine(after, tube)).toBe(tube.replace("14", "16"));
  });

  test("yes stays a word, and a word that is none is quoted", () => {
    expect(withValue(house, ["hoops", "tube", "galvanized"], "no")).toContain(
      "galvanized: no, yield",
    );
    expect(withValue(house, ["hoops", "shape"], "true")).toContain(
      'shape: "true"            # one circle',
    );
  });

  test("a new part of the house stands before the comment on the next one", () => {
    const after = withValue(house, ["hoops", "count"], 9);
    const last =
      house.split("\n").find((line) => line.startsWith("  tube: { outside: 2.375")) ?? "";
    expect(changedLine(after, `${last}\n`)).toBe(`${last}\n  count: 9\n`);
  });

  test("an anchor is added to its list, and one taken out with its line", () => {
    const anchor = { name: "L5", side: "left", along: "0 ft", pull: "900 lb" };
    const last =
      "  - { name: R4, side: right, along: -18 ft, pull: 900 lb, angle: 60 deg, toward: back }\n";
    expect(changedLine(withValue(house, ["anchors", 8], anchor), last)).toBe(
      `${last}  - { name: L5, side: left, along: 0 ft, pull: 900 lb }\n`,
    );
    expect(changedLine(without(house, ["anchors", 7]), last)).toBe("");
  });

  test("a list or map written whole changes where it differs", () => {
    const anchors = (parse(house).anchors as Plain[]).map((one, index) =>
      index === 4 ? { ...(one as object), pull: "700 lb" } : one,
    );
    const was = "{ name: R1, side: right, along: 18 ft, pull: 900 lb";
    expect(changedLine(withValue(house, ["anchors"], anchors), was)).toBe(
      was.replace("900", "700"),
    );
  });

  test("what was the only one in its part takes the part along", () => {
    expect(changedLine(without(house, ["stubs", "weld", "leg"]), "  weld: { leg: 1/8 in }\n")).toBe(
      "",
    );
  });
});
