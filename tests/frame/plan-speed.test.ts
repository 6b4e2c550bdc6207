import { BasePlan, combinePlanResponses } from "@hoopstay/frame";
import { expect, test } from "vitest";
import { baseOf, stiffnessFrom } from "./plan-cases.ts";

/** A house of so many hoops, a cross member at every fourth and at the ends. */
function house(count: number) {
  const length = 1.5 * (count - 1);
  const stiffness = stiffnessFrom([
    [3e3, -5e3, 5e3],
    [-5e3, 2e4, -4e3],
    [5e3, -4e3, 2e4],
  ]);
  const places = Array.from({ length: count }, (_, i) => 1.5 * i);
  const crossMembers = places
    .filter((_, i) => i % 4 === 0 || i === count - 1)
    .map((y) => ({ y: Math.min(length, y + 0.1), axial: 2e8, bending: 2e5 }));
  return baseOf({ length, hoops: places.map((y) => ({ y, stiffness })), crossMembers });
}

test.each([
  [12, 1000],
  [40, 4000],
])(
  "a house of %d hoops, prepared and solved for 12 loads: under %d microseconds",
  (count, most) => {
    const base = house(count);
    const loads = Array.from({ length: 12 }, (_, at) =>
      Float64Array.from({ length: 4 * count }, (_, i) => 700 * Math.sin(1.3 * i + at)),
    );
    const factors = loads.map((_, at) => 1 - 0.1 * at);
    let best = Number.POSITIVE_INFINITY;
    for (let round = 0; round < 30; round += 1) {
      const start = performance.now();
      for (let turn = 0; turn < 20; turn += 1) {
        const plan = new BasePlan(base);
        const responses = loads.map((load) => {
          const response = plan.response();
          if (plan.respond(load, response) !== "held") throw new Error("not held");
          return response;
        });
        combinePlanResponses(responses, factors, responses[0] as (typeof responses)[number]);
      }
      best = Math.min(best, (1000 * (performance.now() - start)) / 20);
    }
    console.log(`base of ${count} hoops, 12 loads: ${best.toFixed(0)} microseconds`);
    expect(best).toBeLessThan(most);
  },
);
