import { Refusal } from "@hoopstay/core";
import { hoopLine, placeAtHeight, pointOnLine, tangentOnLine } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arbitraryHoop, seed } from "./hoop-arbitrary.ts";
import { portal, segment } from "./hoop-simple.ts";

const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 9));
const sides = ["left", "right"] as const;

describe("a line of pieces", () => {
  test("a kink has two directions, the right one unless said", () => {
    const line = portal(4, 6);
    const [up, level, down] = [near(0, 1), near(1, 0), near(0, -1)];
    const along = (s: number, side?: "left" | "right") => {
      const { x, z } = tangentOnLine(line, s, side);
      return [x, z];
    };
    expect(along(4, "left")).toEqual(up);
    expect(along(4, "right")).toEqual(level);
    expect(along(4)).toEqual(level);
    expect(along(10, "left")).toEqual(level);
    expect(along(10)).toEqual(down);
    expect(along(0, "left")).toEqual(up);
    expect(along(14)).toEqual(down);
    expect(along(2, "left")).toEqual(up);
    expect(along(7, "left")).toEqual(level);
  });

  test("points on a circle", () => {
    const line = segment(3, Math.PI / 2);
    for (const turn of [0, 0.3, 1.2, Math.PI / 2, 2.9, Math.PI]) {
      const { x, z } = pointOnLine(line, 3 * turn);
      expect([x, z]).toEqual(near(-3 * Math.cos(turn), 3 * Math.sin(turn)));
      const along = tangentOnLine(line, 3 * turn);
      expect([along.x, along.z]).toEqual(near(Math.sin(turn), Math.cos(turn)));
    }
  });
});

describe("the place where a line reaches a height", () => {
  test("a column, both sides, its foot and its top with it", () => {
    const line = portal(4, 6);
    for (const z of [0, 1, 3.5, 4]) {
      expect(placeAtHeight(line, z, "left")).toBeCloseTo(z, 9);
      expect(placeAtHeight(line, z, "right")).toBeCloseTo(14 - z, 9);
    }
  });

  test("legs that lean: the height over the sine", () => {
    const line = hoopLine([
      { kind: "straight", from: { x: 0, z: 0 }, to: { x: 3, z: 4 } },
      { kind: "straight", from: { x: 3, z: 4 }, to: { x: 11, z: -2 } },
    ]);
    expect(placeAtHeight(line, 2, "left")).toBeCloseTo(2.5, 9);
    expect(placeAtHeight(line, 1, "right")).toBeCloseTo(15 - 3 / 0.6, 9);
    expect(placeAtHeight(line, -1, "right")).toBeCloseTo(15 - 1 / 0.6, 9);
  });

  test("a semicircle, and a horseshoe whose feet run inward", () => {
    const line = segment(3, Math.PI / 2);
    for (const z of [0.1, 1.5, 2.9]) {
      expect(placeAtHeight(line, z, "left")).toBeCloseTo(3 * Math.asin(z / 3), 8);
      expect(placeAtHeight(line, z, "right")).toBeCloseTo(3 * (Math.PI - Math.asin(z / 3)), 8);
    }
    // Half a turn and a sixth: feet 1.5 m below the centre; the height of the centre after a sixth.
    const horseshoe = segment(3, (2 * Math.PI) / 3);
    expect(placeAtHeight(horseshoe, 1.5, "left")).toBeCloseTo((3 * Math.PI) / 6, 9);
    expect(placeAtHeight(horseshoe, 1.5, "right")).toBeCloseTo(3 * ((7 * Math.PI) / 6), 9);
    expect(placeAtHeight(horseshoe, 3, "left")).toBeCloseTo((3 * Math.PI) / 3, 9);
  });

  test("legs, then an arc that starts as the leg ends", () => {
    const line = hoopLine([
      { kind: "straight", from: { x: -3, z: 0 }, to: { x: -3, z: 2 } },
      { kind: "arc", centre: { x: 0, z: 2 }, radius: 3, fromAngle: Math.PI, toAngle: 0 },
      { kind: "straight", from: { x: 3, z: 2 }, to: { x: 3, z: -1 } },
    ]);
    expect(placeAtHeight(line, 2, "left")).toBeCloseTo(2, 6);
    expect(placeAtHeight(line, 3.5, "left")).toBeCloseTo(2 + 3 * (Math.PI / 6), 9);
    expect(placeAtHeight(line, 3.5, "right")).toBeCloseTo(2 + 3 * ((5 * Math.PI) / 6), 9);
    expect(placeAtHeight(line, 1, "right")).toBeCloseTo(line.length - 2, 9);
    expect(placeAtHeight(line, -1, "right")).toBe(line.length);
    expect(placeAtHeight(line, 0, "left")).toBe(0);
  });

  test("a circle turned round as a whole has the same places", () => {
    const semicircle = (round: number) =>
      hoopLine([
        {
          kind: "arc",
          centre: { x: 0, z: 0 },
          radius: 3,
          fromAngle: Math.PI + round,
          toAngle: round,
        },
      ]);
    for (const turns of [-2, 2]) {
      const line = semicircle(turns * Math.PI);
      expect(placeAtHeight(line, 1.5, "left")).toBeCloseTo((3 * Math.PI) / 6, 9);
      expect(placeAtHeight(line, 1.5, "right")).toBeCloseTo((3 * 5 * Math.PI) / 6, 9);
    }
  });

  test("the crown itself, however it rounds, and nothing above it", () => {
    for (let i = 0; i < 200; i += 1) {
      const [radius, half] = [1.5 + 0.0237 * i, 0.5 + (1.6 * (i % 97)) / 97];
      const line = segment(radius, half);
      const crown = pointOnLine(line, line.length / 2).z;
      for (const side of sides) {
        // A height is as flat at the crown as its square root: half the digits of the place.
        expect(placeAtHeight(line, crown, side) / line.length).toBeCloseTo(0.5, 6);
        expect(() => placeAtHeight(line, crown + 1e-11 * radius, side)).toThrow(Refusal);
      }
    }
  });

  test("a piece is left where it ends, not carried on", () => {
    const line = hoopLine([
      { kind: "straight", from: { x: 0, z: 0 }, to: { x: 0, z: 1 } },
      { kind: "straight", from: { x: 0, z: 1 }, to: { x: 3, z: 2 } },
      { kind: "straight", from: { x: 3, z: 2 }, to: { x: 5, z: 5 } },
    ]);
    const bent = 1 + Math.hypot(3, 1) + 0.5 * Math.hypot(2 / 3, 1);
    expect(placeAtHeight(line, 2.5, "left")).toBeCloseTo(bent, 9);
  });

  test("a piece ends where it ends but for rounding, a billionth of its length", () => {
    const line = portal(400, 600);
    const beyond = 400 * (1 + 0.5e-9);
    expect([placeAtHeight(line, beyond, "left"), placeAtHeight(line, beyond, "right")]).toEqual([
      400, 1000,
    ]);
    expect(() => placeAtHeight(line, 400 * (1 + 2e-9), "left")).toThrow(Refusal);
  });

  test("heights that the line does not reach, or that lie below the foot of that side", () => {
    const line = segment(3, Math.PI / 2);
    const refused = (z: number, side: "left" | "right", of = line) =>
      expect(() => placeAtHeight(of, z, side)).toThrow(/a height that the hoop reaches/);
    for (const side of sides) {
      refused(3.001, side);
      refused(-0.001, side);
      refused(Number.NaN, side);
      refused(4.001, side, portal(4, 6));
    }
    const uneven = hoopLine([
      { kind: "straight", from: { x: 0, z: 1 }, to: { x: 0, z: 4 } },
      { kind: "straight", from: { x: 0, z: 4 }, to: { x: 5, z: 0 } },
    ]);
    refused(0.5, "left", uneven);
    expect(placeAtHeight(uneven, 0.5, "right")).toBeCloseTo(3 + (3.5 / 4) * Math.hypot(5, 4), 9);
  });

  test(`is that high, and all before it is lower (seed ${seed})`, () => {
    fc.assert(
      fc.property(
        arbitraryHoop,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.constantFrom(...sides),
        ({ line }, share, side) => {
          const heightAt = (s: number) => pointOnLine(line, s).z;
          const far = (way: number) => (side === "left" ? way : line.length - way);
          const heights = Array.from({ length: 400 }, (_, place) =>
            heightAt(far((place / 399) * line.length)),
          );
          const foot = heights[0] ?? NaN;
          const crown = Math.max(...heights);
          fc.pre(crown > foot + 0.01);
          const z = foot + share * (crown - foot);
          const s = placeAtHeight(line, z, side);
          expect(heightAt(s)).toBeCloseTo(z, 9);
          for (let step = 0; step < 50; step += 1) {
            const way = (far(s) * step) / 50;
            expect(heightAt(far(way))).toBeLessThan(z + 1e-9);
          }
        },
      ),
      { seed, numRuns: 100 },
    );
  });
});
