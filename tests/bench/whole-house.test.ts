import { evaluate } from "@hoopstay/house";
import { expect, test } from "vitest";
import { evaluatedFloor, flattenedFloor } from "./flattened-floor.ts";
import { readExample } from "./read-example.ts";

/** Best of several rounds: the machine is shared, and what disturbs a round only slows it. */
function perSecond(work: () => unknown, rounds: number, each: number): number {
  for (let warm = 0; warm < each; warm += 1) work();
  let best = 0;
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    for (let turn = 0; turn < each; turn += 1) work();
    best = Math.max(best, (1000 * each) / (performance.now() - start));
  }
  return best;
}

test("whole-house check: take-off, all states and directions, beside its arithmetic floor", () => {
  const { house, site } = readExample("harrow-brook", "sheltered-paddock");
  const unanchored = { ...house, anchors: [], ballast: [] };
  const evaluation = evaluate(unanchored, site);
  const floor = flattenedFloor(evaluation);
  const found = floor();
  const known = evaluatedFloor(evaluation);
  expect(found.lift).toBeCloseTo(known.lift, 9);
  expect(found.slide).toBe(known.slide);
  const checks = perSecond(() => evaluate(unanchored, site), 12, 1500);
  const anchored = perSecond(() => evaluate(house, site), 3, 100);
  const arithmetic = perSecond(floor, 12, 1500);
  console.log(
    `whole-house check ${checks.toFixed(0)} per second; with 8 slanted anchors ${anchored.toFixed(0)}; hand-flattened arithmetic ${arithmetic.toFixed(0)}`,
  );
  expect(checks).toBeGreaterThan(1000);
});
