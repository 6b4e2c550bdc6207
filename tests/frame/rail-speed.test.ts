import { groundSprings, RailSolver, type RailSupport } from "@hoopstay/frame";
import { expect, test } from "vitest";

/** A house of 100 ft on 15 anchors a rail: 35 nodes. */
const length = 30.48;
const feet = Array.from({ length: 21 }, (_, i) => (i * length) / 20);
const anchors = Array.from(
  { length: 15 },
  (_, i): RailSupport => ({
    kind: "anchor",
    x: 0.3 + ((length - 0.6) * i) / 14,
    stiffness: 5e5,
  }),
);
const bed = { modulus: 20e6 * 0.1, greatestPush: 4788 };
const supports = [...groundSprings(length, feet, bed), ...anchors];

/** Load cases that shift from lift at one end to lift at the other, some pressing down. */
const cases = Array.from({ length: 16 }, (_, at) =>
  feet.map((x) => {
    const wave = 1500 + 1200 * Math.sin(0.7 * at + (0.3 * (at % 3) * 20 * x) / length);
    return at % 5 === 4 ? -0.5 * wave : wave;
  }),
);

test("a rail of a long house, from one load case to the next: microseconds a solve", () => {
  const solver = new RailSolver({ length, stiffness: 4.4e5 }, feet, supports);
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 12; round += 1) {
    const start = performance.now();
    for (let turn = 0; turn < 2000; turn += 1) {
      expectHeld(solver.solve(-90, cases[turn % cases.length] as number[]));
    }
    best = Math.min(best, (1000 * (performance.now() - start)) / 2000);
  }
  console.log(`rail with 36 supports: ${best.toFixed(1)} microseconds a load case`);
  expect(best).toBeLessThan(30);
});

test("the result does not depend on the load case before", () => {
  const solver = new RailSolver({ length, stiffness: 4.4e5 }, feet, supports);
  for (const forces of cases) {
    expectHeld(solver.solve(-90, forces));
    const fresh = new RailSolver({ length, stiffness: 4.4e5 }, feet, supports);
    expectHeld(fresh.solve(-90, forces));
    const expected = [...fresh.reactions].map((value) => expect.closeTo(value, 5));
    expect([...solver.reactions]).toEqual(expected);
  }
});

function expectHeld(outcome: string): void {
  if (outcome !== "held") throw new Error(outcome);
}
