import { describe, expect, test } from "vitest";
import { greatestOf } from "../../packages/house/src/chain/greatest.ts";
import { greaterFirst } from "../../packages/house/src/review/greater-first.ts";

describe("what rounding alone tells apart stays in its order", () => {
  test.each([
    [2, 1, -1],
    [1, 2, 1],
    [1, 1 + 1e-12, 0],
    [0, 0, 0],
    [5, Number.NEGATIVE_INFINITY, -1],
    [Number.POSITIVE_INFINITY, 5, -1],
    [5, Number.POSITIVE_INFINITY, 1],
    [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0],
  ])("%d before %d: %d", (a, b, order) => {
    expect(greaterFirst(a, b)).toBe(order);
  });

  test("the first of those alike is the greatest, and a greater one after it still wins", () => {
    const same = (value: number): number => value;
    expect(greatestOf([3, 7, 7 + 1e-12], same, same)).toBe(7);
    expect(greatestOf([7, 7.1], same, same)).toBe(7.1);
    expect(greatestOf([], same, same)).toBeNull();
  });
});
