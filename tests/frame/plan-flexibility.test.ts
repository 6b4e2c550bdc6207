import { planAt } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadedBase, seed, sizeOfLoad } from "./plan-arbitrary.ts";
import { heldPlan, sides } from "./plan-cases.ts";
import { byFlexibility } from "./plan-flexibility.ts";

/** Compares lists of numbers to a part of a size. */
function near(computed: ArrayLike<number>, expected: ArrayLike<number>, slack: number): void {
  expect(computed.length).toBe(expected.length);
  for (let i = 0; i < expected.length; i += 1) {
    const off = Math.abs((computed[i] as number) - (expected[i] as number));
    expect(off, `${i}: ${computed[i]} for ${expected[i]}`).toBeLessThanOrEqual(slack);
  }
}

describe(`the force method on random bases (seed ${seed})`, () => {
  test("gives the same feet, forces, moments and torques", () => {
    let evenly = 0;
    fc.assert(
      fc.property(loadedBase, ({ base, load }) => {
        const { plan, response } = heldPlan(base, load);
        const other = byFlexibility(base, load);
        const size = sizeOfLoad(base, load);
        const part = 1e-8;
        if (base.sideHold === "evenly") evenly += 1;
        near(response.footForce, other.forces, part * size * Math.max(1, base.span));
        near(response.crossAxial, other.axial, part * size);
        near(response.anchorForce, other.anchors, part * size);
        near(response.evenHold, other.evenHold, part * size);
        const reach = Math.max(...other.feet.map(Math.abs));
        near(response.footDisplacement, other.feet, 1e-7 * reach);
        for (const side of sides) {
          for (let i = 0; i <= 20; i += 1) {
            const y = (i * base.length) / 20 + 1e-7;
            if (y > base.length) continue;
            const at = planAt(plan, response, side, y);
            near([at.moment], [other.momentAt(side, y)], part * size * base.length);
          }
          for (const { y } of base.hoops) {
            const { torque } = planAt(plan, response, side, y);
            near([torque], [other.torqueBehind(side, y)], part * size * base.span);
          }
        }
      }),
      { seed, numRuns: 300 },
    );
    expect(evenly).toBeGreaterThan(50);
    expect(evenly).toBeLessThan(250);
  });
});
