import { leastLoads, shellOf, singleCheckCases, torsionCases } from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  between,
  body,
  componentsOf,
  ends,
  holds,
  insideCoefficients,
  seed,
  surfacesOf,
} from "./arbitrary-house.ts";

const G = 0.85;
const psf = (0.45359237 * 9.80665) / 0.3048 ** 2;

describe(`torsion and least loads by hand (seed ${seed})`, () => {
  test("semicircle on the ground: cases 2 and 4 by the formula of the figure", () => {
    holds(
      fc.property(between(3, 10), between(3, 30), (span, length) => {
        const plain = { shape: "round" as const, span, rise: span / 2, length, springing: 0 };
        const shell = shellOf({ ...plain, hoopDiameter: 0.05, hoopCount: 9 });
        const [B, L] = [span + 0.05, length + 0.05];
        const house = { shell, obstacles: [], frame: { dragArea: 0, x: 0, y: 0, z: 0 } };
        const surfaces = surfacesOf(house, "covered", { front: true, back: true });
        const { cases, ...table } = torsionCases(surfaces, [0.18], { across: L, along: B });
        const half = { arc: Math.SQRT1_2, span: Math.sqrt(3) / 2 };
        const lee = L / B >= 4 ? 0.2 : L / B >= 2 ? 0.4 - 0.05 * (L / B) : 0.7 - 0.2 * (L / B);
        const along = G * (0.8 + (L < B ? 0.5 : lee)) * ((Math.PI * B * B) / 8);
        for (const [index, one] of cases.entries()) {
          const reading = one.across?.set?.reading;
          const across = reading ? G * 1.2 * half[reading] * (B / 2) * L : 0;
          const push = one.along ? along : 0;
          const share = one.across && one.along ? 0.5625 : 0.75;
          const [fx = NaN, fy = NaN, , , , mz = NaN] = componentsOf({ ...table, cases }, index);
          expect(Math.abs(fx)).toBeCloseTo(share * across, 9);
          expect(Math.abs(fy)).toBeCloseTo(share * push, 9);
          const twist = share * 0.15 * (across * L + push * B);
          expect(mz).toBeCloseTo(one.twist * twist, 8);
          expect(one.number).toBe(one.across && one.along ? 4 : 2);
        }
      }),
      60,
    );
  });

  test("torsion leaves vertical pressure whole and scales horizontal force by 0.75", () => {
    holds(
      fc.property(body, ends, insideCoefficients, (house, present, inside) => {
        const surfaces = surfacesOf(house, "covered", present);
        const single = singleCheckCases(surfaces, inside);
        const sizes = { across: house.shell.L, along: house.shell.b };
        const twisted = torsionCases(surfaces, inside, sizes);
        for (let index = 0; index < single.count; index += 1) {
          const [fx = NaN, , fz, , , mz = NaN, bare = NaN] = componentsOf(single, index);
          const first = componentsOf(twisted, 2 * index);
          const second = componentsOf(twisted, 2 * index + 1);
          expect(first[0]).toBeCloseTo(0.75 * fx, 9);
          expect(first[6]).toBeCloseTo(0.75 * bare, 9);
          expect(first[2]).toBe(fz);
          expect(second.slice(0, 5)).toEqual(first.slice(0, 5));
          const middle = ((first[5] ?? NaN) + (second[5] ?? NaN)) / 2;
          expect(middle).toBeCloseTo(0.75 * mz, 8);
        }
      }),
      60,
    );
  });

  test("least load of a semicircle: 16 and 8 psf on its projections", () => {
    const plain = { shape: "round" as const, span: 5.95, rise: 2.975, length: 11.95 };
    const shell = shellOf({ ...plain, springing: 0.25, hoopDiameter: 0.05, hoopCount: 11 });
    const loads = leastLoads(shell, "covered", []);
    const force = (id: string) => loads.find((one) => one.id === id)?.force;
    expect(force("least")).toBeCloseTo(psf * 12 * (16 * 0.25 + 8 * 3), 8);
    expect(force("least-lower")).toBeCloseTo(psf * 12 * (16 * 1.75 + 8 * 1.5), 8);
    expect(force("least-end")).toBeCloseTo(16 * psf * (4.5 * Math.PI + 6 * 0.25), 8);
    const [open] = leastLoads(shell, "open", []);
    expect(open?.force).toBeCloseTo(16 * psf * 12 * 3.25, 8);
    expect(open?.height).toBeCloseTo(3.25 / 2, 10);
    expect(leastLoads(shell, "bare", [])).toEqual([]);
  });

  test("one end missing: inside pressure does not cancel, 36 % more drag at L/B 2.7", () => {
    const plain = { shape: "round" as const, span: 5.95, rise: 2.975, length: 16.15 };
    const shell = shellOf({ ...plain, springing: 0, hoopDiameter: 0.05, hoopCount: 15 });
    const house = { shell, obstacles: [], frame: { dragArea: 0, x: 0, y: 0, z: 0 } };
    const drag = (front: boolean, inside: number) => {
      const surfaces = surfacesOf(house, "covered", { front, back: true });
      const { count, components } = singleCheckCases(surfaces, [inside, -inside]);
      const along = Array.from({ length: count }, (_, row) => components[7 * row + 1] ?? NaN);
      return Math.max(...along.map(Math.abs));
    };
    const leeward = 0.3 - 0.05 * 0.7;
    expect(drag(true, 0.18) / shell.endArea).toBeCloseTo(G * (0.8 + leeward), 10);
    expect(drag(false, 0.55) / shell.endArea).toBeCloseTo(G * 0.8 + 0.55, 10);
    expect(drag(false, 0.55) / drag(true, 0.18)).toBeCloseTo(1.36, 2);
  });
});
