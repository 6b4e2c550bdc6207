import { describe, expect, test } from "vitest";
import { casesOf, checkOf, foot, lowWeight, pound, refusedOf, told } from "./told.ts";
import { roundTube } from "./tube-by-hand.ts";

const sound = told();
const withFitting = (what: string) =>
  told({
    house: [["what: lambing hurdles, weight: 90 lb", `what: ${what}, weight: 590 lb`]],
  });

describe("animals, feed and wet bedding counted as weight", () => {
  test.each(["animals: 2000 lb", "bedding: { weight: 900 lb }", "feed: 500 lb"])(
    "%s is not known",
    (key) => {
      const found = refusedOf({ house: [["fittings:", `${key}\nfittings:`]] });
      expect(found.map(([code]) => code)).toEqual(["key-unknown"]);
    },
  );

  test("a full bin holds no more than an empty one", () => {
    const fuller = told({ house: [["full: 620 lb", "full: 2620 lb"]] });
    expect(lowWeight(fuller).weight).toBe(lowWeight(sound).weight);
    expect(checkOf(fuller, "shut", "lift").resistance).toBe(
      checkOf(sound, "shut", "lift").resistance,
    );
  });

  test.each(["twelve ewes", "straw bedding", "hay bales", "40 hens"])(
    "a fitting named %s is doubted beside the answer, since it does count",
    (what) => {
      const wrong = withFitting(what);
      expect(lowWeight(wrong).weight - lowWeight(sound).weight).toBeCloseTo(500 * pound, 6);
      expect(wrong.sentences.join("\n")).toContain(`"${what}" counts as holding the house down`);
    },
  );

  test.each(["lambing hurdles", "hay rack", "nest boxes", "sheep feeder"])(
    "%s is not doubted",
    (what) => {
      expect(withFitting(what).sentences.join("\n")).not.toContain("counts as holding");
    },
  );
});

describe("1.0 D against uplift", () => {
  test("ASD counts 0.6 of the low weight, LRFD 0.9: ASCE 7-16 2.4.1 and 2.3.1", () => {
    const { weight } = lowWeight(sound);
    expect(checkOf(sound, "shut", "lift").resistance / weight).toBeCloseTo(0.6, 9);
    expect(checkOf(sound, "shut", "lift", "bare", "LRFD").resistance / weight).toBeCloseTo(0.9, 9);
  });

  test("and the low weight is below the high one, by tolerance, film and what is in the bins", () => {
    const high = sound.result.weights.find(({ name, hold }) => name === "high" && hold === "bare");
    expect(lowWeight(sound).weight).toBeLessThan((high?.weight ?? 0) - 480 * pound);
  });
});

describe("gauge or pipe-size confusion", () => {
  test("a gauge without its table is refused", () => {
    const bare = refusedOf({
      house: [
        ["gauge: 14, gauge_table: birmingham, standard: other", "gauge: 14, standard: other"],
      ],
    });
    expect(bare).toEqual([["gauge-without-table", "hoops.tube.gauge"]]);
  });

  test("14 gauge is 0.083 in by the one table and 0.0747 in by the other, and printed weights differ so", () => {
    const hoops = (one: typeof sound): number =>
      one.result.take_off.find(({ what }) => what === "hoops")?.low ?? 0;
    const other = told({
      house: [["birmingham, standard: other", "manufacturers-standard, standard: other"]],
    });
    // Wall 17 % under, as for a tube of no named standard.
    const area = (wall: number): number => roundTube(2.375, 0.83 * wall).area;
    expect(hoops(other) / hoops(sound)).toBeCloseTo(area(0.0747) / area(0.083), 4);
  });

  test("a tube as wide as a pipe's name, with that pipe's wall, is doubted: its modulus is a third less", () => {
    const stubs = "outside: 1.9 in, wall: 0.120 in, standard: A500, grade: A500 B";
    const nominal = told({ house: [[stubs, "outside: 1.5 in, wall: 0.145 in, standard: A53"]] });
    expect(nominal.sentences.join("\n")).toContain("has the wall of Pipe1-1/2STD");
    const true_ = told({ house: [[stubs, "outside: 1.9 in, wall: 0.145 in, standard: A53"]] });
    expect(true_.sentences.join("\n")).not.toContain("nominal size");
    const ratio = roundTube(1.9, 0.145).modulus / roundTube(1.5, 0.145).modulus;
    expect(ratio).toBeGreaterThan(1.58);
  });

  test("a pipe by its name has the outside of the pipe standard, not of its name", () => {
    const stubs = "outside: 1.9 in, wall: 0.120 in, standard: A500, grade: A500 B";
    const byName = told({ house: [[stubs, "size: Pipe1-1/2STD"]] });
    const typed = told({ house: [[stubs, "outside: 1.9 in, wall: 0.145 in, standard: A53"]] });
    const weight = (one: typeof sound) => one.result.take_off.find(({ what }) => what === "stubs");
    expect(weight(byName)).toEqual(weight(typed));
  });
});

describe("goods at one end", () => {
  test("what stands at an end moves the centre, and the far end lifts sooner", () => {
    const atEnd = told({ house: [["along: -4 ft, up: 20 in", "along: 18 ft, up: 20 in"]] });
    const moved = (lowWeight(atEnd).y - lowWeight(sound).y) * lowWeight(sound).weight;
    expect(moved).toBeCloseTo(90 * pound * 22 * foot, 3);
    // 0.6 of the weight's moment about each end: what one end gains the other loses.
    const change = (check: string): number =>
      checkOf(atEnd, "shut", check).resistance - checkOf(sound, "shut", check).resistance;
    expect(change("tip-front")).toBeCloseTo(-0.6 * moved, 3);
    expect(change("tip-back")).toBeCloseTo(0.6 * moved, 3);
  });

  test("an open house is loaded part filled too: the obstructed rows of the free roof", () => {
    const walls = "left: 100 m2, right: 100 m2, front: 12 m2, back: 12 m2";
    const open = `states: [{ id: wide, words: wide, openings: { ${walls} } }]\nprices:`;
    const wide = told({ house: [["prices:", open]] });
    const sets = new Set(casesOf(wide, "wide").map(({ coefficient_set: set }) => set));
    expect([...sets].filter((set) => /obstructed/.test(set)).length).toBeGreaterThan(0);
    expect([...sets].filter((set) => /clear/.test(set)).length).toBeGreaterThan(0);
  });
});

describe("ballast not tied", () => {
  const block = (fixed: string) =>
    `ballast: [{ what: blocks, weight: 800 lb, at: { along: 3 ft }, fixed: ${fixed} }]\nanchors:`;
  const lift = (one: typeof sound) => checkOf(one, "shut", "lift", "fitted").resistance;

  test("whether it is made fast must be said", () => {
    const silent = block("yes").replace(", fixed: yes", "");
    expect(refusedOf({ house: [["anchors:\n  - { name", `${silent}\n  - { name`]] })).toEqual([
      ["key-missing", "ballast.0.fixed"],
    ]);
  });

  test("loose ballast counts nothing, tied ballast 0.6 of its weight", () => {
    const change = (fixed: string) =>
      told({ house: [["anchors:\n  - { name", `${block(fixed)}\n  - { name`]] });
    expect(lift(change("no"))).toBe(lift(sound));
    expect(lift(change("yes")) - lift(sound)).toBeCloseTo(0.6 * 800 * pound, 6);
  });
});
