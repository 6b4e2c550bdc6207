import { asd, type LineTerms, type SlidingTerms, type SlidingWind } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { SlideCourse } from "../../packages/stability/src/slide-course.ts";
import { SlidePath } from "../../packages/stability/src/slide-path.ts";

const none = Number.POSITIVE_INFINITY;
const rail = (weightMoment: number, anchorMoment: number, slopeMoment = 0): LineTerms => ({
  weightMoment,
  anchorMoment,
  slopeMoment,
});
const slack = rail(1e9, 0);
/** A tether between, left or right of the rails' middle; level part of 1000 N toward +x or -x. */
const aslant = (x: number, way: 1 | -1) => ({
  x,
  y: 0,
  pull: 1000 * Math.SQRT2,
  toward: [way * Math.SQRT1_2, 0, -Math.SQRT1_2] as const,
});

interface Held {
  readonly grip: number;
  readonly anchors?: SlidingTerms["terms"]["holding"]["anchors"];
  readonly right?: LineTerms;
  readonly left?: LineTerms;
  readonly wind?: Partial<SlidingWind>;
  readonly slope?: readonly [number, number];
  readonly design?: number;
}

/** What a path has worked out: a piece for each stretch that was looked at. */
interface WorkedOut {
  readonly pieces: readonly unknown[];
}

/** Wind of 0.6 N per Pa and 10 N of slope, both toward +x, against so much friction. */
function path({
  grip,
  anchors = [],
  right = slack,
  left = slack,
  wind,
  slope = [10, 0],
  design = 100,
}: Held) {
  const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
  const holding = { weight, anchors, slope: { angle: 0.1, downhill: null }, friction: 0.5 };
  const terms = {
    holding,
    combination: asd,
    deadNormal: 2 * grip,
    downslope: Math.hypot(...slope),
    anchorDown: 0,
    sideways: true,
  };
  const blows = { fx: 1, fy: 0, fz: 0, turnRight: 0, turnLeft: 0, ...wind };
  return new SlidePath(new SlideCourse({ terms, right, left }, blows, design), slope);
}

describe("the first pressure at which a case slides, slope along the wind", () => {
  test("friction alone, with uplift and pressed down", () => {
    expect(path({ grip: 310 }).limit()).toBeCloseTo(500, 8);
    // Contact falls by 0.3 v q: 310 - 0.6 q = 10 + 0.6 q.
    expect(path({ grip: 310, wind: { fz: 2 } }).limit()).toBeCloseTo(250, 8);
    expect(path({ grip: 310, wind: { fz: -4 } }).limit()).toBe(none);
    expect(path({ grip: 9 }).limit()).toBe(0);
    expect(path({ grip: 10 }).limit()).toBeCloseTo(0, 8);
  });

  test("none beyond a thousand times the design pressure, though a tether changes its part there", () => {
    // Slope across, 100 N: the tether pulls along the push up to 333 Pa; 150 N of grip end at 186 Pa.
    const level = 1 / Math.sqrt(5);
    const tether = { ...aslant(-2, 1), toward: [-level, 2 * level, -1] as const };
    const across = { grip: 150, anchors: [tether], slope: [0, 100] as const };
    expect(path({ ...across, design: 1 }).limit()).toBeCloseTo(
      Math.sqrt(150 ** 2 - 100 ** 2) / 0.6,
      8,
    );
    expect(path({ ...across, design: 0.1 }).limit()).toBe(none);
  });

  test("a tether against it, contact ended or not", () => {
    const anchors = [aslant(-2, -1)];
    expect(path({ grip: 310, anchors }).limit()).toBeCloseTo(1300 / 0.6, 7);
    // No contact from 620 / 1.2 = 517 Pa on; 1000 N alone hold up to 1650 Pa.
    expect(path({ grip: 310, anchors, wind: { fz: 2 } }).limit()).toBeCloseTo(990 / 0.6, 7);
  });

  test.each([
    ["left of the middle: turning about the right rail", -2, rail(600, 1200), slack],
    ["right of it: about the left one", 2, slack, rail(600, 1200)],
    ["between: the one that asks more, right", 0, rail(600, 1200), slack],
    ["between: the one that asks more, left", 0, slack, rail(600, 1200)],
  ])("a tether along it, %s", (_, x, right, left) => {
    const wind = { turnRight: 10, turnLeft: 10 };
    const limit = (grip: number) =>
      path({ grip, anchors: [aslant(x, 1)], right, left, wind }).limit();
    // Nothing is asked up to 100 Pa, all from 300 Pa on; between them 10 + 0.6 q + 5 q - 500.
    expect(limit(40)).toBeCloseTo(50, 8);
    expect(limit(630)).toBeCloseTo(200, 8);
    expect(limit(1310)).toBeCloseTo(500, 8);
  });

  test("the slope's own turning comes on top", () => {
    const wind = { turnRight: 10, turnLeft: 10 };
    const right = rail(600, 1200, 240);
    const limit = path({ grip: 630, anchors: [aslant(-2, 1)], right, wind }).limit();
    // (0.6 10 q + 240 - 600) / 1200 of 1000 N: 10 + 5.6 q - 300.
    expect(limit).toBeCloseTo(920 / 5.6, 8);
  });

  test("between the rails, where the one that asks more changes on the way", () => {
    const wind = { turnRight: 10, turnLeft: 10 };
    const [early, late] = [rail(60, 4800), rail(600, 1200)];
    // A tether of no pull changes nothing, wherever it stands.
    const none = { ...aslant(2, 1), pull: 0 };
    for (const [right, left, anchors] of [
      [early, late, [aslant(0, 1), none]],
      [late, early, [none, aslant(0, 1)]],
      [early, late, [aslant(0, 1)]],
    ] as const) {
      const limit = (grip: number) => path({ grip, anchors, right, left, wind }).limit();
      // The first asks from 10 Pa on, 1.25 N per Pa; the second more than it from 130 Pa on.
      expect(limit(219.5)).toBeCloseTo(120, 8);
      expect(limit(630)).toBeCloseTo(200, 8);
      expect(limit(10 + 0.6 * 130 + 150)).toBeCloseTo(130, 7);
    }
  });

  test("only a limit below a bound is told, from a bound just above it on", () => {
    for (const grip of [40, 310, 630]) {
      const made = path({ grip });
      const limit = (grip - 10) / 0.6;
      expect(made.limit(0.999 * limit)).toBe(none);
      expect(made.limit(1.001 * limit)).toBeCloseTo(limit, 8);
      expect(made.limit()).toBeCloseTo(limit, 8);
    }
    expect(path({ grip: 9 }).limit(1)).toBe(0);
  });

  test("no stretch beyond the bound is worked out, nor beyond the limit", () => {
    const stretches = (below: number) => {
      const made = path({ grip: 310 });
      made.limit(below);
      return (made as unknown as WorkedOut).pieces.length;
    };
    // Cut at 6.25, 25, 100, 400 and 1600 Pa; the limit is 500 Pa.
    expect([6, 6.25, 6.5, 100, 101, none].map(stretches)).toEqual([1, 1, 2, 3, 4, 5]);
  });

  test("in any unit of pressure: wind k times as strong, the limit one kth", () => {
    for (const k of [1e-12, 1e12]) {
      const wind = { fx: k, turnRight: 10 * k };
      const right = rail(600, 1200);
      const anchors = [aslant(-2, 1)];
      const made = path({ grip: 630, anchors, right, wind, design: 100 / k });
      expect((made.limit() * k) / 200).toBeCloseTo(1, 9);
    }
  });

  test("whether it may slide below a pressure: sooner with slack, and again later without it", () => {
    const made = path({ grip: 310 });
    const still = { push: 0, tethers: 0 };
    for (const { slack: less, limit } of [
      { slack: { push: 60, tethers: 0 }, limit: 400 },
      { slack: still, limit: 500 },
      // Tethers that lose 9000 N2 beside a push of 10 N do not hold even that: 100 + 9000 > 310 x 10.
      { slack: { push: 0, tethers: 9000 }, limit: 0 },
    ]) {
      expect(made.mayFail(limit * 1.001 + 1e-6, less)).toBe(true);
      if (limit > 0) expect(made.mayFail(limit * 0.999, less)).toBe(false);
    }
    expect(made.mayFail(none, still)).toBe(true);
    expect(path({ grip: 10 + 0.6 * 103_000 }).mayFail(none, still)).toBe(false);
  });

  test("nothing is looked for beyond a thousand times the design pressure", () => {
    expect(path({ grip: 10 + 0.6 * 102_000 }).limit()).toBeCloseTo(102_000, 4);
    expect(path({ grip: 10 + 0.6 * 103_000 }).limit()).toBe(none);
  });
});

describe("slope across the wind", () => {
  test("friction alone: sqrt(grip^2 - S^2) / 0.6", () => {
    expect(path({ grip: 50, slope: [0, 30] }).limit()).toBeCloseTo(40 / 0.6, 8);
    expect(path({ grip: 50, slope: [0, -30] }).limit()).toBeCloseTo(40 / 0.6, 8);
    expect(path({ grip: 29, slope: [0, 30] }).limit()).toBe(0);
  });

  test("an upwind tether holds by its part along the push", () => {
    // H = 500 at 400 N of wind and 300 N of slope: 0.8 of 1000 N along it, less grip, too much.
    const limit = path({ grip: 0, anchors: [aslant(-2, -1)], slope: [0, 300] }).limit();
    expect(limit).toBe(0);
    // Resisted once 1000 N 0.6 q = H^2: the tether's part grows with the wind; friction holds before.
    const held = path({ grip: 300, anchors: [aslant(-2, -1)], slope: [0, 300] });
    // H^2 = 300 H + 600 q of (0.6 q)^2 + 300^2.
    const q = held.limit();
    const push = Math.hypot(0.6 * q, 300);
    expect(push ** 2 / (300 * push + 600 * q)).toBeCloseTo(1, 9);
    expect(q).toBeGreaterThan(1000);
  });
});
