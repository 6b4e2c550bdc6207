import { cornerRadii, designWallOf, properties } from "@hoopstay/section";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { angle, rectangularTube, seed } from "./arbitrary-tube.ts";

/** Width of a rounded rectangle at height y above its middle. */
function chord(depth: number, width: number, radius: number, y: number): number {
  const above = Math.abs(y) - (depth / 2 - radius);
  if (Math.abs(y) >= depth / 2) return 0;
  return above <= 0 ? width : width - 2 * (radius - Math.sqrt(radius ** 2 - above ** 2));
}

/** Midpoint rule over [from, to], which never samples an end. */
function integrate(from: number, to: number, value: (y: number) => number): number {
  const strips = 20_000;
  const step = (to - from) / strips;
  let sum = 0;
  for (let strip = 0; strip < strips; strip += 1) sum += value(from + (strip + 0.5) * step);
  return sum * step;
}

describe("properties agree with integration over strips", () => {
  test("rectangular tube: area, second moment, plastic modulus", () => {
    fc.assert(
      fc.property(rectangularTube, (tube) => {
        const { outside, inside } = cornerRadii(tube.convention, tube.wall);
        const wall = designWallOf(tube);
        const { depth, width } = tube;
        const steel = (y: number) =>
          chord(depth, width, outside * wall, y) -
          chord(depth - 2 * wall, width - 2 * wall, inside * wall, y);
        const over = (weight: (y: number) => number) =>
          2 * integrate(0, depth / 2 - wall, (y) => steel(y) * weight(y)) +
          2 * integrate(depth / 2 - wall, depth / 2, (y) => steel(y) * weight(y));
        const all = properties(tube);
        expect(over(() => 1) / all.area).toBeCloseTo(1, 5);
        expect(over((y) => y * y) / all.secondMomentX).toBeCloseTo(1, 5);
        expect(over((y) => y) / all.plasticModulusX).toBeCloseTo(1, 5);
      }),
      { seed, numRuns: 40 },
    );
  });

  test("angle: area, second moment, both moduli, least radius", () => {
    fc.assert(
      fc.property(angle, (tube) => {
        const [upright, lying] = tube.legs;
        const { thickness } = tube;
        const all = properties(tube);
        const strip = (y: number) => (y < thickness ? lying : thickness);
        const over = (value: (y: number) => number) =>
          integrate(0, thickness, (y) => value(y) * strip(y)) +
          integrate(thickness, upright, (y) => value(y) * strip(y));
        const area = over(() => 1);
        const centre = over((y) => y) / area;
        expect(area / all.area).toBeCloseTo(1, 9);
        const second = over((y) => (y - centre) ** 2);
        expect(second / all.secondMomentX).toBeCloseTo(1, 6);
        expect(second / (upright - centre) / all.elasticModulusX).toBeCloseTo(1, 6);
        const first = (axis: number) => over((y) => Math.abs(y - axis));
        expect(least(first, 0, upright) / all.plasticModulusX).toBeCloseTo(1, 5);
        const across = (y: number) => strip(y) / 2;
        const side = over(across) / area;
        const product = over((y) => (y - centre) * (across(y) - side));
        const sum = all.secondMomentX + all.secondMomentY;
        const circle = Math.hypot((all.secondMomentX - all.secondMomentY) / 2, product);
        const smallest = Math.sqrt((sum / 2 - circle) / area);
        expect(smallest / all.leastRadius).toBeCloseTo(1, 5);
      }),
      { seed, numRuns: 15 },
    );
  });
});

/** The plastic axis is the one about which the first moment of both sides is least. */
function least(value: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let turn = 0; turn < 60; turn += 1) {
    const third = (high - low) / 3;
    if (value(low + third) < value(high - third)) high -= third;
    else low += third;
  }
  return value((low + high) / 2);
}
