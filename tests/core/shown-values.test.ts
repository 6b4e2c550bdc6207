import {
  citationWords,
  cite,
  derived,
  exitCodeOf,
  gradeWords,
  judged,
  limitFigure,
  measured,
  plain,
  Refusal,
  rungNames,
  showGust,
  showGustLimit,
  showHours,
  showMeasured,
  showPlace,
  showRatio,
  showWords,
  sources,
  speedLimit,
  unpricedInAll,
  unpricedOnlyHere,
} from "@hoopstay/core";
import { describe, expect, test } from "vitest";

const mph = (1609.344 / 3600) as number;
const infinite = Number.POSITIVE_INFINITY;

describe("a limit of speed is never rounded up", () => {
  test.each([
    [59.99, "59"],
    [60, "60"],
    [10, "10"],
    [9.99, "9.9"],
    [0.19, "0.1"],
    [0, "0.0"],
  ])("%s mph is told as %s", (speed, told) => {
    expect(limitFigure(speed * mph, "us")).toBe(told);
    expect(showGustLimit(speed * mph, "us")).toBe(`${told} mph`);
  });

  test("metres a second too; a whole figure stays whole in spite of rounding", () => {
    expect(limitFigure(26.8, "si")).toBe("26");
    for (let whole = 10; whole < 200; whole += 1) {
      expect(limitFigure(whole * mph, "us")).toBe(String(whole));
    }
  });
});

describe("a number in a sentence", () => {
  test("is shown in the reader's units to three figures, or as many as asked", () => {
    expect(measured(1, "force")).toStrictEqual({ value: 1, measure: "force" });
    expect(measured(1, "force", 2)).toEqual({ value: 1, measure: "force", digits: 2 });
    expect(speedLimit(1)).toEqual({ value: 1, measure: "speed", atMost: true });
    expect(showMeasured(measured(5.4864, "length"), "us")).toBe("18 ft");
    expect(showMeasured(measured(5.4864, "length"), "si")).toBe("5.49 m");
    expect(showMeasured(measured(5.4864, "length", 2), "si")).toBe("5.5 m");
    expect(showMeasured(speedLimit(infinite), "us")).toBe("no limit");
    expect(showMeasured(measured(-infinite, "force"), "us")).toBe("none");
    expect(showMeasured(measured(Number.NaN, "force"), "us")).toBe("none");
  });

  test("without a unit where it has none", () => {
    for (const measure of ["ratio", "section-modulus", "second-moment"] as const) {
      expect(showMeasured(measured(0.12345, measure), "us")).toBe("0.123");
    }
  });

  test.each([
    [0, 3, "0"],
    [0.12345, 3, "0.123"],
    [1.5, 3, "1.50"],
    [12.345, 3, "12.3"],
    [1234.5, 3, "1235"],
    [-1234.5, 2, "-1235"],
    [0.00012345, 3, "0.000123"],
    [0.000012345, 3, "1.23e-5"],
    [1234567, 3, "1234567"],
    [12345678, 3, "1.23e+7"],
    [0.0001, 12, "0.000100000000"],
  ])("%s to %s figures is %s", (value, digits, told) => {
    expect(plain(value, digits)).toBe(told);
  });

  test("a ratio: three figures below a hundred, and words where nothing holds", () => {
    expect(showRatio(0.5)).toBe("0.500");
    expect(showRatio(99.9)).toBe("99.9");
    expect(showRatio(100)).toBe(">100");
    expect(showRatio(infinite)).toBe("no hold");
    expect(showRatio(Number.NaN)).toBe("no hold");
  });

  test("words and numbers make one sentence", () => {
    expect(showWords(["holds ", speedLimit(60 * mph), " of wind"], "us")).toBe(
      "holds 60 mph of wind",
    );
  });
});

describe("hours, gusts and places", () => {
  test.each([
    [0.5, 0.5, "30 min"],
    [0.25, 0.5, "15 to 30 min"],
    [0.5, 2, "30 min to 2 h"],
    [1, 2, "1 to 2 h"],
    [2, 2, "2 h"],
    [1, 1.5, "1 to 1.5 h"],
    [0.5, 1, "30 min to 1 h"],
  ])("from %s to %s hours: %s", (low, high, told) => {
    expect(showHours({ low, high })).toBe(told);
  });

  test.each([
    [40 * mph, "us", "40 mph"],
    [99.4 * mph, "us", "99 mph"],
    [99.5 * mph, "us", "99.5 mph"],
    [123.4 * mph, "us", "123 mph"],
    [26.8, "si", "27 m/s"],
    [infinite, "si", "no limit"],
    [-infinite, "si", "none"],
    [Number.NaN, "si", "none"],
  ] as const)("a gust of %s in %s: %s", (speed, system, told) => {
    expect(showGust(speed, system)).toBe(told);
  });

  test.each([
    [1.524, "left, 5 ft front"],
    [-1.524, "left, 5 ft back"],
    [0, "left, halfway"],
    [4.9e-4, "left, halfway"],
    [-4.9e-4, "left, halfway"],
    [5e-4, "left, 0.0197 in front"],
    [0.0127, "left, 0.5 in front"],
  ])("an anchor %s m along stands %s", (along, told) => {
    const row = { side: "left", along } as Parameters<typeof showPlace>[0];
    expect(showPlace(row, "us")).toBe(told);
  });

  test("every rung has a name", () => {
    expect(Object.keys(rungNames)).toHaveLength(8);
    for (const name of Object.values(rungNames)) expect(name).toMatch(/^[a-z ]+$/);
  });
});

describe("where a number is from", () => {
  test("a source, a derivation and a judgement carry their grades", () => {
    expect(cite("asce-7-22", "27.3", "read")).toEqual({
      source: "asce-7-22",
      place: "27.3",
      grade: "read",
    });
    expect(derived("beam")).toEqual({ source: "statics", place: "beam", grade: "derived" });
    expect(judged("errs safe")).toEqual({
      source: "judgement",
      place: "errs safe",
      grade: "judgement",
    });
  });

  test("in words: the title with its place, a judgement by itself", () => {
    expect(citationWords(cite("asce-7-22", "27.3", "read"))).toBe(
      `${sources["asce-7-22"].title}: 27.3 (read in the source)`,
    );
    expect(citationWords(judged("errs safe"))).toBe("errs safe (judgement)");
    expect(Object.keys(gradeWords)).toHaveLength(5);
    for (const words of Object.values(gradeWords)) expect(words).toMatch(/\w/);
  });
});

describe("a refusal", () => {
  const complaint = { code: "not-positive", expected: "a wall", mend: "Measure it." } as const;
  const other = { code: "out-of-range", expected: "a length", mend: "Measure it." } as const;

  test("tells every complaint", () => {
    const refusal = new Refusal([complaint, other]);
    expect(refusal.message).toBe("not-positive: a wall\nout-of-range: a length");
    expect(refusal.complaints).toEqual([complaint, other]);
  });

  test("is known by its name, from whichever bundle; nothing else is one", () => {
    const named = (name: string) => Object.assign(new Error("?"), { name });
    const isRefusal = (thing: unknown) => thing instanceof Refusal;
    expect(isRefusal(new Refusal([complaint]))).toBe(true);
    expect(isRefusal(named("Refusal"))).toBe(true);
    expect(isRefusal(named("RangeError"))).toBe(false);
    expect(isRefusal({ name: "Refusal" })).toBe(false);
  });

  test("exit 2 as soon as one input is refused, else 3", () => {
    expect(exitCodeOf(["not-positive"])).toBe(2);
    expect(exitCodeOf(["shape-outside", "not-positive"])).toBe(2);
    expect(exitCodeOf(["shape-outside"])).toBe(3);
    expect(exitCodeOf(["shape-outside", "ground-outside"])).toBe(3);
  });
});

describe("what has no price", () => {
  const priced = (...unpriced: string[]) => ({ cost: { unpriced } }) as never;
  const unpriced = {} as never;

  test("in every house that has a cost: left out of all alike", () => {
    expect(unpricedInAll([priced("film", "wood"), priced("wood", "bolts")])).toEqual(["wood"]);
    expect(unpricedInAll([priced("film"), unpriced])).toEqual(["film"]);
    expect(unpricedInAll([unpriced, priced("film")])).toEqual(["film"]);
    const three = [priced("film", "wood"), priced("film"), priced("wood")];
    expect(unpricedInAll(three)).toEqual([]);
    expect(unpricedInAll([])).toEqual([]);
    expect(unpricedInAll([unpriced])).toEqual([]);
  });

  test("only in one house: its cost is not set against the others", () => {
    expect(unpricedOnlyHere(priced("film", "wood"), ["wood"])).toEqual(["film"]);
    expect(unpricedOnlyHere(unpriced, ["wood"])).toEqual([]);
  });
});
