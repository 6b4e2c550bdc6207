import { endBayShares, footShares, footSharesAt, turningShares } from "@hoopstay/load";
import { describe, expect, test } from "vitest";

const near = (shares: Float64Array, expected: readonly number[]) => {
  expect(shares).toHaveLength(expected.length);
  for (const [place, value] of expected.entries()) expect(shares[place]).toBeCloseTo(value, 12);
};
const momentOf = (shares: Float64Array, feet: readonly number[]) =>
  shares.reduce((sum, share, place) => sum + share * (feet[place] ?? 0), 0);
const sumOf = (shares: Float64Array) => shares.reduce((sum, share) => sum + share, 0);

describe("what each hoop foot takes, by the lever of its bay", () => {
  test("a load from end to end: half of each bay beside a foot", () => {
    near(footShares([0, 2, 5], 0, 5), [1, 2.5, 1.5]);
  });

  test("a load that begins and ends within bays", () => {
    near(footShares([0, 1, 2, 3], 0.5, 2.5), [0.125, 0.875, 0.875, 0.125]);
    near(footShares([0, 1, 2, 3], 1.25, 1.75), [0, 0.25, 0.25, 0]);
    near(footShares([0, 2], 0.5, 1.5), [0.5, 0.5]);
  });

  test("what overhangs turns about the end hoop, on the last two", () => {
    near(footShares([0, 2, 5], -1, 6), [2.25, 0.75 + 4 / 3, 8 / 3]);
  });

  test("sum and moment are kept, wherever the load lies", () => {
    const feet = [-3, -1.2, 0.4, 2, 5];
    for (const [from, to] of [
      [-4, 6],
      [-2, 0],
      [0.4, 2],
      [3, 5.5],
      [-3.5, -3.2],
    ] as const) {
      const shares = footShares(feet, from, to);
      expect(sumOf(shares)).toBeCloseTo(to - from, 12);
      expect(momentOf(shares, feet)).toBeCloseTo((to * to - from * from) / 2, 12);
    }
  });

  test("a load at one place, on a foot, between two and beyond both ends", () => {
    const feet = [0, 2, 5];
    near(footSharesAt(feet, 2.5), [0, 5 / 6, 1 / 6]);
    near(footSharesAt(feet, 0.5), [0.75, 0.25, 0]);
    near(footSharesAt(feet, 2), [0, 1, 0]);
    near(footSharesAt(feet, -1), [1.5, -0.5, 0]);
    near(footSharesAt(feet, 6), [0, -1 / 3, 4 / 3]);
    near(footSharesAt([0, 1, 2, 3], 2.5), [0, 0, 0.5, 0.5]);
  });

  test("turning forces have no sum and turn by one, each as its place from the middle", () => {
    near(turningShares([0, 2, 4]), [-0.25, 0, 0.25]);
    const feet = [1, 2, 7];
    expect(sumOf(turningShares(feet))).toBeCloseTo(0, 12);
    expect(momentOf(turningShares(feet), feet)).toBeCloseTo(1, 12);
  });

  test("a couple in an end bay is a force pair at its two hoops", () => {
    near(endBayShares([0, 2, 5], "front"), [0, -1 / 3, 1 / 3]);
    near(endBayShares([0, 2, 5], "back"), [-0.5, 0.5, 0]);
  });
});
