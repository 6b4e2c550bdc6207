import { type Dimension, dimensions, readQuantity, spellingsOf } from "@hoopstay/core";
import { describe, expect, test } from "vitest";

// Capitals tell a mega from a milli, so they are free only where no prefix can be meant. A test of
// its own for each kind of quantity: its table of spellings is made when it is first read.
const free: Readonly<Record<Dimension, readonly string[]>> = {
  length: ["FT", "Ft.", "INCHES", "YD", "Mil", "METRES", "Centimeter"],
  area: ["SQ FT", "Sqft", "FT2", "Sq. Yd", "SQM"],
  volume: ["GAL", "Gallons", "LITRES", "CU FT", "CuYd"],
  speed: ["MPH", "Miles per Hour", "Ft/S", "KNOTS", "KMH"],
  force: ["LB", "Lbs.", "KIPS", "NEWTONS", "KGF", "Kilograms"],
  moment: ["LB-FT", "Ft-Lb", "KIP-IN"],
  "force-per-length": ["PLF", "LB/FT"],
  pressure: ["PSF", "Psi", "KSI"],
  "mass-per-area": ["OZ/YD2", "GSM"],
  "unit-weight": ["PCF", "LB/FT3"],
  density: ["PCF", "Lb/Ft3"],
  angle: ["DEG", "Degrees", "RAD", "PERCENT"],
  fraction: ["PERCENT"],
};
const bound: Readonly<Record<Dimension, readonly string[]>> = {
  length: ["MM", "Mm", "CM", "KM", "M"],
  area: ["MM2", "Cm2"],
  volume: ["M3"],
  speed: ["KM/H", "M/S", "m/S"],
  force: ["n", "KN", "kn", "KG", "Kg"],
  moment: ["KN-M", "n-m", "NM", "KNM"],
  "force-per-length": ["KN/M", "n/m", "KG/M"],
  pressure: ["PA", "pa", "KPA", "kpa", "mPa", "MPA", "gpa", "KN/M2"],
  "mass-per-area": ["G/M2", "KG/M2"],
  "unit-weight": ["KN/M3", "n/m3"],
  density: ["KG/M3"],
  angle: [],
  fraction: [],
};

const read = (spelling: string, dimension: Dimension) => {
  const found = readQuantity(`1 ${spelling}`, dimension);
  return found.ok ? found.value : found.code;
};

describe.each(dimensions)("capitals in a unit of %s", (dimension) => {
  test("are free where no prefix can be meant, and only there", () => {
    for (const spelling of free[dimension]) {
      const small = spelling.toLowerCase();
      expect(read(spelling, dimension), spelling).toBe(read(small, dimension));
      expect(read(spelling, dimension), spelling).toBeGreaterThan(0);
    }
    for (const spelling of bound[dimension]) {
      expect(read(spelling, dimension), spelling).toBe("unit-unknown");
    }
  });

  test("never make another unit of it: a spelling in other capitals is itself or nothing", () => {
    const listed = spellingsOf(dimension);
    for (const spelling of listed) {
      for (const other of [spelling.toUpperCase(), spelling.toLowerCase()]) {
        if (listed.includes(other)) continue;
        const same = read(spelling, dimension);
        expect([same, "unit-unknown"], `${other} for ${spelling}`).toContain(
          read(other, dimension),
        );
      }
    }
  });
});
