import {
  asd,
  type LineTerms,
  type SlidingTerms,
  type SlidingWind,
  slideAt,
  straightLimit,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  kinks,
  straightResistance,
  straightSlide,
} from "../../packages/stability/src/straight-slide.ts";
import { between, combination, holds, seed, sixteenths } from "./arbitrary-holding.ts";

const design = 100;
const none = Number.POSITIVE_INFINITY;

/** A rail that holds so much by weight and by its anchors, N m. */
const rail = (weightMoment: number, anchorMoment: number): LineTerms => ({
  weightMoment,
  anchorMoment,
  slopeMoment: 0,
});
const slack = rail(1e9, 0);

interface Level {
  readonly deadNormal?: number;
  readonly friction?: number;
  readonly anchors?: SlidingTerms["terms"]["holding"]["anchors"];
  readonly right?: LineTerms;
  readonly left?: LineTerms;
}

/** Sliding on level ground. */
function sliding({
  deadNormal = 6000,
  friction = 0.5,
  anchors = [],
  right = slack,
  left = slack,
}: Level): SlidingTerms {
  const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
  const holding = { weight, anchors, slope: null, friction };
  const terms = {
    holding,
    combination: asd,
    deadNormal,
    downslope: 0,
    anchorDown: 0,
    sideways: true,
  };
  return { terms, right, left };
}

const windOf = (of: Partial<SlidingWind>): SlidingWind => ({
  fx: 0,
  fy: 0,
  fz: 0,
  turnRight: 0,
  turnLeft: 0,
  ...of,
});

/** A tether that pulls level as hard as it pulls down, toward +x or -x. */
const aslant = (x: number, way: 1 | -1, pull: number) => ({
  x,
  y: 0,
  pull,
  toward: [way * Math.SQRT1_2, 0, -Math.SQRT1_2] as const,
});

/** A tether whose level part, N, toward +x or -x is exact. */
const level = (x: number, way: 1 | -1, part: number) => ({
  x,
  y: 0,
  pull: 2 * part,
  toward: [way / 2, 0, -Math.sqrt(0.75)] as const,
});

const limitOf = (of: Level, wind: Partial<SlidingWind>, below?: number) =>
  straightLimit(straightSlide(sliding(of), windOf(wind)), design, below);

describe("the limit of a straight slide, in closed form", () => {
  test("friction alone: mu D / (gamma (h + mu v))", () => {
    expect(limitOf({}, { fx: 3, fy: 4 })).toBeCloseTo((0.5 * 6000) / (0.6 * 5), 9);
    expect(limitOf({}, { fx: 5, fz: 10 })).toBeCloseTo((0.5 * 6000) / (0.6 * (5 + 5)), 9);
    expect(limitOf({}, { fx: 5, fz: -4 })).toBeCloseTo((0.5 * 6000) / (0.6 * (5 - 2)), 6);
    expect(limitOf({}, { fx: 5, fz: -10 })).toBe(none);
    expect(limitOf({}, { fz: 10 })).toBe(none);
    expect(limitOf({ friction: 0 }, { fx: 1 })).toBe(0);
  });

  test("a tether against the wind adds its pull, when contact has ended too", () => {
    const anchors = [aslant(-2, -1, 1000 * Math.SQRT2)];
    expect(limitOf({ anchors }, { fx: 5 })).toBeCloseTo((3000 + 1000) / (0.6 * 5), 9);
    expect(limitOf({ anchors, friction: 0 }, { fx: 5 })).toBeCloseTo(1000 / (0.6 * 5), 9);
    // Contact ends at 1000 Pa; the tether alone holds 1000 N of 0.6 times 0.5 q up to 3333 Pa.
    const lifted = limitOf({ anchors, friction: 0.1 }, { fx: 0.5, fz: 10 });
    expect(lifted).toBeCloseTo(1000 / (0.6 * 0.5), 9);
  });

  test("a tether that pulls downwind takes as much as turning asks of it, and no more", () => {
    const anchors = [aslant(-2, 1, 1000 * Math.SQRT2)];
    const right = rail(600, 1200);
    // Turning asks nothing up to 100 Pa and all from 300 Pa on: 600 + 1200 N m of 0.6 times 10 q.
    const wind = { fx: 1, turnRight: 10 };
    const grips = (friction: number) => limitOf({ anchors, right, friction }, wind);
    const found = kinks(sliding({ right }), windOf(wind));
    expect(found.filter((q) => q < 1e6)).toEqual([expect.closeTo(100, 9), expect.closeTo(300, 9)]);
    expect(grips(0.005)).toBeCloseTo(30 / 0.6, 9);
    // 0.6 q + 1000 (0.6 10 q - 600) / 1200 = 5.6 q - 500 on the way.
    expect(grips(0.05)).toBeCloseTo((300 + 500) / (0.6 + 5), 9);
    expect(grips(0.25)).toBeCloseTo((1500 - 1000) / 0.6, 9);
  });

  test("where no anchor moment grows the need it sets in at once, and the house slides there", () => {
    const anchors = [aslant(-2, 1, 1000 * Math.SQRT2)];
    const wind = { fx: 1, turnRight: 10 };
    const right = rail(600, 0);
    expect(limitOf({ anchors, right, friction: 0.1 }, wind)).toBeCloseTo(100, 9);
    expect(limitOf({ anchors, right, friction: 0.25 }, wind)).toBeCloseTo(500 / 0.6, 9);
  });

  test("a need that nothing holds back is there from no pressure on", () => {
    const anchors = [aslant(-2, 1, 1000 * Math.SQRT2)];
    const right = rail(0, 0);
    for (const turnRight of [1e-3, 10]) {
      const wind = { fx: 1, turnRight };
      expect(limitOf({ anchors, right, friction: 0.25 }, wind)).toBeCloseTo(500 / 0.6, 6);
      expect(limitOf({ anchors, right, friction: 0.1 }, wind)).toBe(0);
      expect(limitOf({ anchors, right, friction: 0.1 }, wind, 50)).toBe(0);
    }
    expect(limitOf({ anchors, right, friction: 0.1 }, { fx: 1 })).toBeCloseTo(600 / 0.6, 6);
  });

  test("between the rails a tether is asked by the one that needs more", () => {
    const anchors = [aslant(0, 1, 1000 * Math.SQRT2)];
    const [right, left] = [rail(600, 1200), rail(1200, 1200)];
    const wind = { fx: 1, turnRight: 10, turnLeft: 10 };
    expect(limitOf({ anchors, right, left, friction: 0.05 }, wind)).toBeCloseTo(800 / 5.6, 9);
    expect(limitOf({ anchors, right: left, left: right, friction: 0.05 }, wind)).toBeCloseTo(
      800 / 5.6,
      9,
    );
    const other = [aslant(2, 1, 1000 * Math.SQRT2)];
    expect(
      limitOf({ anchors: other, right: slack, left: right, friction: 0.05 }, wind),
    ).toBeCloseTo(800 / 5.6, 9);
  });

  test("pressed down it holds again beyond: the first failure counts, however far it is looked", () => {
    const anchors = [aslant(-2, 1, 1000 * Math.SQRT2)];
    const wind = { fx: 1, fz: -10, turnRight: 10 };
    // Grip 600 + 3 q less 0.6 q; 1000 N pull along from 100 Pa on: held again from 167 Pa on.
    const atOnce = { anchors, right: rail(600, 0), deadNormal: 1200 };
    // Grip 200 + 3 q; the pull grows from 100 to 300 Pa: 700 - 2.6 q, held again from 333 Pa on.
    const growing = { anchors, right: rail(600, 1200), deadNormal: 400 };
    for (const [of, limit] of [
      [atOnce, 100],
      [growing, 700 / 2.6],
    ] as const) {
      expect(limitOf(of, wind)).toBeCloseTo(limit, 9);
      for (const below of [1.001 * limit, 320, 500, 1e4, none]) {
        expect(limitOf(of, wind, below), `${below}`).toBeCloseTo(limit, 9);
      }
      expect(limitOf(of, wind, 0.999 * limit)).toBe(none);
    }
    expect(limitOf({ ...growing, deadNormal: 600 }, wind, 500)).toBe(none);
    expect(limitOf({ ...growing, deadNormal: 600 }, wind)).toBe(none);
  });

  test("what the slope adds to turning comes off what holds a rail", () => {
    const right = { ...rail(600, 1200), slopeMoment: 60 };
    const found = kinks(sliding({ right }), windOf({ fx: 1, turnRight: 10 }));
    expect(found.filter((q) => q < 1e6)).toEqual([expect.closeTo(90, 9), expect.closeTo(290, 9)]);
  });

  test("a jump down where it just holds is a failure, though it is pressed down again", () => {
    // Grip 280 + 3 q less 0.6 q of push; left tethers pull along 5 N per Pa from 100 to 300 Pa, where
    // nothing is left and right ones take 500 N at once: held again from 508 Pa on.
    const of = {
      anchors: [level(-2, 1, 1000), level(2, 1, 500)],
      right: rail(600, 1200),
      left: rail(1800, 0),
      deadNormal: 560,
    };
    const wind = { fx: 1, fz: -10, turnRight: 10, turnLeft: 10 };
    expect(limitOf(of, wind)).toBeCloseTo(300, 8);
    expect(limitOf({ ...of, deadNormal: 560 + 1e-9 }, wind)).toBeCloseTo(300, 8);
    expect(limitOf({ ...of, deadNormal: 560 + 1010 }, wind)).toBe(none);
    expect(slideAt(sliding(of), windOf(wind), 400).resistance).toBeLessThan(0.6 * 400 - 200);
  });

  test("what just holds does not slide", () => {
    // Pressed down it grips with as much as it is pushed by, exactly: 0.5 0.6 8 q = 0.6 4 q.
    const wind = { fx: 4, fz: -8, turnRight: 10, turnLeft: 10 };
    const bare = { deadNormal: 0, left: rail(600, 0) };
    expect(limitOf(bare, wind)).toBe(none);
    expect(limitOf(bare, { ...wind, fz: -10 })).toBe(none);
    expect(limitOf({ deadNormal: 0 }, { fx: 4, fz: -8 })).toBe(none);
    // Until a tether pulls along from 300 Pa on.
    const pulled = { ...bare, anchors: [level(-2, 1, 16)], right: rail(1800, 0) };
    expect(limitOf(pulled, wind)).toBeCloseTo(300, 9);
    expect(limitOf(pulled, wind, 200)).toBe(none);
    // Of which 16 N of weight hold all.
    expect(limitOf({ ...pulled, deadNormal: 32 }, wind)).toBe(none);
    expect(limitOf({ ...pulled, deadNormal: 31 }, wind)).toBeCloseTo(300, 9);
  });

  test("a limit at the bound is not below it", () => {
    // Grip 0.5 (3600 + 2400) N and push 3000 N at 1000 Pa.
    const wind = { fx: 5, fz: -4 };
    expect(limitOf({ deadNormal: 3600 }, wind)).toBeCloseTo(1000, 9);
    expect(limitOf({ deadNormal: 3600 }, wind, 1000)).toBe(none);
    // 1000 N pull along past 100 Pa.
    const anchors = [level(-2, 1, 1000)];
    const atOnce = { anchors, right: rail(600, 0), deadNormal: 1200 };
    const pressed = { fx: 1, fz: -10, turnRight: 10 };
    expect(limitOf(atOnce, pressed)).toBeCloseTo(100, 9);
    expect(limitOf(atOnce, pressed, 100)).toBe(none);
  });

  test("in any unit of pressure: wind k times as strong, the limit one kth", () => {
    const anchors = [level(-2, 1, 1000)];
    for (const k of [1e-14, 1e14]) {
      const wind = windOf({ fx: k, turnRight: k });
      const slide = straightSlide(sliding({ anchors, right: rail(0, 0), friction: 0.25 }), wind);
      expect((straightLimit(slide, design / k) * k) / (500 / 0.6)).toBeCloseTo(1, 9);
    }
  });

  test("in a calm friction alone resists, and nothing slides", () => {
    const anchors = [level(-2, 1, 1000), level(2, -1, 1000)];
    const right = rail(0, 0);
    const calm = straightSlide(sliding({ anchors, right }), windOf({ fz: 10, turnRight: 1 }));
    expect(straightResistance(calm, 100)).toBeCloseTo(0.5 * (6000 - 600), 9);
    for (const fz of [-10, 0, 10]) {
      expect(limitOf({ anchors, right }, { fz, turnRight: 1 })).toBe(none);
      expect(limitOf({ anchors, right }, { fz, turnRight: 1 }, 1e4)).toBe(none);
    }
  });

  test("only a limit below a bound is told", () => {
    for (const wind of [{ fx: 5 }, { fx: 5, fz: 3 }, { fx: 5, fz: -3 }]) {
      const limit = limitOf({}, wind);
      expect(limitOf({}, wind, 1.001 * limit)).toBeCloseTo(limit, 9);
      expect(limitOf({}, wind, 0.999 * limit)).toBe(none);
      expect(limitOf({}, wind, none)).toBeCloseTo(limit, 9);
    }
  });
});

test(`nothing slides below the limit, and it does beyond (seed ${seed})`, () => {
  const moment = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40_000 }));
  const rails = fc.record({
    weightMoment: moment,
    anchorMoment: moment,
    slopeMoment: fc.constant(0),
  });
  const tether = fc
    .record({ x: fc.constantFrom(-2, 0, 2), pull: between(100, 9000), side: between(-3, 3) })
    .map(({ x, pull, side }) => ({
      x,
      y: 0,
      pull,
      toward: [0.6 * Math.cos(side), 0.6 * Math.sin(side), -0.8] as const,
    }));
  const terms = fc
    .record({
      anchors: fc.array(tether, { minLength: 1, maxLength: 4 }),
      friction: fc.constantFrom(0, 0.15, 0.4),
      deadNormal: between(500, 20_000),
      right: rails,
      left: rails,
      by: combination,
    })
    .map(({ by, ...of }): SlidingTerms => {
      const made = sliding(of);
      return { ...made, terms: { ...made.terms, combination: by } };
    });
  const wind: fc.Arbitrary<SlidingWind> = fc.record({
    fx: sixteenths(-60, 60),
    fy: sixteenths(-60, 60),
    fz: sixteenths(-60, 120),
    turnRight: sixteenths(-100, 300),
    turnLeft: sixteenths(-100, 300),
  });
  holds(
    fc.property(
      fc.array(fc.tuple(terms, wind, between(0.1, 1.9)), { minLength: 15, maxLength: 15 }),
      (many) => {
        for (const each of many) looked(...each);
      },
    ),
    30,
  );

  function looked(of: SlidingTerms, one: SlidingWind, share: number): void {
    const slide = straightSlide(of, one);
    const limit = straightLimit(slide, design);
    const size = of.terms.holding.anchors.reduce(
      (sum, { pull }) => sum + pull,
      of.terms.deadNormal,
    );
    const excess = (q: number) => {
      const { demand, resistance } = slideAt(of, one, q);
      return (demand - resistance) / size;
    };
    const end = Math.min(limit, 1000 * design);
    for (let place = 0; place < 200; place += 1) {
      const q = (end * place) / 200;
      if (excess(q) > 1e-9) throw new Error(`slides at ${q}, below ${limit}`);
    }
    if (limit === none || limit === 0) return;
    expect(excess(limit * (1 + 1e-8))).toBeGreaterThan(-1e-8);
    const told = straightLimit(slide, design, share * limit);
    if (share > 1 + 1e-9) expect(Math.abs(told / limit - 1)).toBeLessThan(1e-9);
    else if (share < 1 - 1e-9) expect(told).toBe(none);
  }
});
