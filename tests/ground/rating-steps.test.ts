import { type Anchor, type PullTest, rateByTests, theoryCapacity } from "@hoopstay/ground";
import { describe, expect, test } from "vitest";
import { firm, given, loose, rated, sixInch, upward, wet } from "./anchor-examples.ts";
import { plainUse, testsOf } from "./pull-test-sample.ts";

const timber: Anchor = {
  kind: "deadman",
  body: "timber",
  face: 0.1524,
  length: 1.2192,
  depth: 1.1,
};
const theory = (...[anchor, soil]: [Anchor, Parameters<typeof theoryCapacity>[1]]) =>
  rated(theoryCapacity(anchor, soil, { fromShaft: 0, aboveGround: Math.PI / 4 }));

describe("what a rating shows of where it starts from", () => {
  const first = (soil: Parameters<typeof theoryCapacity>[1]) =>
    rated(theoryCapacity(sixInch, soil, upward))
      .trail.slice(0, 2)
      .map(({ formula, symbol, value }) => [symbol, formula.name, formula.origin, value]);

  test("an engineer's values, as they were entered", () => {
    expect(first(given(loose, wet))).toEqual([
      ["phi", "friction angle", "as entered", loose.frictionAngle],
      ["gamma", "weight of the soil, per metre of depth", "as entered", loose.unitWeight],
    ]);
    expect(first(given(firm, wet))[0]).toEqual([
      "c_g",
      "undrained strength",
      "as entered",
      firm.shearStrength,
    ]);
  });

  test("a class's values, with the class", () => {
    const soil = {
      basis: "presumptive",
      soilClass: "4A",
      likeness: "sand",
      measured: "wet",
      state: wet,
    } as const;
    const told = first(soil);
    expect(told.map(([symbol, name]) => [symbol, name])).toEqual([
      ["phi", "friction angle, class 4A"],
      ["gamma", "weight of the soil, per metre of depth, class 4A"],
    ]);
    for (const [, , origin] of told) expect(origin).toBe("read from the table");
  });

  test("a timber by the table takes none of them; both rows and the depth between are steps", () => {
    const { trail } = theory(timber, given(loose, wet));
    expect(trail.map(({ symbol }) => symbol)).not.toContain("phi");
    const notes = trail.flatMap(({ note }) => (note?.includes("ft") ? [note] : []));
    expect(notes).toEqual([
      expect.stringMatching(/^lb per square foot at \d ft, by run over rise$/),
      expect.stringMatching(/^lb per square foot at \d ft, by run over rise$/),
      "by depth, ft",
    ]);
  });
});

describe("what a rating by tests shows of its factors", () => {
  const symbols = (tests: readonly PullTest[]) => {
    const rating = rateByTests(tests, plainUse);
    if (!rating.rated) throw new Error("not rated");
    return rating.trail.map(({ symbol }) => symbol);
  };

  test("each factor on a test once, where one of them takes it, and none else", () => {
    const whole = testsOf([2800, 2900]);
    const once = testsOf([2800], { repeats: 2 });
    const dry = testsOf([2800], { ground: "dry" });
    const factors = (tests: readonly PullTest[]) =>
      symbols(tests).filter((symbol) => symbol.startsWith("eta_"));
    expect(factors(whole)).toEqual([]);
    expect(factors([...whole, ...once])).toEqual(["eta_c"]);
    expect(factors([...whole, ...dry])).toEqual(["eta_w"]);
    expect(factors([...once, ...dry])).toEqual(["eta_c", "eta_w"]);
  });

  test("the least scatter by its letter", () => {
    expect(symbols(testsOf([800, 1000, 1250]))).toContain("V");
  });
});
