import { Chapter } from "@hoopstay/core";
import {
  archBucklingLength,
  eulerLoad,
  interaction,
  interactionReach,
  interactionWithTorsion,
  loadLevel,
  momentAmplifier,
  workInteraction,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, seed } from "./member-arbitrary.ts";

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 2000 });

const share = fc.oneof(fc.constant(0), between(1e-6, 1.5));
const strength = between(1, 1e5);
const sign = fc.constantFrom(1, -1);

describe("forces together", () => {
  test("signs do not matter, and the working gives the same number", () => {
    holds(
      fc.property(share, share, share, strength, sign, sign, (p, x, y, R, one, other) => {
        const plain = interaction(p * R, R, x * R, R, y * R, R);
        expect(interaction(one * p * R, R, other * x * R, R, -one * y * R, R)).toBe(plain);
        const chapter = new Chapter("interaction", "forces together");
        const worked = workInteraction([-p * R, R], [one * x * R, R], [y * R, R], chapter);
        expect(worked).toBe(plain);
        expect(chapter.steps).toHaveLength(1);
      }),
    );
  });

  test("both axes count alike", () => {
    holds(
      fc.property(share, share, share, (p, x, y) => {
        const swapped = interaction(p, 1, y, 1, x, 1);
        expect(interaction(p, 1, x, 1, y, 1)).toBeCloseTo(swapped, 12);
        expect(interactionReach(p, x, y)).toBeCloseTo(interactionReach(p, y, x), 12);
      }),
    );
  });

  test("the larger form has the verdict of H1-1, is no lower up to 1, and grows with the load", () => {
    holds(
      fc.property(share, share, share, between(0.1, 3), (p, x, y, times) => {
        const printed = interaction(p, 1, x, 1, y, 1);
        const reach = interactionReach(p, x, y);
        fc.pre(Math.abs(printed - 1) > 1e-9);
        expect(reach > 1).toBe(printed > 1);
        if (printed <= 1) expect(reach).toBeGreaterThanOrEqual(printed - 1e-12);
        expect(interactionReach(times * p, times * x, times * y)).toBeCloseTo(times * reach, 12);
        fc.pre(reach > 0);
        const full = interaction(p / reach, 1, x / reach, 1, y / reach, 1);
        expect(full).toBeCloseTo(1, 9);
      }),
    );
  });

  test("more of any force never uses less; a weaker section never less", () => {
    holds(
      fc.property(share, share, share, share, share, between(1, 2), (p, x, y, v, t, more) => {
        const before = interactionWithTorsion(p, x, y, v, t);
        const after = [
          interactionWithTorsion(more * p, x, y, v, t),
          interactionWithTorsion(p, more * x, y, v, t),
          interactionWithTorsion(p, x, more * y, v, t),
          interactionWithTorsion(p, x, y, more * v, t),
          interactionWithTorsion(p, x, y, v, more * t),
        ];
        for (const value of after) expect(value).toBeGreaterThanOrEqual(before - 1e-12);
        expect(interaction(p, 1, x, 1 / more, y, 1)).toBeGreaterThanOrEqual(
          interaction(p, 1, x, 1, y, 1) - 1e-12,
        );
      }),
    );
  });

  test("more axial force does use less by the printed form just past a fifth of it, if above 1", () => {
    expect(interaction(0.19, 1, 2, 1, 0, 1)).toBeGreaterThan(interaction(0.21, 1, 2, 1, 0, 1));
    expect(interactionReach(0.19, 2, 0)).toBeLessThan(interactionReach(0.21, 2, 0));
  });
});

describe("moments that grow by compression", () => {
  test("1 in tension and without force, more with more compression, infinite at N_e", () => {
    for (const method of ["ASD", "LRFD"] as const) {
      const most = 1 / loadLevel[method].value;
      expect(momentAmplifier(method, -5, 1)).toBe(1);
      expect(momentAmplifier(method, 0, 1)).toBe(1);
      expect(momentAmplifier(method, most / 2, 1)).toBeCloseTo(2, 12);
      expect(momentAmplifier(method, most * (1 - 1e-6), 1)).toBeGreaterThan(1e5);
      expect(momentAmplifier(method, most * (1 + 1e-12), 1)).toBe(Number.POSITIVE_INFINITY);
      expect(momentAmplifier(method, 10, 1)).toBe(Number.POSITIVE_INFINITY);
    }
    expect(loadLevel.ASD.value).toBe(1.6);
    expect(loadLevel.LRFD.value).toBe(1);
  });

  test("never below 1 and never less with more compression or less stiffness", () => {
    holds(
      fc.property(between(-2, 2), between(0.1, 3), between(1, 2), (N, Ne, more) => {
        const before = momentAmplifier("ASD", N, Ne);
        expect(before).toBeGreaterThanOrEqual(1);
        expect(momentAmplifier("ASD", Math.max(N, more * N), Ne)).toBeGreaterThanOrEqual(before);
        expect(momentAmplifier("ASD", N, Ne / more)).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  test("half the arc alone is a quarter unsafe for a semicircle: N_e is 3 E I/R2, not 4", () => {
    const load = eulerLoad.evaluate(1, 1, archBucklingLength(Math.PI, Math.PI / 2));
    expect(load).toBeCloseTo(3, 12);
    expect(eulerLoad.evaluate(1, 1, Math.PI / 2)).toBeCloseTo(4, 12);
  });

  test("a flat arch buckles by half its length; more of a circle at the same arc, sooner", () => {
    expect(archBucklingLength(10, 1e-4)).toBeCloseTo(5, 8);
    holds(
      fc.property(between(0.01, 3), between(1, 1.5), (half, more) => {
        fc.pre(more * half < Math.PI);
        const length = archBucklingLength(10, half);
        expect(archBucklingLength(10, more * half)).toBeGreaterThanOrEqual(length);
        expect(archBucklingLength(20, half)).toBeCloseTo(2 * length, 9);
      }),
    );
  });

  test("half an angle up to pi, not from there, and no arc that is none", () => {
    expect(archBucklingLength(1, Math.PI * (1 - 1e-9))).toBeGreaterThan(1000);
    for (const half of [Math.PI, 4, 0, -1, Number.NaN, 90]) {
      expect(() => archBucklingLength(1, half)).toThrow("half an angle");
    }
    for (const arc of [0, -1, Number.NaN, 1000]) {
      expect(() => archBucklingLength(arc, 1)).toThrow("an arc");
    }
  });
});
