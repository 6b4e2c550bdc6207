import {
  type Convention,
  isListed,
  massPerLength,
  poundSteelDensity,
  properties,
  type Tube,
  toleranceOf,
  weightPerLength,
  zincOnOneFace,
} from "@hoopstay/section";
import { describe, expect, test } from "vitest";
import { conventions } from "./arbitrary-tube.ts";

const inch = 0.0254;
const gravity = 9.80665;

const round = (wall: number, convention: Convention, galvanized = false): Tube => ({
  kind: "round",
  outside: 1.9 * inch,
  wall: wall * inch,
  convention,
  galvanized,
});

const ring = (wall: number) => Math.PI * (1.9 - wall) * wall * inch ** 2;

describe("weight per length", () => {
  test("490 lb/ft3 by the exact pound and foot", () => {
    expect(poundSteelDensity.value).toBeCloseTo(7849.047_053_240_468, 9);
  });

  test.each(conventions)("%s: the low weight is the wall at the thin end, without zinc", (rule) => {
    const thin = rule === "other" ? 0.83 : 0.9;
    const density = rule.startsWith("EN") ? 7850 : (490 * 0.453_592_37) / 0.3048 ** 3;
    const low = density * gravity * ring(0.065 * thin);
    expect(weightPerLength(round(0.065, rule, true)).low).toBeCloseTo(low, 9);
  });

  test("the high weight is the wall at the thick end and zinc on both faces", () => {
    const zinc = 7140 * gravity * 45e-6 * 2 * Math.PI * (1.9 - 0.065) * inch;
    const steel = 7850 * gravity * ring(0.065 * 1.1);
    expect(weightPerLength(round(0.065, "EN 10219-2", true)).high).toBeCloseTo(steel + zinc, 9);
    expect(weightPerLength(round(0.065, "EN 10219-2")).high).toBeCloseTo(steel, 9);
  });

  test("zinc steps up at 1/8 in, however the wall is written", () => {
    expect(zincOnOneFace(0.003_174)).toBe(45e-6);
    for (const wall of [0.125 * inch, 0.003_175, (1 / 8) * inch]) {
      expect(zincOnOneFace(wall)).toBe(75e-6);
    }
  });

  test("mass does not depend on the design wall", () => {
    expect(massPerLength(round(0.12, "AISC"))).toBe(massPerLength(round(0.12, "ASTM A1085")));
    expect(massPerLength(round(0.12, "AISC"))).toBe(massPerLength(round(0.12, "other")));
    expect(properties(round(0.12, "AISC")).area).toBeLessThan(
      properties(round(0.12, "ASTM A1085")).area,
    );
  });

  test("only tube outside the listed standards is marked so", () => {
    for (const rule of conventions) expect(isListed(round(0.12, rule))).toBe(rule !== "other");
    expect(isListed({ kind: "bar", diameter: 0.01 })).toBe(true);
  });

  test("every tolerance names its source", () => {
    const solid: Tube[] = [
      { kind: "bar", diameter: 0.01 },
      { kind: "flat", width: 0.05, thickness: 0.005 },
      { kind: "angle", legs: [0.05, 0.05], thickness: 0.005 },
    ];
    for (const tube of [...solid, ...conventions.map((rule) => round(0.12, rule))]) {
      const { low, high, citation } = toleranceOf(tube);
      expect(low).toBeLessThan(1);
      expect(high).toBeGreaterThan(1);
      expect(citation.place.length).toBeGreaterThan(10);
    }
  });
});
