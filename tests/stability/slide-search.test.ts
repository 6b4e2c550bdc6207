import {
  type Combination,
  combinations,
  type LineTerms,
  type SlidingTerms,
  type SlidingWind,
  searchSlideLimit,
  slideAt,
  worstSlideAt,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, holds, seed, sixteenths } from "./arbitrary-holding.ts";

const design = 100;

/** Nought often, or of the size of a house's moments, N m. */
const moment = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40_000 }));
const rail: fc.Arbitrary<LineTerms> = fc.record({
  weightMoment: fc.oneof(between(-2000, 0), moment),
  anchorMoment: moment,
  slopeMoment: moment.map((one) => one / 8),
});

/** A tether on either rail or between them, upright or to any side. */
const tether = fc
  .record({
    x: fc.constantFrom(-2, 0, 2),
    pull: fc.integer({ min: 0, max: 20_000 }),
    level: fc.constantFrom(0, 0.5, 0.8),
    side: fc.oneof(between(-Math.PI, Math.PI), fc.constantFrom(0, Math.PI / 2, Math.PI)),
  })
  .map(({ x, pull, level, side }) => ({
    x,
    y: 0,
    pull,
    toward: [
      level * Math.cos(side),
      level * Math.sin(side),
      -Math.sqrt(1 - level * level),
    ] as const,
  }));

const downhill = between(-Math.PI, Math.PI).map((at) => [Math.cos(at), Math.sin(at)] as const);

/** What holds a house against sliding, no part of it tied to another. */
const termsWith = (slope: fc.Arbitrary<readonly [number, number] | null>) =>
  fc
    .record({
      anchors: fc.array(tether, { minLength: 1, maxLength: 6 }),
      combination: fc.constantFrom(...combinations),
      friction: fc.constantFrom(0, 0.15, 0.4),
      deadNormal: fc.oneof(fc.constant(0), between(500, 20_000)),
      downslope: between(1, 2000),
      downhill: slope,
      right: rail,
      left: rail,
    })
    .map(({ right, left, anchors, friction, downhill: at, ...terms }): SlidingTerms => {
      const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
      const slopeOf = { angle: 0.1, downhill: at };
      const holding = { weight, anchors, slope: slopeOf, friction };
      return { terms: { ...terms, holding, anchorDown: 0, sideways: true }, right, left };
    });

const wind: fc.Arbitrary<SlidingWind> = fc.record({
  fx: sixteenths(-60, 60),
  fy: sixteenths(-60, 60),
  fz: sixteenths(-60, 120),
  turnRight: sixteenths(-100, 300),
  turnLeft: sixteenths(-100, 300),
});

/** Pressures from nought to a limit, close together near both and everywhere between, Pa. */
function looked(limit: number, count: number): number[] {
  if (limit === 0) return [];
  const end = Math.min(limit, 1000 * design) * (1 - 1e-9);
  return Array.from({ length: count }, (_, place) => {
    const share = place / (count - 1);
    return [share * end, end * 1e-6 ** (1 - share), end * (1 - 1e-6 ** share)];
  }).flat();
}

const turns = (count: number) =>
  Array.from({ length: count }, (_, place) => Math.PI * ((2 * place) / count - 1));

/** Whether a slide is beyond what holds it by more than rounding. */
const slides = ({ demand, resistance }: ReturnType<typeof slideAt>, scale: number): boolean =>
  demand > resistance + 1e-9 * scale;

const scaleOf = ({ terms }: SlidingTerms): number =>
  terms.holding.anchors.reduce((sum, { pull }) => sum + pull, terms.deadNormal + terms.downslope);

const isLimited = (limit: number): boolean => limit > 1e-9 * design && limit < 1000 * design;

describe("tethers that pull against each other", () => {
  const tethers = [0.1, 0.2, 0.3].map((level, place) => {
    const side = place < 2 ? -1 : 1;
    const toward = [side * level, 0, -Math.sqrt(1 - level * level)] as const;
    return { x: 2, y: 0, pull: 1, toward };
  });
  const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
  const combination = combinations[0] as Combination;
  const turned = { weightMoment: 0, anchorMoment: 0, slopeMoment: 0 };
  const resistanceOf = (anchors: typeof tethers) => {
    const holding = { weight, anchors, slope: null, friction: 0.4 };
    const level = { downslope: 0, deadNormal: 0, anchorDown: 0, sideways: true };
    const terms = { ...level, combination, holding };
    const sliding = { terms, right: turned, left: turned };
    return slideAt(sliding, { fx: 1, fy: 0, fz: 1, turnRight: 1, turnLeft: 1 }, design).resistance;
  };

  test("leave no resistance where they even out, though rounding leaves some", () => {
    expect(0.1 + 0.2 - 0.3).toBeGreaterThan(0);
    expect(resistanceOf(tethers)).toBe(0);
  });

  test("count for what they differ by", () => {
    const [first, ...others] = tethers;
    if (!first) throw new Error("no tether");
    const stronger = [{ ...first, pull: 1 + 1e-9 }, ...others];
    expect(resistanceOf(stronger)).toBeCloseTo(1e-10 * combination.anchor, 15);
  });
});

describe(`the search for the sliding limit, by plain looking (seed ${seed})`, () => {
  test("on a known slope nothing fails below the limit, and it fails there", () => {
    holds(
      fc.property(termsWith(downhill), wind, (sliding, one) => {
        const limit = searchSlideLimit(sliding, one, design);
        for (const q of looked(limit, 1000)) {
          expect(slides(slideAt(sliding, one, q), scaleOf(sliding)), `${q} of ${limit}`).toBe(
            false,
          );
        }
        if (!isLimited(limit)) return;
        const { demand, resistance } = slideAt(sliding, one, limit * (1 + 1e-12));
        expect(demand - resistance).toBeGreaterThan(-1e-8 * scaleOf(sliding));
      }),
      400,
    );
  });

  test("the same of many houses, looked at more coarsely", () => {
    const many = fc.array(fc.tuple(termsWith(downhill), wind), { minLength: 20, maxLength: 20 });
    holds(
      fc.property(many, (houses) => {
        for (const [sliding, one] of houses) {
          const limit = searchSlideLimit(sliding, one, design);
          const scale = scaleOf(sliding);
          for (const q of looked(limit, 40)) {
            if (slides(slideAt(sliding, one, q), scale)) throw new Error(`${q} of ${limit}`);
          }
          if (!isLimited(limit)) continue;
          const { demand, resistance } = slideAt(sliding, one, limit * (1 + 1e-12));
          expect(demand - resistance).toBeGreaterThan(-1e-8 * scale);
          expect(searchSlideLimit(sliding, one, design, 0.99 * limit)).toBeGreaterThanOrEqual(
            0.99 * limit * (1 - 1e-9),
          );
          expect(searchSlideLimit(sliding, one, design, 1.01 * limit) / limit).toBeCloseTo(1, 9);
        }
      }),
      20,
    );
  });

  test("on a slope of unknown direction nothing fails below the limit in any direction", () => {
    holds(
      fc.property(termsWith(fc.constant(null)), wind, (sliding, one) => {
        const limit = searchSlideLimit(sliding, one, design);
        for (const turned of turns(90)) {
          for (const q of looked(limit, 40)) {
            const found = slides(slideAt(sliding, one, q, turned), scaleOf(sliding));
            expect(found, `${q} of ${limit} at ${turned}`).toBe(false);
          }
        }
        if (!isLimited(limit)) return;
        const { demand, resistance } = worstSlideAt(sliding, one, limit * (1 + 1e-12));
        expect(demand - resistance).toBeGreaterThan(-1e-8 * scaleOf(sliding));
      }),
    );
  });

  test("no direction has a greater ratio than the worst one told", () => {
    holds(
      fc.property(termsWith(fc.constant(null)), wind, between(1, 1000), (sliding, one, q) => {
        const ratio = ({ demand, resistance }: ReturnType<typeof slideAt>) =>
          resistance > 0 ? demand / resistance : Number.POSITIVE_INFINITY;
        const worst = ratio(worstSlideAt(sliding, one, q));
        for (const turned of turns(720)) {
          expect(ratio(slideAt(sliding, one, q, turned))).toBeLessThanOrEqual(worst * (1 + 1e-9));
        }
      }),
    );
  });

  test("a bound only leaves out what is not below it", () => {
    const slope = fc.oneof(downhill, fc.constant(null));
    holds(
      fc.property(termsWith(slope), wind, between(1e-9, 4 * design), (sliding, one, below) => {
        const limit = searchSlideLimit(sliding, one, design);
        const found = searchSlideLimit(sliding, one, design, below);
        if (limit < below * (1 - 1e-9))
          expect(Math.abs(found - limit)).toBeLessThan(1e-9 * limit + 1e-12);
        else expect(found).toBeGreaterThanOrEqual(below * (1 - 1e-9));
      }),
    );
  });
});
