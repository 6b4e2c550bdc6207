import {
  archedAcross,
  freeAcross,
  outline,
  type Point,
  type QuarterReading,
  type Shell,
  shellOf,
  sumAcross,
  type Zone,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, centreLines, holds, seed } from "./arbitrary-house.ts";

const reading = fc.constantFrom<QuarterReading>("arc", "span");

/** Force of unit pressure toward the surface on a run of points, by the midpoint of each chord. */
function integrate(points: Point[]): { drag: number; uplift: number; tip: number } {
  const total = { drag: 0, uplift: 0, tip: 0 };
  for (let index = 1; index < points.length; index += 1) {
    const [from, to] = [points[index - 1] as Point, points[index] as Point];
    const push = { x: to.z - from.z, z: from.x - to.x };
    const middle = { x: (from.x + to.x) / 2, z: (from.z + to.z) / 2 };
    total.drag += push.x;
    total.uplift += push.z;
    total.tip += middle.z * push.x - middle.x * push.z;
  }
  return total;
}

/** Points of the arch between two places across, from the circle through foot and crown. */
function archPoints({ b, f, springing }: Shell, from: number, to: number): Point[] {
  const round = f <= b / 2;
  const radius = round ? (b * b) / (8 * f) + f / 2 : (f * f) / b + b / 4;
  const [offset, rise] = round ? [0, f - radius] : [radius - b / 2, 0];
  const angles = (x: number) => Math.asin(Math.min(1, (Math.abs(x) + offset) / radius));
  const height = (x: number) => springing + rise + radius * Math.cos(angles(x));
  const steps = 4000;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const share = (1 - Math.cos((Math.PI * step) / steps)) / 2;
    const x = from + share * (to - from);
    return { x, z: height(x) };
  });
}

/** A pressure on the whole of a zone, one metre long. */
const zone = (a: Point, b: Point, coefficient: number): Zone => {
  const part = "arch" as const;
  return { name: "", part, a, b, from: 0, to: 1, shapeCoefficient: coefficient, coefficient };
};

describe(`laws of zones (seed ${seed})`, () => {
  test("the closed form of a zone's force and moment equals numeric integration", () => {
    holds(
      fc.property(centreLines, reading, between(-2, 2), (lines, by, pressure) => {
        const shell = shellOf(lines);
        const at = outline(shell, by);
        const corners = [
          at.windwardSpring,
          at.windwardQuarter,
          at.leewardQuarter,
          at.leewardSpring,
        ];
        for (let index = 1; index < corners.length; index += 1) {
          const [a, b] = corners.slice(index - 1, index + 1) as [Point, Point];
          const points = archPoints(shell, a.x, b.x);
          expect(points[0]?.z).toBeCloseTo(a.z, 6);
          const numeric = integrate(points);
          const closed = sumAcross([zone(a, b, pressure)]);
          const size = Math.abs(pressure) * shell.b * shell.crown + 1e-9;
          const tip = closed.dragMoment + closed.upliftMoment;
          expect(Math.abs(closed.drag - pressure * numeric.drag)).toBeLessThan(1e-7 * size);
          expect(Math.abs(closed.uplift - pressure * numeric.uplift)).toBeLessThan(1e-7 * size);
          expect(Math.abs(tip - pressure * numeric.tip)).toBeLessThan(1e-6 * size * shell.b);
        }
      }),
      60,
    );
  });

  test("M_y about the origin is p (|OB|^2 - |OA|^2)/2", () => {
    const place = fc.record({ x: between(-5, 5), z: between(0, 5) });
    holds(
      fc.property(place, place, between(-2, 2), (a, b, pressure) => {
        const { dragMoment, upliftMoment } = sumAcross([zone(a, b, pressure)]);
        const identity = (pressure * (b.x ** 2 + b.z ** 2 - a.x ** 2 - a.z ** 2)) / 2;
        expect(dragMoment + upliftMoment).toBeCloseTo(identity, 10);
      }),
    );
  });

  test("on a semicircle the arch's moment about a springing is V b/2", () => {
    holds(
      fc.property(between(3, 10), between(3, 30), (span, length) => {
        const plain = { shape: "round" as const, span, rise: span / 2, length, springing: 0 };
        const shell = shellOf({ ...plain, hoopDiameter: 0.05, hoopCount: 9 });
        for (const { force } of [...archedAcross(shell), ...freeAcross(shell)]) {
          const { uplift, dragMoment, upliftMoment } = force;
          expect(Math.abs(dragMoment + upliftMoment)).toBeLessThan(1e-10 * shell.b ** 2 * shell.L);
          const about = dragMoment + upliftMoment + (uplift * shell.b) / 2;
          expect(about / ((uplift * shell.b) / 2)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("arc and span reading share out the same projections", () => {
    holds(
      fc.property(centreLines, (lines) => {
        const shell = shellOf(lines);
        for (const { zones } of archedAcross(shell)) {
          const arch = zones.filter(({ part }) => part === "arch");
          const wide = arch.reduce((sum, { a, b }) => sum + b.x - a.x, 0);
          const tall = arch.reduce((sum, { a, b }) => sum + b.z - a.z, 0);
          expect(wide).toBeCloseTo(shell.b, 10);
          expect(tall).toBeCloseTo(0, 10);
          const even = sumAcross(arch.map((one) => ({ ...one, coefficient: -1 })));
          expect(even.uplift).toBeCloseTo(shell.b * shell.L, 9);
        }
      }),
    );
  });

  test("round and pointed arch agree at f = b/2", () => {
    holds(
      fc.property(centreLines, (lines) => {
        const half = { ...lines, rise: lines.span / 2 };
        const round = shellOf({ ...half, shape: "round" });
        const pointed = shellOf({ ...half, shape: "pointed" });
        expect(pointed.endArea / round.endArea).toBeCloseTo(1, 10);
        expect(pointed.endCentroid / round.endCentroid).toBeCloseTo(1, 10);
        expect(pointed.hoopLine / round.hoopLine).toBeCloseTo(1, 10);
        const other = archedAcross(pointed);
        for (const [place, { force }] of archedAcross(round).entries()) {
          const twin = other[place]?.force;
          expect(twin?.drag).toBeCloseTo(force.drag, 8);
          expect(twin?.uplift).toBeCloseTo(force.uplift, 8);
          expect(twin?.dragMoment).toBeCloseTo(force.dragMoment, 7);
        }
      }),
    );
  });
});
