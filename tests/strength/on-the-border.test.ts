import { Chapter, derived } from "@hoopstay/core";
import { flatOverWallFormula } from "@hoopstay/section";
import {
  amplifiedMoment,
  bendingStrength,
  compressionStrength,
  greatestSlenderness,
  memberSection,
  memberStrengths,
  momentAmplifier,
  type Steel,
  slendernessLimits,
  tensionStrength,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { box, covered, everyLength, ofKind, round } from "./member-examples.ts";

/** E/F_y 625 and walls that are powers of two: a ratio can stand on its border to the last bit. */
const steel: Steel = {
  yieldStrength: 320e6,
  tensileStrength: 400e6,
  modulus: 200e9,
  shearModulus: 77e9,
  citation: derived("example"),
  words: "example",
  listed: true,
};
const wall = 1 / 512;
const limitOf = (name: keyof typeof slendernessLimits) =>
  slendernessLimits[name].evaluate(steel.modulus, steel.yieldStrength);
const sideOf = (ratio: number) => (ratio + 3) * wall;
const tubeOf = (ratio: number) => round(ratio * wall, wall);
const workedIds = (work: (sheet: Chapter) => unknown) => {
  const sheet = new Chapter("member", "a member");
  work(sheet);
  return sheet.steps.map(({ formula }) => formula.id);
};

describe("a ratio just on its border belongs to the side that the standard prints", () => {
  test("F8: D/t up to lambda_p is compact and yields, from there the wall buckles", () => {
    const limit = limitOf("roundCompact");
    const at = (ratio: number) => covered(bendingStrength(tubeOf(ratio), "x", steel, 1)).id;
    expect([0.5 * limit, limit, 1.001 * limit].map(at)).toEqual([
      "bending-yield",
      "bending-yield",
      "local-buckling",
    ]);
  });

  test("F8: D/t up to lambda_r is noncompact, (0.021 E/(D/t) + F_y) S", () => {
    const limit = limitOf("roundNoncompact");
    const { elasticModulusX } = tubeOf(limit);
    const noncompact = ((0.021 * steel.modulus) / limit + steel.yieldStrength) * elasticModulusX;
    const { nominal } = covered(bendingStrength(tubeOf(limit), "x", steel, 1));
    expect(nominal / noncompact).toBeCloseTo(1, 12);
  });

  test("D/t has to be less than 0.45 E/F_y, in bending and in compression", () => {
    const limit = limitOf("roundCovered");
    const short = { bucklingX: 0.01, bucklingY: 0.01 };
    for (const [ratio, inside] of [
      [limit * (1 - 1e-9), true],
      [limit, false],
    ] as const) {
      expect(bendingStrength(tubeOf(ratio), "x", steel, 1).covered).toBe(inside);
      expect(compressionStrength(tubeOf(ratio), steel, short).covered).toBe(inside);
    }
  });

  test("F7: compact walls, the border included, need no step of local buckling", () => {
    const flange = "noncompact-flange-moment";
    const web = "noncompact-web-moment";
    const [wide, tall] = [limitOf("flangeCompact"), limitOf("webCompact")];
    const steps = (depth: number, width: number) =>
      workedIds((sheet) =>
        bendingStrength(box(sideOf(depth), sideOf(width), wall), "x", steel, 0.01, sheet),
      );
    expect(flatOverWallFormula.evaluate(sideOf(wide), wall)).toBe(wide);
    expect(flatOverWallFormula.evaluate(sideOf(tall), wall)).toBe(tall);
    for (const ratio of [0.8 * wide, wide]) expect(steps(30, ratio)).not.toContain(flange);
    expect(steps(30, 1.01 * wide)).toContain(flange);
    for (const ratio of [0.8 * tall, tall]) expect(steps(ratio, 20)).not.toContain(web);
    expect(steps(1.01 * tall, 20)).toContain(web);
  });

  test("F7: webs up to lambda_r are covered", () => {
    const limit = limitOf("webNoncompact");
    const at = (ratio: number) =>
      bendingStrength(box(sideOf(ratio), sideOf(20), wall), "x", steel, 0.01).covered;
    expect(flatOverWallFormula.evaluate(sideOf(limit), wall)).toBe(limit);
    expect([at(limit), at(limit * (1 + 1e-9))]).toEqual([true, false]);
  });

  const bar = ofKind(memberSection({ kind: "bar", diameter: 0.02 }), "bar");
  const radius = 1 / 64;
  const thick = { ...bar, radiusX: radius, radiusY: radius };

  test("E3: up to 4.71 sqrt(E/F_y) a member buckles with yielding", () => {
    const length = limitOf("inelasticBuckling") * radius;
    const lengths = { bucklingX: length, bucklingY: length };
    expect(greatestSlenderness(thick, lengths)).toBe(limitOf("inelasticBuckling"));
    const stress = steel.yieldStrength * 0.658 ** (4.71 ** 2 / Math.PI ** 2);
    const { nominal } = covered(compressionStrength(thick, steel, lengths));
    expect(nominal / (stress * bar.area)).toBeCloseTo(1, 9);
  });

  test("E2: a slenderness of 200 is not yet told, more is", () => {
    const told = (slenderness: number) =>
      memberStrengths(thick, steel, everyLength(slenderness * radius)).findings;
    expect(told(200)).toEqual([]);
    expect(told(200.001).join()).toContain("L_c/r is 201");
  });
});

describe("the weaker axis in compression", () => {
  const tall = box(0.1, 0.05, 0.003);
  const lengths = (bucklingX: number, bucklingY: number) => ({ bucklingX, bucklingY });
  const told = (x: number, y: number) => {
    const sheet = new Chapter("member", "a member");
    const slenderness = greatestSlenderness(tall, lengths(x, y), sheet);
    return [slenderness, sheet.steps.map(({ note }) => note)];
  };

  test("is that of the greater L_c/r, and the working says which", () => {
    expect(told(2, 2)).toEqual([2 / tall.radiusY, ["about y"]]);
    expect(told(9, 2)).toEqual([9 / tall.radiusX, ["about x"]]);
    const square = box(0.05, 0.05, 0.003);
    const sheet = new Chapter("member", "a member");
    greatestSlenderness(square, lengths(1, 1), sheet);
    expect(sheet.steps.map(({ note }) => note)).toEqual(["about x"]);
  });

  test("decides the strength, by hand for an elastic column: 0.877 pi2 E A (r/L)2", () => {
    for (const [x, y, slenderness] of [
      [9, 9, 9 / tall.radiusY],
      [20, 4, 20 / tall.radiusX],
    ] as const) {
      const elastic = (0.877 * Math.PI ** 2 * steel.modulus * tall.area) / slenderness ** 2;
      const { nominal } = covered(compressionStrength(tall, steel, lengths(x, y)));
      expect(nominal / elastic).toBeCloseTo(1, 9);
    }
  });
});

describe("equal strengths, no force", () => {
  test("of yielding and rupture as strong as each other yielding is named", () => {
    const even = { ...steel, yieldStrength: 1.67 * 2 ** 28, tensileStrength: 2 ** 29 };
    const both = tensionStrength({ area: 1 }, even, { area: 1, shearLag: 1 });
    expect(both).toMatchObject({ id: "tension-yield", ASD: 2 ** 28 });
  });

  test("without compression nothing grows, even where nothing is stiff", () => {
    for (const method of ["ASD", "LRFD"] as const) expect(momentAmplifier(method, 0, 0)).toBe(1);
  });

  test("a moment grows by the ratio, and where the member buckles nought is no way out", () => {
    expect(amplifiedMoment(2, 3)).toBe(6);
    expect(amplifiedMoment(2, -3)).toBe(-6);
    expect(amplifiedMoment(momentAmplifier("LRFD", 2, 2), 0)).toBe(Number.POSITIVE_INFINITY);
  });
});
