import type { Formula, Step } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import {
  capacityAlongTether,
  heldByFixedBallast,
  heldByTie,
  proofLoad,
  pullOfBlock,
  rateByTests,
  reviewTow,
  stiffnessFromTests,
  stiffnessWithoutTests,
  submergedFactor,
  waterWeight,
  weightLeft,
} from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyTest, between, holds, pulls, seed, testsOf, uses } from "./pull-test-sample.ts";

/** The printed expression, evaluated a second time as a report does it. */
function expectPrinted(formula: Formula, inputs: readonly number[], value: number): void {
  expect(inputs.length, formula.id).toBe(formula.arguments.length);
  const { agrees, second } = evaluateAgain({ formula, inputs, value, symbol: formula.symbol });
  expect(agrees, `${formula.id}: ${formula.expression} gives ${second}, not ${value}`).toBe(true);
}

const expectTrail = (trail: readonly Step[]): void => {
  for (const { formula, inputs, value } of trail) expectPrinted(formula, inputs, value);
};

describe(`printed formulas say what is computed (seed ${seed})`, () => {
  test("pull tests, all routes", () => {
    holds(
      fc.property(fc.array(anyTest, { maxLength: 8 }), pulls(1, 8), uses, (any, plain, use) => {
        for (const tests of [any, testsOf(plain)]) {
          const rating = rateByTests(tests, use);
          if (!rating.rated) continue;
          expectTrail(rating.trail);
          expect(rating.trail.map(({ value }) => value)).toContain(rating.allowable);
        }
      }),
    );
  });

  test("blocks on tethers", () => {
    holds(
      fc.property(between(0.1, 1.5), between(0, 1), between(0.1, 1), (angle, share, friction) => {
        const block = { weight: 9000, width: 0.6, tieHeight: share, tieSetback: 0.6 * share };
        expectTrail(pullOfBlock({ ...block, angle, friction }, 0.6).trail);
      }),
    );
  });

  test("towing", () => {
    holds(
      fc.property(between(0, 0.78), between(0, 5), between(1, 2), (slope, fromLeft, spread) => {
        const loads = [{ id: "house", low: 4000, high: 4000 * spread, fromLeft }];
        const tractor = { weight: 12_000, onDrivenWheels: 8000 };
        const job = { loads, railSpacing: 5, slope, holdingFriction: 0.15, tractor };
        expectTrail(reviewTow(job).trail);
      }),
    );
  });

  test("the chain along a tether", () => {
    for (const links of [{}, { eye: { workingLoadLimit: 700 } }]) {
      const found = capacityAlongTether({ ground: 900, links }, "LRFD");
      expectPrinted(found.formula, found.inputs, found.capacity);
    }
  });

  test("what stands outside a trail", () => {
    const single: readonly (readonly [unknown, readonly number[]])[] = [
      [stiffnessFromTests, [2500]],
      [stiffnessWithoutTests, [1000]],
      [proofLoad, [1000]],
      [submergedFactor, [9800, 22_800]],
      [weightLeft, [0.57, 1000]],
      [waterWeight, [9802, 0.2, 0.5]],
      [heldByFixedBallast, [0.6, 1000, 1, 5]],
      [heldByTie, [1000, 0.7]],
    ];
    for (const [formula, inputs] of single) {
      const one = formula as Formula;
      expectPrinted(one, inputs, one.evaluate(...inputs));
    }
  });
});
