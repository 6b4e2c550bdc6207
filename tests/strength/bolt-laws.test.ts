import { Chapter, Refusal } from "@hoopstay/core";
import { agreement } from "@hoopstay/core/second-evaluation";
import {
  boltStrength,
  combinedBoltTension,
  type SleeveJoint,
  type SleeveStrength,
  sleeveBoltForce,
  sleeveContactForce,
  sleeveStrength,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, holds, rounding, seed, sleeves } from "./bolt-examples.ts";

/** A computed sleeve; null where refused or not covered. */
function computed(joint: SleeveJoint): SleeveStrength | null {
  try {
    const strength = sleeveStrength(joint);
    return strength.covered ? strength : null;
  } catch (refusal) {
    expect(refusal).toBeInstanceOf(Refusal);
    return null;
  }
}

/** Law: the second is at least the first wherever both are computed, limit state by limit state. */
function notWeaker(first: SleeveJoint, second: SleeveJoint): boolean {
  const [one, other] = [computed(first), computed(second)];
  if (!one || !other) return false;
  for (const method of ["nominal", "ASD", "LRFD"] as const) {
    const lowest = (strength: SleeveStrength) =>
      Math.min(...strength.limitStates.map((state) => state[method]));
    expect(lowest(other)).toBeGreaterThanOrEqual(lowest(one) * rounding);
  }
  return true;
}

/** Runs a law and asks that it was not vacuous. */
function often(law: (count: () => void) => void): void {
  let times = 0;
  law(() => {
    times += 1;
  });
  expect(times).toBeGreaterThan(100);
}

describe(`laws of sleeves (seed ${seed})`, () => {
  test("total: finite strengths above zero, or not covered in words, or a coded refusal", () => {
    often((count) =>
      holds(
        fc.property(sleeves, (joint) => {
          try {
            const strength = sleeveStrength(joint);
            if (!strength.covered) {
              expect(strength.reason.length).toBeGreaterThan(20);
              return;
            }
            count();
            for (const { ASD, LRFD, nominal } of strength.limitStates) {
              expect(ASD).toBeGreaterThan(0);
              expect(LRFD).toBeGreaterThan(ASD);
              expect(nominal).toBeLessThan(Number.POSITIVE_INFINITY);
              expect(LRFD).toBeLessThan(nominal);
            }
          } catch (refusal) {
            expect(refusal).toBeInstanceOf(Refusal);
          }
        }),
      ),
    );
  });

  test("printed steps agree with their second evaluation, and the chapter changes nothing", () => {
    often((count) =>
      holds(
        fc.property(sleeves, (joint) => {
          const plain = computed(joint);
          if (!plain) return;
          const chapter = new Chapter("sleeve", "a sleeve");
          expect(sleeveStrength(joint, chapter)).toEqual(plain);
          const { disagreeing, steps } = agreement([chapter]);
          expect(disagreeing).toEqual([]);
          expect(steps).toBeGreaterThan(20);
          count();
        }),
      ),
    );
  });

  test("a thicker wall is never weaker", () => {
    often((count) =>
      holds(
        fc.property(sleeves, between(1, 1.8), fc.constantFrom("hoop", "stub"), (joint, k, name) => {
          const thicker = { ...joint[name], wall: k * joint[name].wall };
          if (notWeaker(joint, { ...joint, [name]: thicker })) count();
        }),
      ),
    );
  });

  test("a longer end distance is never weaker", () => {
    often((count) =>
      holds(
        fc.property(sleeves, between(1, 3), fc.constantFrom("hoop", "stub"), (joint, k, name) => {
          const end = joint[name].endDistance;
          if (end === null) return;
          if (notWeaker(joint, { ...joint, [name]: { ...joint[name], endDistance: k * end } })) {
            count();
          }
        }),
      ),
    );
  });

  test("one bolt more in the row never takes less, and never raises the force on one", () => {
    often((count) =>
      holds(
        // Wide holes close together leave so little between them that a bolt more may take strength.
        fc.property(sleeves, (any) => {
          const joint = { ...any, holeDiameter: null };
          if (notWeaker(joint, { ...joint, count: joint.count + 1 })) count();
        }),
      ),
    );
    holds(
      fc.property(
        fc.integer({ min: 2, max: 20 }),
        between(0.01, 0.3),
        between(-5000, 5000),
        between(-5000, 5000),
        between(-500, 500),
        (count, spacing, axial, shear, moment) => {
          const force = (n: number, s: number) =>
            sleeveBoltForce(axial, shear, moment, { count: n, spacing: s });
          const now = force(count, spacing);
          expect(force(count + 1, spacing)).toBeLessThanOrEqual(now / rounding);
          // Spread over the same length of sleeve.
          const same = (spacing * (count - 1)) / count;
          expect(force(count + 1, same)).toBeLessThanOrEqual(now / rounding);
        },
      ),
    );
  });

  test("a bigger bolt is never weaker in shear, and more shear never leaves more tension", () => {
    const bolts = sleeves.map(({ bolt, hoop }) => ({ ...bolt, grip: hoop.outside }));
    often((count) =>
      holds(
        fc.property(bolts, between(1, 2), between(0, 1.2), (bolt, k, share) => {
          const small = boltStrength({ ...bolt, planes: 2 });
          const big = boltStrength({ ...bolt, diameter: k * bolt.diameter, planes: 2 });
          if (!small.covered || !big.covered) return;
          count();
          expect(big.shear.ASD).toBeGreaterThanOrEqual(small.shear.ASD * rounding);
          expect(big.tension.LRFD).toBeGreaterThanOrEqual(small.tension.LRFD * rounding);
          const left = (part: number) => combinedBoltTension(small, part * small.shear.ASD, "ASD");
          expect(left(share)).toBeLessThanOrEqual(left(0.9 * share) / rounding);
        }),
      ),
    );
  });

  test("the force of contact grows with thrust and moment, and falls with the sleeve's length", () => {
    const forces = between(0, 5000);
    holds(
      fc.property(forces, between(0, 800), between(0.05, 0.6), between(1, 2), (V, M, L, k) => {
        const now = sleeveContactForce(V, M, L);
        expect(Number.isFinite(now)).toBe(true);
        const least = now * rounding - 1e-9;
        expect(sleeveContactForce(k * V, M, L)).toBeGreaterThanOrEqual(least);
        expect(sleeveContactForce(V, k * M, L)).toBeGreaterThanOrEqual(least);
        expect(sleeveContactForce(V, M, k * L)).toBeLessThanOrEqual(now / rounding + 1e-9);
        expect(now).toBeGreaterThanOrEqual(V * rounding - 1e-9);
      }),
    );
  });
});
