import { gaugeTableNames, gaugeTables, printedThickness, wallOfGauge } from "@hoopstay/section";
import { describe, expect, test } from "vitest";

const inch = 0.0254;
const rowsOf = (name: (typeof gaugeTableNames)[number]): readonly (readonly [number, number])[] =>
  gaugeTables[name].rows;

describe("gauge tables", () => {
  test("a gauge is no thickness: 14 gauge means four walls", () => {
    const walls = gaugeTableNames.map((name) => (printedThickness(14, name) ?? 0) / inch);
    const [tube, sheet, coated, statute] = walls;
    expect(tube).toBeCloseTo(0.083, 9);
    expect(sheet).toBeCloseTo(0.0747, 9);
    expect(coated).toBeCloseTo(0.0785, 9);
    expect(statute).toBeCloseTo(0.078125, 9);
  });

  test.each(gaugeTableNames)("%s: a higher number is thinner", (name) => {
    const rows = rowsOf(name);
    for (const [place, [gauge, inches]] of rows.entries()) {
      const next = rows[place + 1];
      if (!next) continue;
      expect(next[0]).toBe(gauge + 1);
      expect(next[1]).toBeLessThan(inches);
    }
  });

  test("the wall of a galvanized gauge is the sheet under the zinc", () => {
    for (const [gauge, inches] of rowsOf("galvanized-sheet")) {
      const wall = wallOfGauge(gauge, "galvanized-sheet") ?? 0;
      expect(wall).toBe(wallOfGauge(gauge, "manufacturers-standard"));
      expect(inches - wall / inch).toBeCloseTo(0.0037, 3);
    }
  });

  test("the sheet gauge is the statute weight over 41.82 lb/ft2 per inch", () => {
    const statute = new Map(rowsOf("us-standard"));
    for (const [gauge, inches] of rowsOf("manufacturers-standard")) {
      const weight = 40 * (statute.get(gauge) ?? 0);
      expect(Math.abs(weight / 41.82 - inches)).toBeLessThan(0.00006);
    }
  });

  test.each([0, 6, 21, 14.5, -14, Number.NaN, Number.POSITIVE_INFINITY])(
    "%s gauge is in no table",
    (gauge) => {
      for (const name of gaugeTableNames) expect(wallOfGauge(gauge, name)).toBeUndefined();
    },
  );

  test("galvanized sheet has no number 7", () => {
    expect(wallOfGauge(7, "galvanized-sheet")).toBeUndefined();
    expect(wallOfGauge(7, "manufacturers-standard")).toBeDefined();
  });
});
