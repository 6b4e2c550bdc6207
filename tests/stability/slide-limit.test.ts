import {
  asd,
  type Combination,
  type SlidingTerms,
  type SlidingWind,
  slideAt,
  slideLimit,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, combination, holds, seed, sixteenths } from "./arbitrary-holding.ts";

const none = Number.POSITIVE_INFINITY;
const rail = { weightMoment: 1e9, anchorMoment: 0, slopeMoment: 0 };

interface Plain {
  readonly deadNormal: number;
  readonly downslope: number;
  readonly friction: number;
  readonly downhill: readonly [number, number] | null;
  readonly by?: Combination;
}

/** A house on a slope without tethers aslant. */
function sliding({ deadNormal, downslope, friction, downhill, by = asd }: Plain): SlidingTerms {
  const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
  const holding = { weight, anchors: [], slope: { angle: 0.1, downhill }, friction };
  const terms = {
    holding,
    combination: by,
    deadNormal,
    downslope,
    anchorDown: 0,
    sideways: false,
  };
  return { terms, right: rail, left: rail };
}

const blows = (fx: number, fy: number, fz: number): SlidingWind => ({
  fx,
  fy,
  fz,
  turnRight: 0,
  turnLeft: 0,
});

describe("where friction alone lets go on a slope, in closed form", () => {
  const house = { deadNormal: 10_000, downslope: 3000, friction: 0.5 };
  const limit = (
    downhill: Plain["downhill"],
    wind: readonly [number, number, number],
    more: Partial<Plain> = {},
  ) => slideLimit(sliding({ ...house, downhill, ...more }), blows(...wind), 100);

  test("with the wind: (mu D - S) / (gamma (h + mu v))", () => {
    expect(limit([0.6, 0.8], [3, 4, 10])).toBeCloseTo(2000 / (0.6 * (5 + 5)), 8);
    expect(limit([0.6, 0.8], [3, 4, 0])).toBeCloseTo(2000 / (0.6 * 5), 8);
    expect(limit(null, [0, -5, 0])).toBeCloseTo(2000 / (0.6 * 5), 8);
  });

  test("against it: the slope gives no relief", () => {
    expect(limit([-1, 0], [5, 0, 0])).toBeCloseTo(5000 / (0.6 * 5), 8);
  });

  test("across it: sqrt((mu D)^2 - S^2) / (gamma h)", () => {
    for (const downhill of [
      [0, 1],
      [0, -1],
    ] as const) {
      expect(limit(downhill, [5, 0, 0])).toBeCloseTo(4000 / (0.6 * 5), 8);
    }
    // With uplift: (5000 - 0.3 v q)^2 = (3 q)^2 + 3000^2, of which 0.3 v = 3: 16e6 = 30000 q.
    expect(limit([0, 1], [5, 0, 10])).toBeCloseTo(16e6 / 30_000, 8);
    // Pressed down as hard as it is pushed: friction grows as fast, the slope is never reached.
    expect(limit([0, 1], [5, 0, -10])).toBe(none);
    expect(limit([0, 1], [5, 0, -20])).toBe(none);
  });

  test("lifted faster than pushed: before contact ends, not beyond", () => {
    // At q = 875 / 3 the push is 5 times (175, 600, 625) N; contact has fallen by 5000 - 3125 N till there.
    const q = 875 / 3;
    expect(limit([0, 1], [5, 0, 1875 / q / 0.3])).toBeCloseTo(q, 8);
  });

  test("a slope that leaves hardly anything", () => {
    // Along the wind: what is left is a millionth of a newton, and as much of it as can be told counts.
    const along = { downslope: 3000.3, deadNormal: 2 * (3000.3 + 1e-6) };
    const left = 0.5 * along.deadNormal - along.downslope;
    expect(limit([1, 0], [1, 0, 0], along) / (left / 0.6)).toBeCloseTo(1, 9);
    // Across it, pressed down: the grip grows before the push does, until
    // (5000 + 1.5 q)^2 = (3 q)^2 + S^2, or 6.75 q^2 - 2 7500 q = 5000^2 - S^2.
    const across = 5000 - 2 ** -20;
    const rest = (5000 - across) * (5000 + across);
    const root = (7500 + Math.sqrt(7500 ** 2 + 6.75 * rest)) / 6.75;
    expect(limit([0, 1], [5, 0, -5], { downslope: across }) / root).toBeCloseTo(1, 11);
  });

  test("in a calm that lifts or presses: what the slope asks of the contact left", () => {
    expect(limit([0.6, 0.8], [0, 0, 10])).toBeCloseTo(2000 / (0.6 * 0.5 * 10), 8);
    expect(limit([0.6, 0.8], [0, 0, -10])).toBe(none);
    expect(limit([0.6, 0.8], [0, 0, 0])).toBe(none);
  });

  test("a slope too steep for its friction slides without any wind", () => {
    const steep = { downslope: 5001 };
    expect(limit([0, 1], [5, 0, 0], steep)).toBe(0);
    expect(limit([1, 0], [5, 0, 0], steep)).toBe(0);
    expect(limit([0.6, 0.8], [0, 0, 3], steep)).toBe(0);
    expect(limit([0, 1], [5, 0, 0], { downslope: 5000 })).toBeCloseTo(0, 8);
  });
});

test(`nothing slides below the limit and it does beyond, whatever the slope's direction (seed ${seed})`, () => {
  const turn = between(-Math.PI, Math.PI);
  const downhill = fc.oneof(
    turn.map((at) => [Math.cos(at), Math.sin(at)] as const),
    fc.constantFrom([1, 0] as const, [0, 1] as const, [-1, 0] as const),
    fc.constant(null),
  );
  const houses = fc.record({
    deadNormal: between(500, 20_000),
    downslope: fc.oneof(fc.constant(0), between(1, 2000)),
    friction: fc.constantFrom(0, 0.15, 0.4),
    downhill,
    by: combination,
  });
  const wind = fc
    .tuple(sixteenths(-60, 60), sixteenths(-60, 60), sixteenths(-120, 120))
    .map((parts) => blows(...parts));
  let limited = 0;
  holds(
    fc.property(fc.array(fc.tuple(houses, wind), { minLength: 20, maxLength: 20 }), (many) => {
      for (const [house, one] of many) looked(house, one);
    }),
    20,
  );
  expect(limited).toBeGreaterThan(5);

  function looked(house: Plain, one: SlidingWind): void {
    const of = sliding(house);
    const limit = slideLimit(of, one, 100);
    const excess = (q: number) => {
      const { demand, resistance } = slideAt(of, one, q);
      return (demand - resistance) / (house.deadNormal + house.downslope);
    };
    const end = Math.min(limit, 1e5);
    for (let place = 0; place < 300 && limit > 0; place += 1) {
      const q = limit === none ? end * (place / 300) ** 3 : (end * place) / 300;
      if (excess(q) > 1e-9) throw new Error(`slides at ${q}, below ${limit}`);
    }
    if (limit === none) return;
    limited += 1;
    if (limit > 1e-9) expect(excess(limit * (1 + 1e-9))).toBeGreaterThan(-1e-8);
    if (limit === 0) expect(excess(1e-9)).toBeGreaterThan(-1e-9);
  }
});
