import { describe, expect, test } from "vitest";
import { eliminate, reduce, substituteBack } from "../../packages/frame/src/hoop/eliminate.ts";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));

/** Three springs in a row from the ground, of stiffness 1, 2 and 4: what they are to three masses. */
const chain = () => Float64Array.from([3, -2, 0, 0, 6, -4, 0, 0, 4]);

describe("elimination of a symmetric matrix", () => {
  test("springs in a row: a force on the last stretches all", () => {
    const matrix = chain();
    expect(eliminate(matrix, 3, 3)).toBe(true);
    const right = Float64Array.from([0, 0, 4]);
    reduce(matrix, 3, 3, right);
    substituteBack(matrix, 3, 3, right);
    expect([...right]).toEqual(near(4, 4 + 2, 4 + 2 + 1));
  });

  test("forces on each add up", () => {
    const matrix = chain();
    eliminate(matrix, 3, 3);
    const right = Float64Array.from([1, 2, 4]);
    reduce(matrix, 3, 3, right);
    substituteBack(matrix, 3, 3, right);
    expect([...right]).toEqual(near(7, 7 + 6 / 2, 7 + 6 / 2 + 4 / 4));
  });

  test("condensed to the last: springs in series, and the others follow it", () => {
    const matrix = chain();
    expect(eliminate(matrix, 3, 2)).toBe(true);
    const series = 1 / (1 / 1 + 1 / 2 + 1 / 4);
    expect(matrix[8]).toBeCloseTo(series, 12);
    const moved = Float64Array.from([0, 0, 7]);
    substituteBack(matrix, 3, 2, moved);
    expect([...moved]).toEqual(near(4, 6, 7));
    const loaded = Float64Array.from([7, 0, 0]);
    reduce(matrix, 3, 2, loaded);
    // The last held: 7 N on the first, between 1 to the ground and 2 and 4 in series to the last.
    const beyond = 1 / (1 / 2 + 1 / 4);
    expect(-(loaded[2] ?? NaN)).toBeCloseTo((-7 * beyond) / (1 + beyond), 12);
  });

  test("condensed to the last two: a force on the first goes to its neighbour alone", () => {
    const matrix = chain();
    expect(eliminate(matrix, 3, 1)).toBe(true);
    expect([matrix[4], matrix[5], matrix[8]]).toEqual(near(1 / (1 / 1 + 1 / 2) + 4, -4, 4));
    const loaded = Float64Array.from([6, 5, 7]);
    reduce(matrix, 3, 1, loaded);
    expect([...loaded.subarray(1)]).toEqual(near(5 + (6 * 2) / 3, 7));
  });

  test.each([1, 1e6, 1e-6])("a pivot a ten-billionth of a thousandth of %d is none", (size) => {
    const stands = (rest: number) =>
      eliminate(Float64Array.from([size, size, 0, size * (1 + rest)]), 2, 2);
    expect(stands(2e-13)).toBe(true);
    expect(stands(0.4e-13)).toBe(false);
    expect(stands(0)).toBe(false);
    expect(stands(-1)).toBe(false);
  });

  test("no stiffness at all stands on nothing", () => {
    expect(eliminate(new Float64Array(1), 1, 1)).toBe(false);
    expect(eliminate(new Float64Array(1), 1, 0)).toBe(true);
    expect(eliminate(Float64Array.from([Number.NaN]), 1, 1)).toBe(false);
  });
});
