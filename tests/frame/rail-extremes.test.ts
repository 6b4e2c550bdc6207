import { type BasePlan, findPeaks, noPeaks, type PlanResponse } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pointBeyond } from "../../packages/frame/src/rail/along-rail.ts";
import { type BentRail, bentRail } from "../../packages/frame/src/rail/bent-rail.ts";
import { railExtremes } from "../../packages/frame/src/rail/extremes.ts";
import { seed } from "./arbitrary-rail.ts";

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Sixteenths: nought now and then. */
const sixteenths = (most: number) =>
  fc.integer({ min: -16 * most, max: 16 * most }).map((one) => one / 16);

/** One smooth span with any shape at its start. */
const span = fc
  .record({
    h: fc.integer({ min: 4, max: 32 }).map((one) => one / 8),
    uniform: sixteenths(3),
    deflection: sixteenths(2),
    slope: sixteenths(2),
    moment: sixteenths(3),
    shear: sixteenths(3),
  })
  .map(({ h, uniform, deflection, slope, moment, shear }): BentRail => {
    const bent = bentRail(Float64Array.from([1, 1 + h]), 2);
    bent.uniform = uniform;
    bent.deflection[0] = deflection;
    bent.slope[0] = slope;
    bent.moment[0] = moment;
    bent.shear[0] = shear;
    const end = pointBeyond(bent, 0, h);
    bent.deflection[1] = end.deflection;
    bent.slope[1] = end.slope;
    bent.moment[1] = end.moment;
    bent.shear[1] = end.shear;
    return bent;
  });

/**
 * A span from 0 to 4 with slope k (x - a)(x - b)(x - c), or without the last, of stiffness 1: its
 * deflection, moment, shear and load by integration and derivation.
 */
function spanOfSlope(k: number, roots: readonly number[], offset: number): BentRail {
  const [a = 0, b = 0, c] = roots;
  const cubic = c === undefined ? 0 : k;
  const square = c === undefined ? k : -k * (a + b + c);
  const linear = c === undefined ? -k * (a + b) : k * (a * b + b * c + c * a);
  const constant = c === undefined ? k * a * b : -k * a * b * c;
  const bent = bentRail(Float64Array.from([0, 4]), 1);
  bent.uniform = 6 * cubic;
  for (const [node, x] of [0, 4].entries()) {
    bent.deflection[node] =
      offset + x * (constant + x * (linear / 2 + x * (square / 3 + (x * cubic) / 4)));
    bent.slope[node] = constant + x * (linear + x * (square + x * cubic));
    bent.moment[node] = linear + x * (2 * square + x * 3 * cubic);
    bent.shear[node] = 2 * square + x * 6 * cubic;
  }
  return bent;
}

/** Roots of the slope; which of them lies highest, and which lowest, with k above zero. */
const slopes: readonly [readonly number[], number, number][] = [
  [[0.125, 2, 3.875], 2, NaN],
  [[0.125, 1.5, 3.75], 1.5, 3.75],
  [[0.25, 2.5, 3.875], 2.5, 0.25],
  [[-1, 0.5, 3.75], 0.5, 3.75],
  [[0.25, 3.5, 5], 3.5, 0.25],
  [[-5, 0.5, 3.75], 0.5, 3.75],
  [[0.25, 3.5, 9], 3.5, 0.25],
  [[0.5, 3.75], 0.5, 3.75],
  [[2, 2, 2], NaN, 2],
];

const places = (h: number) => Array.from({ length: 301 }, (_, place) => (h * place) / 300);
const upTo = (found: number, most: number) =>
  expect(found).toBeGreaterThanOrEqual(most - 1e-9 * Math.max(1, Math.abs(most)));

describe(`where a smooth span carries most (seed ${seed})`, () => {
  test("no place of a rail is beyond its extremes, and each is met where it is said to be", () => {
    let inside = 0;
    fc.assert(
      fc.property(span, (bent) => {
        const h = (bent.x[1] ?? NaN) - 1;
        const found = railExtremes(bent);
        const all = places(h).map((way) => pointBeyond(bent, 0, way));
        const most = (of: (point: (typeof all)[number]) => number) => Math.max(...all.map(of));
        upTo(
          found.momentMost.moment,
          most(({ moment }) => moment),
        );
        upTo(
          -found.momentLeast.moment,
          most(({ moment }) => -moment),
        );
        upTo(
          Math.abs(found.shear.shear),
          most(({ shear }) => Math.abs(shear)),
        );
        upTo(
          Math.abs(found.deflection.deflection),
          most(({ deflection }) => Math.abs(deflection)),
        );
        for (const point of Object.values(found)) {
          expect(pointBeyond(bent, 0, point.x - 1).deflection).toBeCloseTo(point.deflection, 9);
          expect(point.x).toBeGreaterThanOrEqual(1);
          expect(point.x).toBeLessThanOrEqual(1 + h + 1e-12);
        }
        const { deflection } = found;
        if (deflection.x > 1 && deflection.x < 1 + h - 1e-9) {
          inside += 1;
          expect(Math.abs(deflection.slope)).toBeLessThan(1e-9);
        }
      }),
      { seed, numRuns: 300 },
    );
    expect(inside).toBeGreaterThan(0);
  });

  test.each(slopes)(
    "slope zero at %j: farthest off at the highest or lowest of these",
    (roots, high, low) => {
      for (const [k, up, place] of [
        [1, 1, high],
        [1, -1, low],
        [-1, 1, low],
        [-1, -1, high],
      ] as const) {
        if (Number.isNaN(place)) continue;
        // So far off that only the way to its side decides.
        const { deflection } = railExtremes(spanOfSlope(k, roots, up * 500));
        expect(deflection.x, `${k} ${up}`).toBeCloseTo(place, 5);
        expect(Math.abs(deflection.slope)).toBeLessThan(1e-12);
      }
    },
  );

  test("of equal nodes the leftmost counts", () => {
    const even = bentRail(Float64Array.from([0, 4, 8]), 1);
    even.moment.fill(3);
    const { momentMost, momentLeast } = railExtremes(even);
    expect([momentMost.x, momentLeast.x]).toEqual([0, 0]);
    const loaded = bentRail(Float64Array.from([0, 4]), 1);
    loaded.uniform = -1;
    loaded.shear.set([2, -2]);
    loaded.deflection.set([5, 5]);
    loaded.slope.set([2, 2]);
    expect(railExtremes(loaded).shear.x).toBe(0);
    expect(railExtremes(bentRail(Float64Array.from([0, 4]), 1)).deflection.x).toBe(0);
  });

  test("slope, moment and shear are what deflection, slope and moment rise by", () => {
    fc.assert(
      fc.property(span, double(0.1, 0.9), (bent, share) => {
        const way = share * ((bent.x[1] ?? NaN) - 1);
        const small = 1e-4;
        const [before, here, after] = [way - small, way, way + small].map((at) =>
          pointBeyond(bent, 0, at),
        );
        if (!before || !here || !after) throw new Error("three points");
        const rise = (of: "deflection" | "slope" | "moment") =>
          (after[of] - before[of]) / (2 * small);
        expect(rise("deflection")).toBeCloseTo(here.slope, 6);
        expect(2 * rise("slope")).toBeCloseTo(here.moment, 6);
        expect(rise("moment")).toBeCloseTo(here.shear, 6);
      }),
      { seed, numRuns: 100 },
    );
  });

  test("no place of a rail in plan is beyond its peaks, its line load even or rising", () => {
    const loads = fc.record({
      h: fc.integer({ min: 4, max: 32 }).map((one) => one / 8),
      q: sixteenths(3),
      rise: sixteenths(3),
      moment: sixteenths(3),
      shear: sixteenths(3),
      torque: sixteenths(3),
    });
    fc.assert(
      fc.property(loads, ({ h, q, rise, moment: m, shear: v, torque }) => {
        const length = 2 * h;
        const one = {
          moment: Float64Array.from([m, 0]),
          shear: Float64Array.from([v, 0]),
          torque: Float64Array.from([torque, 0]),
        };
        const plan = { y: Float64Array.from([h / 2, h / 2 + h]), base: { length } };
        // Even load at mid-length, so that the span starts with q.
        const evenHold = Float64Array.from([q + (rise * h) / 2, rise]);
        const response = { left: one, evenHold } as unknown as PlanResponse;
        const peaks = noPeaks();
        findPeaks(plan as unknown as BasePlan, response, "left", peaks);
        const momentAt = (way: number) => m + v * way + (q * way ** 2) / 2 + (rise * way ** 3) / 6;
        const shearAt = (way: number) => v + q * way + (rise * way ** 2) / 2;
        const start = h / 2;
        upTo(peaks.momentMost, Math.max(0, ...places(h).map(momentAt)));
        upTo(-peaks.momentLeast, Math.max(0, ...places(h).map((way) => -momentAt(way))));
        upTo(Math.abs(peaks.shear), Math.max(...places(h).map((way) => Math.abs(shearAt(way)))));
        expect(peaks.torque === torque).toBe(true);
        if (torque !== 0) expect(peaks.torqueAt).toBe(start);
        if (peaks.momentMost > 0) {
          expect(momentAt(peaks.momentMostAt - start)).toBeCloseTo(peaks.momentMost, 9);
        }
        if (peaks.momentLeast < 0) {
          expect(momentAt(peaks.momentLeastAt - start)).toBeCloseTo(peaks.momentLeast, 9);
        }
        if (peaks.shear !== 0) expect(shearAt(peaks.shearAt - start)).toBeCloseTo(peaks.shear, 9);
      }),
      { seed, numRuns: 300 },
    );
  });
});
