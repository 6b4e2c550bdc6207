import {
  componentTable,
  cornerOutward,
  type EnvelopeAreas,
  enclosureOf,
  gablePerimeter,
  hillFactorOf,
  shellOf,
  wallInward,
  wallOutward,
} from "@hoopstay/load";
import { describe, expect, test } from "vitest";

const squareFeet = (count: number) => count * 0.3048 ** 2;

describe("components of walls (ASCE 7-16, figure 30.3-1): flat to 10 ft2 and from 500 ft2 on", () => {
  test.each([
    [wallInward, 1, 0.7],
    [wallOutward, -1.1, -0.8],
    [cornerOutward, -1.4, -0.8],
  ])("#%#", (formula, first, last) => {
    const at = (feet: number) => formula.evaluate(squareFeet(feet));
    expect([at(1), at(10)]).toEqual([first, first]);
    expect(at(500)).toBeCloseTo(last, 12);
    expect(at(5000)).toBeCloseTo(last, 12);
    expect(Math.abs(at(11))).toBeLessThan(Math.abs(first));
    expect(Math.abs(at(490))).toBeGreaterThan(Math.abs(last) + 1e-4);
    expect(at(Math.sqrt(10 * 500))).toBeCloseTo((first + last) / 2, 12);
    expect(formula.range).toContain("up to 10 ft2 and from 500 ft2 on");
  });
});

describe("the gable as steep as the arch where it springs", () => {
  const slopeOf = (rise: number) =>
    componentTable(
      shellOf({
        shape: "round",
        span: 5.95,
        rise: rise - 0.025,
        length: 9.95,
        springing: 0,
        hoopDiameter: 0.05,
        hoopCount: 6,
      }),
      "covered",
    ).springSlope;

  test("a circle through springing and crown springs at twice the slope of the chord", () => {
    for (const rise of [0.3, 1, 2, 3]) {
      expect(slopeOf(rise)).toBeCloseTo(2 * Math.atan((2 * rise) / 6), 12);
    }
    expect(slopeOf(3)).toBeCloseTo(Math.PI / 2, 12);
  });

  test("so a rise of a sixth of the span, 37 degrees, has the corner of a gable up to 45", () => {
    expect(gablePerimeter(slopeOf(1)).slope).toBe(45);
    expect(gablePerimeter(slopeOf(0.3)).slope).toBe(27);
    expect(gablePerimeter(slopeOf(3)).slope).toBe(90);
  });
});

describe("ten per cent more than all other openings (ASCE 7-16, 26.2)", () => {
  const gross: EnvelopeAreas = { left: 20, right: 20, front: 10, back: 10, roof: 40 };
  const kind = (front: number, left: number) =>
    enclosureOf({ left, right: 0, front, back: 0, roof: 0 }, gross);

  test("must be exceeded: at just ten both inside pressures run", () => {
    const { kind: name, walls, insideCoefficients } = kind(1.1, 1);
    expect(name).toBe("partially open");
    expect(insideCoefficients).toEqual([0.18, -0.18, 0.55, -0.55]);
    expect(walls.find(({ wall }) => wall === "front")).toMatchObject({
      dominant: false,
      nearlyDominant: true,
    });
    expect(kind(1.1001, 1).kind).toBe("partially enclosed");
  });

  test("is a share of the other openings, however large they are", () => {
    expect(kind(2.1, 2).insideCoefficients).toEqual([0.18, -0.18, 0.55, -0.55]);
    expect(kind(2.21, 2).insideCoefficients).toEqual([0.55, -0.55]);
    expect(kind(0.52, 0.5).insideCoefficients).toEqual([0.18, -0.18, 0.55, -0.55]);
    expect(kind(0.56, 0.5).insideCoefficients).toEqual([0.55, -0.55]);
  });
});

test("on the crest of an escarpment: the upwind side's row, and nothing off for distance", () => {
  const crest = { shape: "escarpment", height: 10, halfLength: 40, distance: 0 } as const;
  // ASCE 7-16, figure 26.8-1: 0.85 H/L_h in exposure C, mu 1.5 upwind, gamma 2.5.
  const factor = hillFactorOf(crest, "C", 4);
  expect(factor).toMatchObject({ mu: 1.5, k2: 1 });
  expect(factor.kzt).toBeCloseTo((1 + 0.85 * 0.25 * Math.exp(-2.5 * 0.1)) ** 2, 12);
});
