import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Push, SlidePiece } from "../../packages/stability/src/slide-piece.ts";
import { between, holds, seed, sixteenths } from "./arbitrary-holding.ts";

const none = Number.POSITIVE_INFINITY;

/** The bound by which a piece leaves an interval. */
interface Bounded {
  mostArched(from: number, to: number): number;
}
const least = 1e-12;

describe("the push of wind and slope", () => {
  test("its size, along a line through a right-angled triangle", () => {
    const push = new Push(3, 0, 0, 2);
    expect(push.at(0)).toBe(3);
    expect(push.at(2)).toBe(5);
  });

  test("grows as the part of the wind along it: none straight across, all of it far off", () => {
    const push = new Push(3, 0, 0, 2);
    expect(push.growth(0)).toBe(0);
    expect(push.growth(2)).toBeCloseTo((2 * 4) / 5, 12);
    expect(push.growth(1e9)).toBeCloseTo(2, 9);
    // (1, 2) and (2, 2) for each unit of pressure: (3, 4) at one.
    expect(new Push(1, 2, 2, 2).growth(1)).toBeCloseTo((2 * 3 + 2 * 4) / 5, 12);
    expect(new Push(0, 0, 3, 4).growth(0)).toBe(5);
    expect(new Push(-3, -4, 3, 4).growth(0)).toBe(-5);
  });

  test("bends no more than told: (its sweep)^2 over its least size cubed", () => {
    // H = sqrt(9 + 4 q^2), H'' = 36 / H^3: at most where q is least, and at q = 0 where it lies between.
    const push = new Push(3, 0, 0, 2);
    expect(push.mostBend(2, 5)).toBeCloseTo(36 / 125, 12);
    expect(push.mostBend(-5, -2)).toBeCloseTo(36 / 125, 12);
    expect(push.mostBend(-2, 2)).toBeCloseTo(36 / 27, 12);
    expect(push.mostBend(0, 2)).toBeCloseTo(36 / 27, 12);
    expect(new Push(3, 4, 6, 8).mostBend(0, 1)).toBe(0);
    // Straight back through no push at all.
    expect(new Push(3, 4, -3, -4).mostBend(0, 2)).toBe(0);
    expect(new Push(3, 4, -3, -4).mostBend(0, 1)).toBe(0);
  });
});

describe("the first pressure at which a piece slides, in closed form", () => {
  const first = (
    push: readonly [number, number, number, number],
    parabola: readonly [number, number, number],
    grip: readonly [number, number],
    [from, to]: readonly [number, number] = [0, 100],
    slack = { push: 0, tethers: 0 },
    narrow = least,
  ) => new SlidePiece(new Push(...push), parabola, grip).slackened(slack).first(from, to, narrow);
  /** A push of 1 N whatever the pressure. */
  const still = [0.6, 0.8, 0, 0] as const;

  test("a straight line crosses nought where it does", () => {
    expect(first(still, [-6, 2, 0], [0, 0])).toBeCloseTo(3, 10);
    expect(first(still, [0, 2, 0], [6, 0])).toBeCloseTo(3, 10);
    expect(first(still, [0, 2, 0], [12, -2])).toBeCloseTo(3, 10);
    expect(first([3, 4, 0, 0], [0, 2, 0], [12, 0])).toBeCloseTo(30, 10);
  });

  test("nothing where it stays below, ends below, or falls", () => {
    expect(first(still, [-6, 2, 0], [0, 0], [0, 2.9])).toBe(none);
    expect(first(still, [-6, 0, 0], [0, 0])).toBe(none);
    expect(first(still, [-6, -1, 0], [0, 0])).toBe(none);
    expect(first(still, [0, 0, 0], [0, 0])).toBe(none);
  });

  test("where it starts, if it slides there", () => {
    expect(first(still, [1, -1, 0], [0, 0], [0.5, 9])).toBe(0.5);
    expect(first(still, [-6, 2, 0], [0, 0], [3.5, 9])).toBe(3.5);
  });

  test("the earlier of two roots, and the later one from between or beyond", () => {
    // -(q - 2)(q - 5): above nought between the two.
    const hump = [-10, 7, -1] as const;
    expect(first(still, hump, [0, 0])).toBeCloseTo(2, 10);
    expect(first(still, hump, [0, 0], [5.1, 100])).toBe(none);
    expect(first(still, hump, [0, 0], [0, 1.99])).toBe(none);
    // (q - 2)(q - 5): from between the two on, the later.
    expect(first(still, [10, -7, 1], [0, 0], [2.5, 100])).toBeCloseTo(5, 10);
  });

  test("a hump however narrow is found, and one that does not reach nought is not", () => {
    for (const width of [1e-1, 1e-2, 1e-3, 1e-4]) {
      const [a, b] = [3.3 - width, 3.3 + width];
      expect(first(still, [-a * b, a + b, -1], [0, 0])).toBeCloseTo(a, 8);
    }
    expect(first(still, [-(3.3 ** 2) - 1e-6, 6.6, -1], [0, 0])).toBe(none);
  });

  test("one that just reaches nought does not slide", () => {
    // -(q - 3)^2.
    expect(first(still, [-9, 6, -1], [0, 0])).toBe(none);
    expect(first(still, [-6, 2, 0], [0, 0], [0, 3])).toBe(none);
    // e - sqrt(e^2 + (q - 1000)^2): a peak too sharp for any parabola, of no height.
    for (const e of [0.01, 0.02, 0.03]) {
      expect(first([-1000, e, 1, 0], [e, 0, 0], [1, 0], [0, 3000], undefined, 0)).toBe(none);
    }
  });

  test("nor one that falls from nought by less than can be told", () => {
    // 1 - q^2 against 1, up to fifty times the width that is told apart.
    expect(first([1, 0, 0, 0], [1, 0, -1], [1, 0], [0, 5e-11], undefined, 1e-12)).toBe(none);
  });

  test("told where it is above nought, not yet where it is nought", () => {
    const found = first(still, [-6, 2, 0], [0, 0]);
    expect(found).toBeGreaterThan(3);
    expect(found).toBeLessThan(3 + 1e-12);
  });

  test("one that rises from nought slides at once, though rounding hides the first of it", () => {
    // 1e-6 q - 1e-9 q^2 beside 1: nothing can be told of it below 1.1e-10.
    const found = first([1, 0, 0, 0], [1, 1e-6, -1e-9], [1, 0], [0, 100], undefined, 1e-11);
    expect(found).toBeLessThan(2e-10);
  });

  test("the first of three: before a hump that falls again and rises for good", () => {
    // (H - 17) (H - 25), H = sqrt((q - 50)^2 + 15^2): above nought nearer than 8 to 50, and beyond 20.
    const push = [-50, 15, 1, 0] as const;
    const parabola = [50 ** 2 + 15 ** 2 + 17 * 25, -100, 1] as const;
    for (const to of [55, 60, 69, 71, 75, 90, 200, 1000]) {
      expect(first(push, parabola, [17 + 25, 0], [31, to]), `${to}`).toBeCloseTo(42, 9);
    }
    expect(first(push, parabola, [17 + 25, 0], [59, 200])).toBeCloseTo(70, 9);
  });

  test("wind from nothing: H = w q, so that a q^2 = k w q at q = k w / a", () => {
    expect(first([0, 0, 3, 4], [0, 0, 25], [20, 0], [0.1, 100])).toBeCloseTo(4, 10);
    expect(first([0, 0, 3, 4], [0, 0, 25], [20, -1], [0.1, 100])).toBeCloseTo(100 / 30, 10);
  });

  test("wind across the slope: H^2 = (k H)^2 where H = k", () => {
    // S = 3 across W = 2 q: H = 5 at q = 2.
    expect(first([3, 0, 0, 2], [9, 0, 4], [5, 0])).toBeCloseTo(2, 10);
    expect(first([3, 0, 0, 2], [9, 0, 4], [2.9, 0])).toBe(0);
    // Wind against the slope first lessens the push: 3 - 2 q, then beyond 5 at q = 4.
    expect(first([3, 0, -2, 0], [9, -12, 4], [5, 0])).toBeCloseTo(4, 10);
  });

  test("slack makes it slide sooner: what the turn adds to the push, what tethers lose", () => {
    expect(first(still, [-6, 2, 0], [0, 0], [0, 100], { push: 0, tethers: 2 })).toBeCloseTo(2, 10);
    expect(first(still, [0, 2, 0], [6, 0], [0, 100], { push: 4, tethers: 0 })).toBeCloseTo(1, 10);
    expect(first([3, 4, 0, 0], [0, 2, 0], [12, 0], [0, 100], { push: 2, tethers: 10 })).toBeCloseTo(
      20,
      10,
    );
  });

  test("whether it may slide agrees with where it slides, and stays open only near a touch", () => {
    const part = between(-10, 10);
    holds(
      fc.property(
        fc.tuple(part, part, part, part),
        fc.tuple(part, part, part),
        fc.tuple(part, part),
        between(0.1, 5),
        (of, abc, grip, to) => {
          const piece = new SlidePiece(new Push(...of), abc, grip);
          const slides = piece.first(0, to, least) < none;
          if (slides) expect(piece.mayRise(0, to)).toBe(true);
          else if (piece.slackened({ push: 0, tethers: 20 }).first(0, to, least) === none) {
            expect(piece.mayRise(0, to)).toBe(false);
          }
        },
      ),
    );
  });

  /** A piece of unbent parabola, and how often its push is worked out for whether it may rise. */
  const risesIn = (
    parabola: readonly [number, number, number],
    to: number,
    grip: readonly [number, number] = [0, 0],
  ) => {
    let looks = 0;
    const counted = new (class extends Push {
      override at(q: number) {
        looks += 1;
        return super.at(q);
      }
    })(...still);
    return { rises: new SlidePiece(counted, parabola, grip).mayRise(0, to), looks };
  };

  test("whether it rises is told by its ends, where it does there; nought is not above it", () => {
    expect(risesIn([1, -2, 0], 1)).toEqual({ rises: true, looks: 2 });
    expect(risesIn([-1, 2, 0], 1)).toEqual({ rises: true, looks: 2 });
    expect(risesIn([0, -1, 0], 1)).toEqual({ rises: false, looks: 2 });
    expect(risesIn([-1, 1, 0], 1)).toEqual({ rises: false, looks: 2 });
    expect(risesIn([0, 0, 0], 1)).toEqual({ rises: false, looks: 2 });
  });

  test("and by halves, where it rises between them: h^2 - (q - p)^2", () => {
    const hump = (peak: number, h: number) => risesIn([h * h - peak * peak, 2 * peak, -1], 2);
    expect(hump(1, 0.5)).toEqual({ rises: true, looks: 3 });
    expect(hump(0.5, 0.1)).toEqual({ rises: true, looks: 4 });
    expect(hump(1.5, 0.1)).toEqual({ rises: true, looks: 4 });
    expect(risesIn([-1.01, 2, -1], 2).rises).toBe(false);
    expect(risesIn([-2.35, 3, -1], 2).rises).toBe(false);
  });

  test("twenty halvings settle what is left at nought by rounding: it stays open", () => {
    expect(risesIn([1, 0, -1e-22], 100, [1, 0])).toEqual({ rises: true, looks: 22 });
  });

  /** How often the push has to be worked out for an answer. */
  const looksFor = (
    [push, parabola, grip]: readonly [
      readonly [number, number, number, number],
      readonly [number, number, number],
      readonly [number, number],
    ],
    to: number,
  ) => {
    let looks = 0;
    const counted = new (class extends Push {
      override at(q: number) {
        looks += 1;
        return super.at(q);
      }
    })(...push);
    const found = new SlidePiece(counted, parabola, grip).first(0, to, least);
    return { found, looks };
  };

  test("a piece far from failing is left after a few looks, a root found in some hundreds", () => {
    const far = [
      [still, [-6, 0, 0], [0, 0]],
      [still, [-6, -1, -1], [3, 1]],
      [
        [3, 0, 0, 2],
        [9, 0, 4],
        [500, 0],
      ],
      [
        [3, 0, -2, 1],
        [9, -12, 4],
        [500, -1],
      ],
      [
        [0, 5, 1, -1],
        [-100, 3, 0.1],
        [40, 2],
      ],
    ] as const;
    for (const one of far) {
      const { found, looks } = looksFor(one, 10);
      expect(found).toBe(none);
      expect(looks).toBeLessThanOrEqual(12);
    }
    const crossing = [
      [still, [-6, 2, 0], [0, 0]],
      [still, [-1, 0, 0.5], [0, 0]],
      [
        [3, 0, 0, 2],
        [9, 0, 4],
        [5, 0],
      ],
      [
        [3, 0, -2, 0],
        [9, -12, 4],
        [5, 0],
      ],
      [
        [1, 2, 3, -1],
        [5, 2, 10],
        [20, 1],
      ],
    ] as const;
    for (const one of crossing) {
      const { found, looks } = looksFor(one, 100);
      expect(found).toBeLessThan(none);
      expect(looks).toBeLessThanOrEqual(400);
    }
  });

  test("a straight line's root is met at once: both ends, the root, a look beside it", () => {
    for (const root of [3, 30, 99, 0.1, 0.7, 7.7, 33.3, 77.7, 91.3]) {
      const { found, looks } = looksFor([still, [-2 * root, 2, 0], [0, 0]], 100);
      expect(found).toBeCloseTo(root, 10);
      expect(looks).toBeLessThanOrEqual(5);
    }
  });

  test("a bent one's root in a dozen or so, however it bends", () => {
    for (const [parabola, root] of [
      [[-16, 0, 1], 4],
      [[-9, 0, 1], 3],
      [[-606, 107, -1], 6],
      [[-303, 104, -1], 3],
      [[-330, 134.5, -1], 2.5],
    ] as const) {
      const { found, looks } = looksFor([still, parabola, [0, 0]], 50);
      expect(found).toBeCloseTo(root, 4);
      expect(looks).toBeLessThanOrEqual(20);
    }
    // (q - 9)(q + 10) and (q - 36)(134 - q), seen from not far beyond.
    expect(looksFor([still, [-90, 1, 1], [0, 0]], 10).looks).toBeLessThanOrEqual(12);
    expect(looksFor([still, [-36 * 134, 170, -1], [0, 0]], 40).looks).toBeLessThanOrEqual(12);
  });

  test("a root near the foot of a steep rise is told as closely as any", () => {
    for (const root of [1e-2, 1e-4, 1e-6, 1e-7, 1e-8]) {
      const found = first(still, [-root * root, 0, 1], [0, 0], [0, 100], undefined, 0);
      expect(found / root).toBeCloseTo(1, 12);
    }
  });

  test("what rounding leaves at nought all along is given up after some hundreds, as a failure", () => {
    // 1 - 1e-22 q^2 against 1: neither above nought nor shown to be below it.
    const level = looksFor(
      [
        [1, 0, 0, 0],
        [1, 0, -1e-22],
        [1, 0],
      ],
      100,
    );
    expect(level.found).toBeLessThan(100);
    expect(level.looks).toBeLessThan(1000);
    // 1 + 1e-20 q^2: beyond nought as far as can be told from half a last place of 1 on, 1.054e4.
    const rising = looksFor(
      [
        [1, 0, 0, 0],
        [1, 0, 1e-20],
        [1, 0],
      ],
      1e5,
    );
    expect(rising.found).toBeLessThan(1.06e4);
    expect(rising.looks).toBeLessThan(10_000);
  });

  test(`its curvature nowhere exceeds the bound it goes by, and meets it on a short interval (seed ${seed})`, () => {
    const part = sixteenths(-4, 4);
    const one = fc.record({
      of: fc.tuple(part, part, part, part),
      abc: fc.tuple(part, part, part),
      grip: fc.tuple(part, part),
      from: sixteenths(0, 5),
      length: sixteenths(0, 3),
      turned: sixteenths(0, 2),
    });
    holds(
      fc.property(fc.array(one, { minLength: 20, maxLength: 20 }), (many) => {
        for (const { of, abc, grip, from, length, turned } of many) {
          const [sx, sy, wx, wy] = of;
          const sweep = wx * sy - wy * sx;
          if (sweep === 0) continue;
          const given = new SlidePiece(new Push(...of), abc, grip);
          const piece = given.slackened({ push: turned, tethers: 0 }) as unknown as Bounded;
          /** -(f''), of f = a + b q + c q^2 - (k - s + m q) H: H'' is the sweep squared over H cubed. */
          const archAt = (q: number) => {
            const [x, y] = [sx + wx * q, sy + wy * q];
            const size = Math.hypot(x, y);
            const bend = sweep ** 2 / size ** 3;
            const growing = 2 * grip[1] * ((wx * x + wy * y) / size);
            const left = grip[0] - turned + grip[1] * q;
            return { bend, left, rest: growing - 2 * abc[2] };
          };
          const bound = piece.mostArched(from, from + length);
          for (let place = 0; place <= 40; place += 1) {
            const { bend, left, rest } = archAt(from + (length * place) / 40);
            const arch = left * bend + rest;
            expect(bound).toBeGreaterThanOrEqual(arch - 1e-9 * (1 + Math.abs(arch)));
          }
          // Each part by itself is at its most somewhere, so that a short interval is told closely.
          const { bend, left, rest } = archAt(from);
          const there = Math.max(0, left) * bend + rest;
          const short = piece.mostArched(from, from + 1e-9);
          expect(Math.abs(short - there)).toBeLessThanOrEqual(1e-4 * (1 + bend + Math.abs(there)));
        }
      }),
      50,
    );
  });

  test(`no failure is stepped over, and one is told only where it is (seed ${seed})`, () => {
    const part = between(-5, 5);
    const four = fc.tuple(part, part, part, part);
    holds(
      fc.property(four, fc.tuple(part, part, part), fc.tuple(part, part), (push, of, grip) => {
        const excess = (q: number) => {
          const size = Math.hypot(push[0] + push[2] * q, push[1] + push[3] * q);
          return of[0] + of[1] * q + of[2] * q * q - (grip[0] + grip[1] * q) * size;
        };
        const found = first(push, of, grip, [0, 10]);
        const end = Math.min(found, 10);
        for (let place = 0; place < 400; place += 1) {
          const q = (end * place) / 400;
          if (q < found) expect(excess(q), `${q} of ${found}`).toBeLessThan(1e-9);
        }
        if (found < none) expect(excess(found * (1 + 1e-12))).toBeGreaterThan(-1e-9);
      }),
      100,
    );
  });
});
