import { Refusal } from "@hoopstay/core";
import {
  properties,
  roundArea,
  roundedOutline,
  roundedRectangleArea,
  roundedRectanglePlasticModulus,
  roundedRectangleSecondMoment,
  roundPlasticModulus,
  roundSecondMoment,
  type Tube,
} from "@hoopstay/section";
import { describe, expect, test } from "vitest";

describe("limits of the section formulas", () => {
  test("a ring whose wall is half its diameter is a solid bar", () => {
    expect(roundArea.evaluate(2, 1)).toBeCloseTo(Math.PI, 12);
    expect(roundSecondMoment.evaluate(2, 1)).toBeCloseTo(Math.PI / 4, 12);
    expect(roundPlasticModulus.evaluate(2, 1)).toBeCloseTo(4 / 3, 12);
  });

  test("a thin ring: A = pi D t, I = pi D3 t / 8, Z = D2 t", () => {
    const t = 1e-7;
    expect(roundArea.evaluate(1, t) / (Math.PI * t)).toBeCloseTo(1, 6);
    expect(roundSecondMoment.evaluate(1, t) / ((Math.PI * t) / 8)).toBeCloseTo(1, 6);
    expect(roundPlasticModulus.evaluate(1, t) / t).toBeCloseTo(1, 6);
  });

  test("a rounded square of half the side is the circle", () => {
    expect(roundedRectangleArea.evaluate(2, 2, 1)).toBeCloseTo(Math.PI, 12);
    expect(roundedRectangleSecondMoment.evaluate(2, 2, 1)).toBeCloseTo(Math.PI / 4, 12);
    expect(roundedRectanglePlasticModulus.evaluate(2, 2, 1)).toBeCloseTo(4 / 3, 12);
    expect(roundedOutline(2, 2, 1)).toBeCloseTo(2 * Math.PI, 12);
  });

  test("without radius it is the rectangle", () => {
    expect(roundedRectangleArea.evaluate(3, 2, 0)).toBe(6);
    expect(roundedRectangleSecondMoment.evaluate(3, 2, 0)).toBe(4.5);
    expect(roundedRectanglePlasticModulus.evaluate(3, 2, 0)).toBe(4.5);
  });

  test("a solid round bar has J = pi d4 / 32 and C = pi d3 / 16", () => {
    const bar = properties({ kind: "bar", diameter: 0.02 });
    expect(bar.torsionConstant / ((Math.PI * 0.02 ** 4) / 32)).toBeCloseTo(1, 12);
    expect(bar.torsionModulus / ((Math.PI * 0.02 ** 3) / 16)).toBeCloseTo(1, 12);
  });
});

const round = { kind: "round", convention: "AISC", galvanized: false } as const;
const square = { kind: "rectangular", depth: 0.05, width: 0.05, galvanized: false } as const;

const refused: readonly (readonly [string, Tube, string])[] = [
  ["no wall", { ...round, outside: 0.04, wall: 0 }, "not-positive"],
  ["a negative diameter", { ...round, outside: -0.04, wall: 0.002 }, "not-positive"],
  ["not a number", { ...round, outside: Number.NaN, wall: 0.002 }, "not-positive"],
  ["a gauge taken for a wall", { ...round, outside: 0.04, wall: 16 }, "out-of-range"],
  ["a wall thicker than the tube takes", { ...round, outside: 0.04, wall: 0.017 }, "out-of-range"],
  ["millimetres taken for metres", { kind: "bar", diameter: 42.4 }, "out-of-range"],
  ["corners that do not fit", { ...square, wall: 0.012, convention: "AISC" }, "out-of-range"],
  [
    "larger European corners that do not fit",
    { ...square, wall: 0.0095, convention: "EN 10219-2" },
    "out-of-range",
  ],
  ["a flat thicker than wide", { kind: "flat", width: 0.01, thickness: 0.02 }, "out-of-range"],
  ["an angle without legs", { kind: "angle", legs: [0.02, 0.01], thickness: 0.01 }, "out-of-range"],
];

describe("sections that cannot exist are refused", () => {
  test.each(refused)("%s", (_, tube, code) => {
    let thrown: unknown;
    try {
      properties(tube);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(Refusal);
    expect((thrown as Refusal).complaints.map((complaint) => complaint.code)).toEqual([code]);
  });
});
