import { Refusal, refusalCodes } from "@hoopstay/core";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { notANumber } from "../fuzz/not-a-number.ts";
import { evaluated, farms, forFarms, houses, readFarm, reviewOf, seed } from "./farms.ts";
import { heldOutcomes, standsAt } from "./outcomes.ts";

vi.setConfig({ testTimeout: 1_800_000 });

const add = (tally: Map<string, number>, key: string): void => {
  tally.set(key, (tally.get(key) ?? 0) + 1);
};
const told = (tally: Map<string, number>): string =>
  [...tally].map(([key, count]) => `${key} ${count}`).join(", ");

describe(`whole houses and sites as owners write them (seed ${seed}, ${houses} of them)`, () => {
  test("every house is computed to the end, or refused with codes; neither kind is rare", () => {
    const [refused, governs, fails] = [new Map(), new Map(), new Map()];
    let [computed, stand] = [0, 0];
    for (const farm of fc.sample(farms(), { seed, numRuns: houses })) {
      try {
        const evaluation = evaluated(readFarm(farm));
        const outcomes = heldOutcomes(evaluation);
        for (const { demand, ratio, limit } of outcomes) {
          expect(Number.isFinite(demand) && ratio >= 0 && !Number.isNaN(limit)).toBe(true);
          // A demand without resistance is beyond all bounds; a limit may be absent.
          expect(Number.isNaN(ratio) || limit < 0).toBe(false);
        }
        computed += 1;
        if (standsAt(evaluation)) stand += 1;
        add(governs, outcomes.reduce((a, b) => (b.ratio > a.ratio ? b : a)).check);
        for (const check of new Set(
          outcomes.filter(({ ratio }) => ratio > 1).map((one) => one.check),
        ))
          add(fails, check);
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        for (const { code } of error.complaints) {
          expect(Object.keys(refusalCodes)).toContain(code);
          add(refused, code);
        }
      }
    }
    console.log(
      `${houses} houses (seed ${seed}): ${computed} computed, ${stand} stand, ${computed - stand} do not; refused with: ${told(refused) || "none"}
greatest ratio: ${told(governs)}; failing: ${told(fails)}`,
    );
    expect(computed).toBeGreaterThan(0.7 * houses);
    expect(stand).toBeGreaterThan(0.1 * houses);
    expect(computed - stand).toBeGreaterThan(0.1 * houses);
  });

  test("no number of a review is none", () => {
    forFarms(
      {},
      (_, inputs) => {
        expect(notANumber(reviewOf(evaluated(inputs), inputs))).toBeUndefined();
      },
      10,
    );
  });
});
