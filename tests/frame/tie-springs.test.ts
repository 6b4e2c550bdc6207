import { describe, expect, test } from "vitest";
import { strayOf } from "../../packages/frame/src/plan/tie-springs.ts";

/** Sixteen numbers, nought but for some: row, column, value. */
const stiffness = (...entries: readonly (readonly [number, number, number])[]) => {
  const sixteen = Array.from({ length: 16 }, () => 0);
  for (const [row, column, value] of entries) sixteen[4 * row + column] = value;
  return sixteen;
};

describe("how far a stiffness is from symmetry, ways weighed with a span of 5 m", () => {
  const against = [3, 3, 1000] as const;
  test.each([
    ["a turn by a turn", [1, 3, 8], 8 / 1000],
    ["a turn by a way", [0, 1, 8], (8 * 5) / 1000],
    ["a way by a turn, which resists sway too", [3, 2, 8], (8 * 5) / 1000],
  ] as const)("%s", (_, entry, expected) => {
    expect(strayOf(stiffness(entry, against), 5)).toBeCloseTo(expected, 12);
  });

  test("force where both feet sway, as a part of that of one foot", () => {
    const feet = stiffness([0, 0, 50], [0, 2, -49], [2, 0, -49], [2, 2, 49]);
    expect(strayOf(feet, 5)).toBeCloseTo(1 / 50, 12);
    expect(strayOf(stiffness([1, 3, 8], [0, 0, 50], [0, 2, -50], [2, 0, -50], [2, 2, 50]), 5)).toBe(
      8 / (50 * 25),
    );
  });

  test("of none: nought", () => {
    expect(strayOf(stiffness(), 5)).toBe(0);
  });
});
