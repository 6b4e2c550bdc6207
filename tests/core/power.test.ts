import { derived, power, taken } from "@hoopstay/core";
import { describe, expect, test } from "vitest";

describe("a base to an exponent", () => {
  test.each([
    [2, 10, 1024],
    [2, -3, 0.125],
    [7, 0, 1],
    [-3, 3, -27],
    [0, 2, 0],
  ])("%s to %s by whole factors, exactly", (base, exponent, value) => {
    expect(power(base, exponent)).toBe(value);
  });

  test("a root by logarithms: 32 to 0.4 is 4, 32 to -0.4 a quarter", () => {
    expect(power(32, 0.4)).toBeCloseTo(4, 13);
    expect(power(32, -0.4)).toBeCloseTo(0.25, 14);
    expect(power(9, 0.5)).toBeCloseTo(3, 13);
  });
});

test("a number taken as it stands says where it comes from, and gives itself", () => {
  const found = taken(
    "found by search",
    "q",
    "q_c",
    "pressure found",
    1 / 3,
    "pressure",
    derived("x"),
  );
  expect(found).toMatchObject({
    origin: "found by search",
    id: "q",
    symbol: "q_c",
    name: "pressure found",
    measure: "pressure",
    arguments: [],
    expression: "0.3333333333",
    value: 1 / 3,
  });
  expect(found.evaluate()).toBe(1 / 3);
});
