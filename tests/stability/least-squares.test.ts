import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leastSquares } from "../../packages/stability/src/all-at-once/least-squares.ts";
import { between, holds, seed } from "./arbitrary-holding.ts";

const columns = (...of: number[][]) => of.map((one) => Float64Array.from(one));
const solved = (of: number[][], target: number[]) => {
  const found = leastSquares(columns(...of), Float64Array.from(target));
  if (!found) throw new Error("columns that depend on each other");
  return [...found];
};

describe("the nearest sum of columns", () => {
  test("columns along the axes, either way: the target's own parts", () => {
    expect(solved([[1, 0, 0]], [5, 6, 7])[0]).toBeCloseTo(5, 12);
    expect(solved([[-1, 0, 0]], [5, 6, 7])[0]).toBeCloseTo(-5, 12);
    const all = solved(
      [
        [0, 2, 0],
        [0, 0, -4],
      ],
      [5, 6, 8],
    );
    expect(all[0]).toBeCloseTo(3, 12);
    expect(all[1]).toBeCloseTo(-2, 12);
  });

  test("the mean is nearest to many numbers, and a line through points is the textbook's", () => {
    expect(solved([[1, 1, 1, 1]], [1, 2, 3, 10])[0]).toBeCloseTo(4, 12);
    // y = 1, 2, 2 at x = 0, 1, 2: slope sum (x - 1)(y - 5/3) / sum (x - 1)^2 = 1/2, mean 5/3.
    const [at, slope] = solved(
      [
        [1, 1, 1],
        [0, 1, 2],
      ],
      [1, 2, 2],
    );
    expect(slope).toBeCloseTo(1 / 2, 12);
    expect(at).toBeCloseTo(5 / 3 - 1 / 2, 12);
  });

  test("what is handed in stays as it is", () => {
    const [given, target] = [columns([3, 4, 0], [1, 1, 1]), Float64Array.from([1, 2, 3])];
    leastSquares(given, target);
    expect(given.map((one) => [...one])).toEqual([
      [3, 4, 0],
      [1, 1, 1],
    ]);
    expect([...target]).toEqual([1, 2, 3]);
  });

  test("no column, no multiple", () => {
    expect(solved([], [1, 2])).toEqual([]);
  });

  test(`what is left stands square to every column (seed ${seed})`, () => {
    const part = between(-1, 1);
    const column = fc.array(part, { minLength: 5, maxLength: 5 });
    let met = 0;
    holds(
      fc.property(fc.array(column, { minLength: 1, maxLength: 5 }), column, (of, target) => {
        const found = leastSquares(columns(...of), Float64Array.from(target));
        if (!found) return;
        met += 1;
        const rest = target.map((one, row) =>
          of.reduce((sum, each, place) => sum - (found[place] ?? NaN) * (each[row] ?? NaN), one),
        );
        const size = Math.max(1, ...found.map(Math.abs));
        for (const each of of) {
          const product = each.reduce((sum, one, row) => sum + one * (rest[row] ?? NaN), 0);
          expect(Math.abs(product)).toBeLessThan(1e-12 * size);
        }
      }),
    );
    expect(met).toBeGreaterThan(5);
  });

  test("none of columns that depend on each other, or are more than the rows", () => {
    const refused = (...of: number[][]) =>
      expect(leastSquares(columns(...of), Float64Array.from([1, 1]))).toBeNull();
    refused([1, 2], [2, 4]);
    refused([0, 0]);
    refused([1, 0], [0, 1], [1, 1]);
    refused([0, 0.9e-11]);
    for (const size of [1e-11, 1.1e-11]) {
      expect(solved([[0, size]], [1, 1])[0]).toBeCloseTo(1 / size, 0);
    }
    expect(
      solved(
        [
          [1, 0],
          [0, 1],
        ],
        [3, 4],
      ),
    ).toHaveLength(2);
  });
});
