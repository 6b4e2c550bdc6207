import { showWords } from "@hoopstay/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { differences } from "../../packages/house/src/compare/differences.ts";
import { houseOf } from "./sample-houses.ts";

type Numbers = Parameters<typeof houseOf>[0];

const said = (today: Numbers, variant: Numbers, system: "us" | "si" = "si"): string[] =>
  differences(houseOf(today), houseOf(variant), "variant").map((words) => showWords(words, system));

describe("what differs, in words", () => {
  test("is nothing where nothing does", () => {
    expect(said({}, {})).toEqual(["variant: no difference in what is compared here."]);
  });

  test("is never said to be none where a number of the table differs", () => {
    for (const variant of [{ link: 19.7 }, { whole: 15.8 }, { steel: 8990 }, { pull: 5990 }])
      expect(said({}, variant)).toEqual([
        "variant: differences too small to tell in words: see the table.",
      ]);
  });

  test.each([
    [{ steel: 8500 }, "variant: 500 N less steel."],
    [{ steel: 10500 }, "variant: 1.5 kN more steel."],
    [{ sticks: 39 }, "variant: 1 stick fewer."],
    [{ sticks: 46 }, "variant: 6 sticks more."],
    [{ cost: 1500 }, "variant: USD 1,500 less for what is priced."],
    [{ cost: 3150 }, "variant: USD 150 more for what is priced."],
    [{ pull: 5700 }, "variant: 300 N less pull to keep it moving."],
    [
      { steel: 8500, sticks: 38, cost: 2900 },
      "variant: 500 N less steel, 2 sticks fewer, USD 100 less for what is priced.",
    ],
  ])("tells amounts: %j", (numbers, words) => {
    expect(said({}, numbers)[0]).toBe(words);
  });

  test("speaks the reader's units", () => {
    expect(said({}, { steel: 8555.1779 }, "us")[0]).toBe("variant: 100 lb less steel.");
  });

  test("sets no cost beside another one that leaves other things out", () => {
    const [first] = said({}, { cost: 1000, unpriced: ["bolts", "HSS4X3X1/8"] });
    expect(first).toBe("variant: cost not compared, for lack of a price: HSS4X3X1/8.");
    const [other] = said({ unpriced: ["bolts", "NPS 2"] }, { cost: 9000 });
    expect(other).toBe("variant: cost not compared, for lack of a price: NPS 2.");
    expect(said({}, { cost: null })).toEqual(["variant: cost not compared, for lack of prices."]);
  });

  test("a lighter tube that fails at a link though the house still does not tip is told so", () => {
    expect(said({ link: 20, whole: 16 }, { steel: 8000, link: 12.9, whole: 16 })).toContain(
      "variant: Lighter, and it still does not tip over to the right, up to 16 m/s; but a link goes before that: the bending (bending), all shut, at 12 m/s; today's first link stands 20 m/s.",
    );
  });

  test.each([
    ["it is no lighter", { link: 12.9 }],
    ["the link goes after the house", { steel: 8000, link: 17 }],
    ["the link is no weaker", { steel: 8000, link: 20 }],
  ])("and not where %s", (_, variant) => {
    expect(said({ link: 20, whole: 16 }, variant).join()).not.toContain("still does not");
  });

  test("the pull told is the high end, as in the table", () => {
    const before = houseOf({ pull: 6000 });
    const now = { ...before, pull: { ...before.pull, low: 5000, high: 6500 } };
    expect(differences(before, now, "1").map((words) => showWords(words, "si"))).toEqual([
      "1: 500 N more pull to keep it moving.",
    ]);
  });

  test("a first link is told with its gust beside today's, and another one at the same gust as such", () => {
    expect(said({ link: 15 }, { link: 12.25 })).toContain(
      "variant: Of its links, first to go: the bending (bending), all shut, at 12 m/s, 2.8 m/s less than today.",
    );
    expect(said({}, { link: 22, part: "weld" })).toContain(
      "variant: Of its links, first to go: the weld (weld), all shut, at 22 m/s, 2 m/s more than today, when it is the bending (bending).",
    );
    expect(said({}, { part: "weld" })).toContain(
      "variant: Another link is first to go, at about the same gust: the weld (weld).",
    );
  });

  test("gusts without limit are said to have none", () => {
    const endless = Number.POSITIVE_INFINITY;
    expect(said({ link: endless }, { link: 15 }).join()).toContain("at 15 m/s, today no limit");
    expect(said({ whole: endless, link: endless }, { whole: endless, link: endless })).toEqual([
      "variant: no difference in what is compared here.",
    ]);
  });

  test("states are told by number, with the greatest change, where there are several", () => {
    const house = (gusts: readonly number[]) => {
      const one = houseOf({ whole: 16, link: 20 });
      const [first] = one.states;
      if (!first) throw new Error("a house without states");
      const states = gusts.map((gust, at) => ({
        ...first,
        id: `s${at}`,
        words: `state ${at}`,
        whole: { ...first.whole, gust },
      }));
      return { ...one, states };
    };
    const words = differences(house([10, 11, 12, 13]), house([10, 12, 15.5, 12.5]), "variant");
    expect(words.map((one) => showWords(one, "si"))).toContain(
      "variant: Of 4 states it is good for more in 2, at most by 3.5 m/s (state 2), for less in 1, at most by 0.5 m/s (state 3).",
    );
  });

  test("anchors needed and holding are told where they differ", () => {
    expect(said({}, { perRail: 9 })).toContain(
      "variant: screw anchor: 9 on each rail hold it in every state; today 7.",
    );
    expect(said({}, { perRail: null })).toContain(
      "variant: screw anchor: no number holds it in every state; today 7.",
    );
    expect(said({}, { holds: false })).toContain("variant: It does not hold here; today's does.");
    expect(said({ holds: false }, {})).toContain("variant: It holds here; today's does not.");
  });

  test("law: every sentence names its variant, in either system, without a hole in it", () => {
    const numbers = fc.record({
      steel: fc.double({ min: 100, max: 1e5, noNaN: true }),
      sticks: fc.integer({ min: 1, max: 60 }),
      cost: fc.option(fc.double({ min: 1, max: 1e5, noNaN: true })),
      pull: fc.double({ min: 100, max: 1e5, noNaN: true }),
      whole: fc.oneof(
        fc.double({ min: 1, max: 80, noNaN: true }),
        fc.constant(Number.POSITIVE_INFINITY),
      ),
      link: fc.oneof(
        fc.double({ min: 1, max: 80, noNaN: true }),
        fc.constant(Number.POSITIVE_INFINITY),
      ),
      perRail: fc.option(fc.integer({ min: 2, max: 20 })),
      holds: fc.boolean(),
    });
    fc.assert(
      fc.property(numbers, numbers, (today, variant) => {
        for (const system of ["us", "si"] as const) {
          const sentences = said(today, variant, system);
          expect(sentences.length).toBeGreaterThan(0);
          for (const one of sentences) {
            expect(one).toMatch(/^variant: .*\.$/);
            expect(one).not.toMatch(/undefined|NaN|Infinity|\[object|\.\.$/);
            expect(one).not.toMatch(system === "us" ? / m\/s|\bk?N\b/ : / mph| lb\b/);
          }
        }
      }),
      { seed: 20240601, numRuns: 200 },
    );
  });

  test("law: more and less are true to the numbers", () => {
    const steel = fc.double({ min: 100, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(steel, steel, (before, now) => {
        const [first = ""] = said({ steel: before }, { steel: now });
        if (first.includes("less steel")) expect(now).toBeLessThan(before);
        else if (first.includes("more steel")) expect(now).toBeGreaterThan(before);
        else expect(Math.abs(now - before)).toBeLessThanOrEqual(0.005 * Math.max(now, before));
      }),
      { seed: 20240601 },
    );
  });
});
