import { type Racked, type RackedBase, rackBase } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";

interface Sizes {
  readonly length: number;
  readonly span: number;
  readonly axial: number;
  readonly bending: number;
}

/** A base of one tube throughout, two of its cross members a gap apart at mid-length. */
const baseWith = (gap: number, { length, span, ...tube }: Sizes): RackedBase => ({
  length,
  span,
  left: tube,
  right: tube,
  crossMembers: [0, length / 2 - gap, length / 2, length].map((y) => ({ y, ...tube })),
  braces: [],
});
const drag = { pull: { left: 9000, right: 2000 }, friction: 6000, held: "left" } as const;
const millimetres = [3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 8, 9].map((gap) => gap / 1000);

/** What holds the corners of a base without friction, from the members that end there. */
function expectBalance({ hold, left, right, crossMembers }: Racked, side: number): void {
  const [front, rear, along] = [crossMembers[0]?.at(-1), crossMembers.at(-1)?.[0], left.at(-1)];
  const near = (found: number, expected: number) =>
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(1.0001e-9 * 11_000);
  near((along?.axial ?? NaN) + (rear?.shear ?? NaN), 11_000);
  const across = hold === "corners" ? side : 0;
  near(-(along?.shear ?? NaN) - (rear?.axial ?? NaN), across);
  near((right[0]?.shear ?? NaN) + (front?.axial ?? NaN), -across);
}

describe("joints some millimetres apart", () => {
  test("two cross members carry about as much as two on one place", () => {
    const sizes = { length: 30, span: 6, axial: 1.4e8, bending: 2e4 };
    const frontMoments = (gap: number) => {
      const found = rackBase(baseWith(gap, sizes), drag);
      if (found.outcome !== "held") throw new Error(found.outcome);
      return found.ways.map(({ crossMembers }) => crossMembers[0]?.[0]?.moment ?? NaN);
    };
    const together = frontMoments(0);
    for (const gap of millimetres) {
      for (const [i, moment] of frontMoments(gap).entries()) {
        expect(moment / (together[i] ?? NaN)).toBeCloseTo(1, 2);
      }
    }
  });

  test("an answer balances the base to a billionth, or there is none", () => {
    const outcomes = { held: 0, unsettled: 0 };
    for (const gap of [0.004, 0.007, 0.01, 0.02, 0.05, 0.2]) {
      for (const [length, span] of [
        [2, 60],
        [10, 60],
        [20, 6],
      ] as const) {
        for (const bending of [2e4, 5.5e4]) {
          const base = baseWith(gap, { length, span, axial: 1e6, bending });
          const found = rackBase(base, { ...drag, friction: 0 });
          expect(found.outcome).toMatch(/^(held|unsettled)$/);
          if (found.outcome === "held") {
            outcomes.held += 1;
            for (const way of found.ways) expectBalance(way, found.turning / length);
          } else outcomes.unsettled += 1;
        }
      }
    }
    expect(outcomes.held).toBeGreaterThan(5);
    expect(outcomes.unsettled).toBeGreaterThan(5);
  });
});

describe("a pull that leaves nothing to hold", () => {
  const base = baseWith(1, { length: 20, span: 6, axial: 1.4e8, bending: 5.5e4 });

  test("no more than the friction: nothing is left for the held corner", () => {
    const found = rackBase(base, { ...drag, friction: 11_000 });
    expect(found).toMatchObject({ outcome: "held", heldForce: 0 });
  });

  test("none at all: nothing anywhere", () => {
    const found = rackBase(base, { pull: { left: 0, right: 0 }, friction: 0, held: "right" });
    if (found.outcome !== "held") throw new Error(found.outcome);
    expect([found.heldForce, found.turning].map(Math.abs)).toEqual([0, 0]);
    for (const { left, right, crossMembers } of found.ways) {
      for (const { axial, shear, moment } of [...left, ...right, ...crossMembers.flat()]) {
        expect([axial, shear, moment].map(Math.abs)).toEqual([0, 0, 0]);
      }
    }
  });
});
