import {
  type Combination,
  combinations,
  type LineTerms,
  type SlidingTerms,
  type SlidingWind,
  searchesTurns,
  searchSlideLimit,
  slideAt,
  turnedWorst,
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

const loose: LineTerms = { weightMoment: 1e9, anchorMoment: 0, slopeMoment: 0 };
const atOnce: LineTerms = { weightMoment: 0, anchorMoment: 0, slopeMoment: 1 };

interface Simple {
  readonly deadNormal: number;
  readonly downslope: number;
  /** Directions of level parts, rad from the x axis, and pulls whose level parts are three fifths. */
  readonly tethers: readonly (readonly [number, number])[];
  readonly downhill?: readonly [number, number] | null;
  readonly rails?: LineTerms;
  readonly sideways?: boolean;
}

/** A house with a friction of 0.5, in LRFD, so that the wind is not lessened; unknown slope unless said. */
function simple(of: Simple) {
  const { deadNormal, downslope, tethers, downhill = null, rails = loose, sideways = true } = of;
  const anchors = tethers.map(([side, pull]) => {
    const toward = [0.6 * Math.cos(side), 0.6 * Math.sin(side), -0.8] as const;
    return { x: -2, y: 0, pull: pull / 1.5, toward };
  });
  let looks = 0;
  const holding = {
    weight: { name: "low" as const, W: 1, x: 0, y: 0, z: 1 },
    anchors,
    get slope() {
      looks += 1;
      return { angle: 0.1, downhill };
    },
    friction: 0.5,
  };
  const combination = combinations[1] as Combination;
  const terms = { holding, combination, deadNormal, downslope, anchorDown: 0, sideways };
  const sliding: SlidingTerms = { terms, right: rails, left: rails };
  /** How often the slope's direction is asked for in some work. */
  const looksOf = (work: () => unknown): number => {
    looks = 0;
    work();
    return looks;
  };
  return { sliding, looksOf };
}

const blows = (fx: number, fy: number, fz = 0): SlidingWind => ({
  fx,
  fy,
  fz,
  turnRight: 0,
  turnLeft: 0,
});

describe("the worst turn of a slope of unknown direction, in closed form", () => {
  // Two tethers against each other, 75 degrees from the wind: nothing but friction holds what pushes
  // squarely across both, 15 degrees from the wind.
  const askew = Math.PI / 12;
  const across = (from: number): Simple["tethers"] => [
    [from + askew + Math.PI / 2, 8000],
    [from + askew - Math.PI / 2, 2000],
  ];
  const slope = 1000;
  const pushed = (h: number) => {
    const least = h * Math.sin(askew);
    return h * Math.cos(askew) + Math.sqrt(slope * slope - least * least);
  };
  const [east, north] = [0, Math.PI / 2];

  test.each([
    ["wind along x", 1, east, [2, 0], 50],
    ["wind along y", 1, north, [0, 2], 50],
    ["a calm", 1, east, [0, 0], 50],
    ["a hard wind", 1, east, [40, 0], 50],
    ["a hard wind on a small face", 1, east, [2e-6, 0], 50e6],
    ["a breath on a large face", 1, north, [0, 2e6], 50e-6],
    ["the forces of a toy", 1e-6, east, [2, 0], 50],
    ["the forces of a dam", 1e6, north, [0, 2], 50],
  ] as const)("%s", (_, size, from, [fx, fy], q) => {
    const { sliding } = simple({
      deadNormal: size * 1000,
      downslope: size * slope,
      tethers: across(from).map(([side, pull]) => [side, size * pull]),
    });
    const wind = blows(size * fx, size * fy);
    const { demand, resistance } = worstSlideAt(sliding, wind, q);
    const expected = pushed(Math.hypot(fx, fy) * q) / 500;
    expect(demand / resistance / expected).toBeCloseTo(1, 6);
  });
});

describe("where no search is needed there is none", () => {
  const some = { deadNormal: 1e5, downslope: 1000, tethers: [[1, 100]] } as const;
  const wind = blows(2, 0);

  test("over turns: only for tethers aslant on a slope of unknown direction", () => {
    const searches = (more: Partial<Simple>) =>
      searchesTurns(simple({ ...some, ...more }).sliding.terms);
    expect(searches({})).toBe(true);
    expect(searches({ sideways: false })).toBe(false);
    expect(searches({ downslope: 0 })).toBe(false);
    expect(searches({ downhill: [0, 1] })).toBe(false);
  });

  test("a known slope has its one direction", () => {
    const { sliding, looksOf } = simple({ ...some, downhill: [0, 1] });
    expect(turnedWorst(sliding, wind, 50)).toBe(0);
    expect(looksOf(() => turnedWorst(sliding, wind, 50))).toBe(1);
  });

  test("a turn is looked at once where none can be as bad as what is known", () => {
    const { sliding, looksOf } = simple(some);
    expect(turnedWorst(sliding, wind, 50, 10)).toBe(0);
    // Whether it is known, and the one turn.
    expect(looksOf(() => turnedWorst(sliding, wind, 50, 10))).toBe(2);
    expect(looksOf(() => turnedWorst(sliding, wind, 50))).toBeGreaterThan(2);
  });

  test("nor is anything looked for that is worse than beyond all bounds", () => {
    const pulled = { deadNormal: 0, downslope: 1000, tethers: [[0, 100]], rails: atOnce } as const;
    const { sliding, looksOf } = simple(pulled);
    expect(slideAt(sliding, wind, 50).resistance).toBeLessThan(0);
    expect(looksOf(() => turnedWorst(sliding, wind, 50))).toBe(2);
  });

  test("one turn shows that no limit lies below a bound", () => {
    const { sliding, looksOf } = simple(some);
    const looks = looksOf(() => {
      expect(searchSlideLimit(sliding, wind, design, 1)).toBe(Number.POSITIVE_INFINITY);
    });
    // Whether it is known, the one turn, and the turn that is told.
    expect(looks).toBe(3);
  });

  test("on level ground the limit is told in closed form, however far off", () => {
    const { sliding } = simple({ ...some, downslope: 0 });
    expect(searchSlideLimit(sliding, blows(1e-4, 0), design) / 5e8).toBeCloseTo(1, 9);
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
