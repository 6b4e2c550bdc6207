import { groundSprings, tributaryLengths } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear, heldRail } from "./held-rail.ts";

describe("ground springs", () => {
  const bed = { modulus: 20e6 * 0.1, greatestPush: 47_880 * 0.1 };
  const stations = [0, 0.4, 1.6, 2.8, 4];

  test("the whole length bears once", () => {
    expect(tributaryLengths(4, stations)).toEqual(
      [0.2, 0.8, 1.2, 1.2, 0.6].map((part) => expect.closeTo(part, 12)),
    );
    const whole = groundSprings(4, stations, bed).reduce((sum, { cap = 0 }) => sum + cap, 0);
    expectNear([whole], [4 * bed.greatestPush], 1e-12);
  });

  test("a stiff rail pressed evenly settles evenly, by load over modulus", () => {
    const rail = { length: 4, stiffness: 1e10 };
    const { supports } = heldRail(
      rail,
      { uniform: -900 },
      groundSprings(
        4,
        Array.from({ length: 21 }, (_, i) => i / 5),
        bed,
      ),
    );
    const middle = supports[10]?.deflection ?? 0;
    expectNear([middle], [-900 / bed.modulus], 1e-6);
  });

  test("stations that do not rise are refused", () => {
    expect(() => groundSprings(4, [0, 2, 2], bed)).toThrow("out-of-range");
  });
});
