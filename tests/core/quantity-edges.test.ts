import {
  convert,
  type Dimension,
  dimensions,
  POUND_PER_SQUARE_FOOT,
  readQuantity,
  significant,
  windFrom,
} from "@hoopstay/core";
import { describe, expect, test } from "vitest";

const inch = 0.0254;
const foot = 0.3048;
const poundForce = 0.45359237 * 9.80665;

/** One of each unit, from the definitions of the NIST handbook and exact chains of them. */
const worth: readonly (readonly [string, Dimension, number])[] = [
  ["mil", "length", inch / 1000],
  ["cm", "length", 0.01],
  ["km", "length", 1000],
  ["in2", "area", inch ** 2],
  ["yd2", "area", 0.9144 ** 2],
  ["cm2", "area", 1e-4],
  ["mm2", "area", 1e-6],
  ["in3", "volume", inch ** 3],
  ["ft3", "volume", foot ** 3],
  ["yd3", "volume", 0.9144 ** 3],
  ["ft/s", "speed", foot],
  ["lb-in", "moment", poundForce * inch],
  ["kip-ft", "moment", 1000 * poundForce * foot],
  ["kip-in", "moment", 1000 * poundForce * inch],
  ["kN-m", "moment", 1000],
  ["lb/in", "force-per-length", poundForce / inch],
  ["kN/m", "force-per-length", 1000],
  ["N/mm", "force-per-length", 1000],
  ["kg/m", "force-per-length", 9.80665],
  ["psi", "pressure", poundForce / inch ** 2],
  ["ksf", "pressure", (1000 * poundForce) / foot ** 2],
  ["GPa", "pressure", 1e9],
  ["oz/ft2", "mass-per-area", 0.45359237 / 16 / foot ** 2],
  ["g/m2", "mass-per-area", 0.001],
  ["pcf", "unit-weight", poundForce / foot ** 3],
  ["kN/m3", "unit-weight", 1000],
];

const si = (text: unknown, dimension: Dimension): number => {
  const read = readQuantity(text, dimension);
  if (!read.ok) throw new Error(`${text}: ${read.mend}`);
  return read.value;
};

describe("units", () => {
  test.each(worth)("one %s of %s", (unit, dimension, value) => {
    expect(si(`1 ${unit}`, dimension) / value).toBeCloseTo(1, 13);
  });

  test("a pound per square foot is 47.88 Pa (NIST SP 811, appendix B.8)", () => {
    expect(POUND_PER_SQUARE_FOOT).toBeCloseTo(47.88026, 5);
  });

  test("every example given in a refusal is read", () => {
    for (const dimension of dimensions) {
      const refused = readQuantity("", dimension);
      if (refused.ok) throw new Error("read");
      const examples = /^an? .*, such as (.*) \(units: /.exec(refused.expected)?.[1] ?? "";
      const each = examples.split(/, (?=\d+ )| or /);
      expect(each.length, refused.expected).toBeGreaterThan(1);
      for (const example of each) expect(si(example, dimension), example).toBeGreaterThan(0);
    }
  });
});

describe("forms of a number", () => {
  test.each<[string, Dimension, number]>([
    [".25 in", "length", 0.25 * inch],
    ["12-1/2 in", "length", 12.5 * inch],
    ["1- 5/8 in", "length", 1.625 * inch],
    ["1-11/16 in", "length", (27 / 16) * inch],
    ["18/16 in", "length", 1.125 * inch],
    ["1/2 m", "length", 0.5],
    ["1/2 : 12", "angle", Math.atan(1 / 24)],
    ["6 ft- 4 in", "length", 76 * inch],
    ["6 ft   4 in", "length", 76 * inch],
    ["6 ft 11 in", "length", 83 * inch],
    ["16 lb/ ft2", "pressure", (16 * poundForce) / foot ** 2],
    ["16 lb /ft2", "pressure", (16 * poundForce) / foot ** 2],
    ["120 sq.ft", "area", 120 * foot ** 2],
    ["120 sqft", "area", 120 * foot ** 2],
    ["2 cu ft", "volume", 2 * foot ** 3],
    ["2 cu. ft", "volume", 2 * foot ** 3],
    ["2 cu.ft", "volume", 2 * foot ** 3],
    ["2 cuft", "volume", 2 * foot ** 3],
    ["2 METRES", "length", 2],
    ["2 Gal", "volume", 2 * 231 * inch ** 3],
    ["1", "fraction", 1],
    ["0 mil", "length", 0],
  ])("%s as %s", (text, dimension, value) => {
    expect(si(text, dimension)).toBeCloseTo(value, 12);
  });

  test("minus nought is nought", () => {
    expect(si("-0 m", "length")).toBe(0);
  });

  const many = "9".repeat(400);
  test.each<[unknown, Dimension, string, RegExp]>([
    ["12,34,567 lb", "force", "not-a-number", /comma/],
    ["1,200,5 lb", "force", "not-a-number", /comma/],
    ["12,000 m", "length", "not-a-number", /comma/],
    ["1,500:12", "angle", "not-a-number", /comma/],
    ["1:1,500", "angle", "not-a-number", /comma/],
    ["1-2/2 in", "length", "not-a-number", /one number/],
    ["1:x", "angle", "not-a-number", /one number/],
    ["1:12 ft", "angle", "not-a-number", /one number/],
    [`${many}/1`, "fraction", "not-a-number", /size/],
    ["1e-323 mil", "length", "not-a-number", /size/],
    ["5 e3 m", "length", "unit-unknown", /listed/],
    ["6 ft 12 in", "length", "not-a-number", /less than 12/],
    ["5 miles per hour fast", "speed", "not-a-number", /Leave out "fast" after 5 miles per hour/],
    ["120 sq ft floor", "area", "not-a-number", /Leave out "floor" after 120 sq ft/],
    ["18 ft, long", "length", "not-a-number", /after 18 ft\./],
    ["5 m tall", "force", "unit-unknown", /listed/],
    ["5 KN", "force", "unit-unknown", /Did you mean 5 kN/],
    ["5 abcd", "length", "unit-unknown", /^Use one of the units listed\.$/],
    ["5 q", "length", "unit-unknown", /^Use one of the units listed\.$/],
    ["5 fot", "length", "unit-unknown", /Did you mean 5 ft/],
    ["5 ff", "length", "unit-unknown", /Did you mean 5 ft/],
    ["5 inchesss", "length", "unit-unknown", /Did you mean 5 inches/],
    ["5 yaddz", "length", "unit-unknown", /Did you mean 5 yard/],
    ["5 __m", "length", "unit-unknown", /Did you mean 5 m\?/],
    ["5 f", "length", "unit-unknown", /^Use one of the units listed\.$/],
    ["5 mxlx", "length", "unit-unknown", /^Use one of the units listed\.$/],
    ["5 xl", "volume", "unit-unknown", /^Use one of the units listed\.$/],
    ["5 f2t", "area", "unit-unknown", /listed/],
    ["5 f3t", "volume", "unit-unknown", /listed/],
    ["5 xft.4 in", "length", "unit-unknown", /listed/],
    ["18 f,t long", "length", "unit-unknown", /^(?!Leave)/],
    ["5 xx'", "length", "unit-unknown", /^(?!Leave)/],
  ])("%j as %s is refused: %s", (text, dimension, code, mend) => {
    const read = readQuantity(text, dimension);
    if (read.ok) throw new Error(`read as ${read.value}`);
    expect(read.code).toBe(code);
    expect(read.mend).toMatch(mend);
  });

  test.each([
    ["", "an empty text"],
    ["  ", "an empty text"],
    [null, "nothing"],
    [undefined, "nothing"],
    [["18 ft"], "a list"],
    [true, "true"],
    [5, "5"],
    [{}, "a group of values"],
    [() => 0, "a function"],
  ])("%j is told as %s", (given, told) => {
    expect(readQuantity(given, "length")).toMatchObject({ ok: false, given: told });
  });

  test("a text of sixty signs is quoted whole, a longer one is cut", () => {
    const given = (length: number) => {
      const read = readQuantity("x".repeat(length), "length");
      return read.ok ? "" : read.given;
    };
    expect(given(60)).toBe("x".repeat(60));
    expect(given(61)).toBe(`${"x".repeat(60)}...`);
  });
});

describe("significant figures", () => {
  test.each([0, -1, 13, 1.5, Number.NaN])("%s figures are none", (digits) => {
    expect(() => significant(1, digits)).toThrow(/from 1 to 12/);
  });

  test.each([
    [1.5e-6, 3, "0.0000015"],
    [9.99e-7, 3, "9.99e-7"],
    [1e15, 3, "1e15"],
    [9.99e14, 3, "999000000000000"],
    [0, 3, "0"],
    [-0, 3, "0"],
    [0, 1, "0"],
    [1.25, 12, "1.25"],
    [1.25, 1, "1"],
  ])("%s to %s: %s", (value, digits, told) => {
    expect(significant(value, digits)).toBe(told);
  });
});

test("a unit is found with blanks around it", () => {
  expect(convert(foot, "length", " ft ")).toBe(1);
});

test("where the wind comes from, by where it goes to", () => {
  expect(["+x", "-x", "+y", "-y"].map((way) => windFrom(`${way} wind`))).toEqual([
    "from the left",
    "from the right",
    "from the back",
    "from the front",
  ]);
  expect(windFrom("diagonal")).toBe("diagonal");
});
