import { Refusal } from "@hoopstay/core";
import {
  bothOutlines,
  cornerRadii,
  isListed,
  massPerLength,
  outsidePerimeter,
  properties,
  refuseImpossible,
  type Tube,
  toleranceOf,
  weightPerLength,
} from "@hoopstay/section";
import { describe, expect, test } from "vitest";

const hss = { kind: "rectangular", wall: 0.004, convention: "AISC", galvanized: true } as const;
const round = { kind: "round", outside: 0.05, convention: "AISC", galvanized: false } as const;
const angle: Tube = { kind: "angle", legs: [0.06, 0.04], thickness: 0.005 };
const flat: Tube = { kind: "flat", width: 0.1, thickness: 0.01 };

describe("closed forms of solid and hollow sections", () => {
  test("a flat has Z = t b2 / 4 on edge, b t2 / 4 lying, and the outline 2 (b + t)", () => {
    const { plasticModulusX, plasticModulusY } = properties(flat);
    expect(plasticModulusX).toBeCloseTo((0.01 * 0.1 ** 2) / 4, 15);
    expect(plasticModulusY).toBeCloseTo((0.1 * 0.01 ** 2) / 4, 15);
    expect(outsidePerimeter(flat)).toBeCloseTo(0.22, 12);
  });

  test("an angle laid on its other leg exchanges its axes", () => {
    const turned = properties({ kind: "angle", legs: [0.04, 0.06], thickness: 0.005 });
    expect(properties(angle).elasticModulusY).toBe(turned.elasticModulusX);
    expect(properties(angle).plasticModulusY).toBe(turned.plasticModulusX);
    expect(properties(angle).radiusY).toBe(turned.radiusX);
  });

  test("the least radius of a tube is that of its narrow way", () => {
    const { leastRadius, radiusX, radiusY } = properties({ ...hss, depth: 0.1, width: 0.06 });
    expect(leastRadius).toBe(radiusY);
    expect(radiusY).toBeLessThan(radiusX);
  });

  test("both outlines of a rectangular tube: each corner cuts (8 - 2 pi) / 4 of its radius", () => {
    const outer = 2 * (0.1 + 0.06) - (8 - 2 * Math.PI) * 0.008;
    const inner = 2 * (0.092 + 0.052) - (8 - 2 * Math.PI) * 0.004;
    expect(bothOutlines({ ...hss, depth: 0.1, width: 0.06 })).toBeCloseTo(outer + inner, 12);
  });
});

describe("conventions at their edges", () => {
  test("EN 10219-2, annex B: corners of 2, 2.5 and 3 walls up to 6 mm, 10 mm and above", () => {
    const at = (wall: number) => cornerRadii("EN 10219-2", wall);
    expect(at(0.006)).toEqual({ outside: 2, inside: 1 });
    expect(at(0.0061)).toEqual({ outside: 2.5, inside: 1.5 });
    expect(at(0.01)).toEqual({ outside: 2.5, inside: 1.5 });
    expect(at(0.0101)).toEqual({ outside: 3, inside: 2 });
  });

  test("tube of no standard is not listed, round or rectangular; solid sections are", () => {
    expect(isListed({ ...round, wall: 0.002, convention: "other" })).toBe(false);
    expect(isListed({ ...hss, depth: 0.1, width: 0.1, convention: "other" })).toBe(false);
    expect(isListed({ ...hss, depth: 0.1, width: 0.1 })).toBe(true);
    expect(isListed(flat)).toBe(true);
  });

  test("a solid section weighs its nominal weight times both ends of its own tolerance", () => {
    expect(toleranceOf(angle)).not.toEqual(toleranceOf(flat));
    for (const tube of [angle, flat]) {
      const nominal = massPerLength(tube) * 9.80665;
      const { low, high } = toleranceOf(tube);
      expect(weightPerLength(tube).low / nominal).toBeCloseTo(low, 12);
      expect(weightPerLength(tube).high / nominal).toBeCloseTo(high, 12);
    }
    expect(toleranceOf(angle)).toMatchObject({ low: 0.975, high: 1.04 });
  });
});

describe("a section at the edge of what can exist", () => {
  const possible: readonly (readonly [string, Tube])[] = [
    ["a diameter of 2.5 walls", { ...round, wall: 0.02 }],
    ["a square flat", { kind: "flat", width: 0.01, thickness: 0.01 }],
    ["a bar of a hundredth of a millimetre", { kind: "bar", diameter: 1e-5 }],
    ["a bar of ten metres", { kind: "bar", diameter: 10 }],
    ["a side of 4.4 walls", { ...hss, wall: 0.01, depth: 1.1 * 4 * 0.01, width: 0.1 }],
  ];
  test.each(possible)("%s is computed", (_, tube) => {
    expect(() => refuseImpossible(tube)).not.toThrow();
  });

  const impossible: readonly (readonly [string, Tube])[] = [
    ["a bar a little over ten metres", { kind: "bar", diameter: 10.001 }],
    ["a long side that hides a short one", { ...hss, wall: 0.012, depth: 0.2, width: 0.04 }],
    ["a short side that hides in a long one", { ...hss, wall: 0.012, depth: 0.04, width: 0.2 }],
  ];
  test.each(impossible)("%s is refused", (_, tube) => {
    expect(() => refuseImpossible(tube)).toThrow(Refusal);
  });
});
