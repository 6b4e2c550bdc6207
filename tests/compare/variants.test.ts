import { FOOT, POUND_FORCE } from "@hoopstay/core";
import { type PathComplaint, readVariants, takeOff } from "@hoopstay/house";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  asked,
  exampleDocument,
  exampleWith,
  paddock,
  today,
  todayOf,
  variantOf,
  variantsOf,
} from "./today.ts";

const codesOf = (complaints: readonly PathComplaint[]): string[] =>
  complaints.map(({ code }) => code);

describe("a variant", () => {
  test("is the house with one key changed, in either system of units", () => {
    for (const spacing of ["8 ft", "2438.4 mm", "2.4384 m"]) {
      const { house, changes } = variantOf({ "hoops.spacing": spacing });
      expect(house.spacing).toBeCloseTo(8 * FOOT, 12);
      expect(house.lines.hoopCount).toBe(6);
      expect(changes).toEqual([{ key: "hoops.spacing", from: "5 ft", to: spacing }]);
    }
  });

  test("takes out what said the same another way: a size for dimensions, a count for a spacing", () => {
    const sized = variantOf({ "hoops.tube.size": "NPS 2 sch 40" });
    expect(sized.input.hoops.tube).toMatchObject({ size: "NPS 2 sch 40" });
    for (const key of ["outside", "gauge", "gauge_table", "standard", "yield", "tensile"])
      expect(sized.input.hoops.tube).not.toHaveProperty(key);
    const counted = variantOf({ "hoops.count": 11 });
    expect(counted.house.spacing).toBeCloseTo(4 * FOOT, 12);
    expect(counted.changes).toContainEqual({ key: "hoops.spacing", from: "5 ft", to: "none" });
  });

  test("does not keep the mill certificate of the tube that is gone, unless told again", () => {
    expect(variantOf({ "hoops.tube.gauge": 16 }).input.hoops.tube.yield).toBeUndefined();
    const told = variantOf({ "hoops.tube.gauge": 16, "hoops.tube.yield": "50 ksi" });
    expect(told.input.hoops.tube.yield?.text).toBe("50 ksi");
    expect(told.changes.map(({ key }) => key)).toEqual(["hoops.tube.tensile", "hoops.tube.gauge"]);
  });

  test("adds entries of a list one after another, and takes entries out", () => {
    const anchor = (name: string, side: string) => ({
      name,
      side,
      along: "0 ft",
      pull: "900 lb",
      angle: "60 deg",
      toward: "out",
    });
    const more = variantOf({
      "anchors.8": anchor("L5", "left"),
      "anchors.9": anchor("R5", "right"),
    });
    expect(more.house.anchors.map(({ name }) => name)).toEqual(
      "L1 L2 L3 L4 R1 R2 R3 R4 L5 R5".split(" "),
    );
    const fewer = variantOf({ "anchors.0": null, "anchors.7": null });
    expect(fewer.house.anchors.map(({ name }) => name)).toEqual("L2 L3 L4 R1 R2 R3".split(" "));
  });

  test("makes blocks that are not there, and takes whole ones out", () => {
    const { input } = variantOf({
      "end_braces.tube.size": "HSS2X2X1/8",
      "end_braces.count": 4,
      "end_braces.length": "8 ft",
      "end_braces.height": "5 ft",
      purlins: null,
    });
    expect(input.purlins).toBeUndefined();
    expect(input.end_braces).toMatchObject({ count: 4, tube: { size: "HSS2X2X1/8" } });
  });

  test("leaves today's house as it is, also where keys share a value by an alias", () => {
    const tube = { size: "HSS4X3X1/8" };
    const before = JSON.stringify(exampleDocument);
    const shared = exampleWith({
      cross_members: { tube, count: 5 },
      corner_braces: { tube, count: 4, length: "5 ft" },
    });
    const { input } = variantOf({ "cross_members.tube.size": "HSS3X3X1/8" }, shared);
    expect(input.cross_members?.tube.size).toBe("HSS3X3X1/8");
    expect(input.corner_braces?.tube.size).toBe("HSS4X3X1/8");
    expect(tube.size).toBe("HSS4X3X1/8");
    expect(JSON.stringify(exampleDocument)).toBe(before);
  });

  test("of a house that was weighed weighs as much more or less as it would by the take-off", () => {
    const weighed = exampleWith({ measured_weight: { total: "3300 lb" } });
    const change = { "rails.tube.size": "HSS4X3X1/8" };
    const by = (end: "low" | "high") => ({
      takeOff: takeOff(variantOf(change).house)[end].W - takeOff(today.house)[end].W,
      measured: takeOff(variantOf(change, weighed).house)[end].W - takeOff(weighed.house)[end].W,
    });
    for (const { takeOff: less, measured } of [by("low"), by("high")]) {
      expect(less).toBeLessThan(-100 * POUND_FORCE);
      expect(measured).toBeCloseTo(less, 6);
    }
    const anew = variantOf({ ...change, "measured_weight.total": "3200 lb" }, weighed);
    expect(anew.house.measured?.low).toBeCloseTo(3200 * POUND_FORCE, 6);
  });
});

describe("complaints", () => {
  test("of all variants come at once, each at its key", () => {
    const { variants, complaints } = variantsOf([
      { "hoops.tube.gage": 16 },
      { "hoops.spacing": "5" },
      { "rails.tube.size": "HSS4X3X7/8" },
      { "anchors.12": {} },
      { "purlins.count": 6 },
    ]);
    expect(variants).toHaveLength(1);
    expect(codesOf(complaints)).toEqual([
      "key-unknown",
      "unit-missing",
      "size-unknown",
      "out-of-range",
    ]);
    expect(complaints.map(({ path }) => path.slice(0, 2).join(" "))).toEqual([
      "--with hoops.tube.gage",
      "--with hoops.spacing",
      "--with rails.tube.size",
      "--with anchors.12",
    ]);
    expect(complaints[0]?.mend).toBe('Did you mean "hoops.tube.gauge"?');
  });

  test.each([
    ["spacing", "hoops.spacing"],
    ["hoops.tube.guage", "hoops.tube.gauge"],
    ["rail.length", "rails.length"],
  ])("a key misspelt, %s, is told its neighbour", (key, near) => {
    const [complaint] = variantsOf([{ [key]: "5 ft" }]).complaints;
    expect(complaint).toMatchObject({ code: "key-unknown", given: key });
    expect(complaint?.mend).toContain(near);
  });

  test.each([
    "house",
    "prices.currency",
    "variants",
    "search",
    "$schema",
    "__proto__.x",
    "hoops.constructor",
  ])("%s is no key of a variant", (key) => {
    expect(codesOf(variantsOf([{ [key]: "x" }]).complaints)).toEqual(["key-unknown"]);
  });

  test.each([
    ["no change", {}],
    ["the same value", { "hoops.spacing": "5 ft" }],
    ["the same value in other units", { "hoops.spacing": "60 in" }],
    ["what is not there taken out", { end_braces: null }],
  ])("%s is variant-unchanged", (_, change) => {
    expect(codesOf(variantsOf([change]).complaints)).toEqual(["variant-unchanged"]);
  });

  test("more than six are refused, six are not", () => {
    const counts = [4, 5, 6, 7, 8, 10, 11].map((count) => ({ "hoops.count": count }));
    expect(codesOf(variantsOf(counts.slice(0, 6)).complaints)).toEqual([]);
    expect(codesOf(variantsOf(counts).complaints)).toEqual(["out-of-range"]);
  });

  test("none at all are asked for", () => {
    expect(codesOf(variantsOf([]).complaints)).toEqual(["key-missing"]);
  });

  test("those asked for stand in place of those of the file", () => {
    const file = exampleWith({ variants: [{ name: "of the file", change: { "hoops.count": 7 } }] });
    const names = (given: Parameters<typeof readVariants>[1]): string[] =>
      readVariants(file, given, paddock, []).map(({ name }) => name);
    expect(names([])).toEqual(["of the file"]);
    expect(names([asked({ "hoops.count": 8 }, "typed")])).toEqual(["typed"]);
  });

  test("a state of the site that a variant lacks is complained of; one that today lacks too is not", () => {
    const complaints: PathComplaint[] = [];
    const site = { ...paddock, now: "sides-up" };
    readVariants(today, [asked({ roll_up_sides: null })], site, complaints);
    expect(codesOf(complaints)).toEqual(["wrong-kind"]);
    const both: PathComplaint[] = [];
    readVariants(today, [asked({ "hoops.count": 7 })], { ...paddock, now: "no-such" }, both);
    expect(codesOf(both)).toEqual([]);
  });

  test("law: whatever is typed as key and value is read or refused with a code", () => {
    const key = fc.oneof(
      fc.string(),
      fc
        .array(fc.constantFrom("hoops", "tube", "anchors", "0", "8", "-1", "rails", "wall", ""), {
          maxLength: 4,
        })
        .map((parts) => parts.join(".")),
    );
    fc.assert(
      fc.property(fc.dictionary(key, fc.jsonValue({ maxDepth: 2 }), { maxKeys: 3 }), (change) => {
        const { variants, complaints } = variantsOf([change]);
        expect(variants.length === 1).toBe(complaints.length === 0);
      }),
      { seed: 20240601, numRuns: 150 },
    );
  });
});

test("16 ga of the Birmingham table is 0.065 in, in a variant as in a file", () => {
  const { house } = variantOf({ "hoops.tube.gauge": 16 });
  expect(house.hoopTube).toMatchObject({
    wall: expect.closeTo((0.065 * FOOT) / 12, 9),
  });
});

test("a file without variants can be read with them", () => {
  expect(
    todayOf({ ...exampleDocument, variants: [{ name: "a", change: { "hoops.count": 7 } }] }).input
      .variants,
  ).toHaveLength(1);
});
