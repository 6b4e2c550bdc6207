import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { baseOf, heldPlan, limp, stiffnessFrom, thrusts } from "./plan-cases.ts";

const hoopAt = (y: number, factor = 1) => ({
  y,
  stiffness: stiffnessFrom(
    [
      [2e4, -2e4, 1.5e4],
      [-2e4, 6e4, -1e4],
      [1.5e4, -1e4, 5e4],
    ].map((row) => row.map((k) => factor * k)),
  ),
});
const places = [0, 1.5, 3, 4.5, 6, 7.5, 9, 10.5, 12];
const load = places.flatMap((_, i) => [
  300 + 50 * i,
  -90 + 10 * i,
  -410 + 30 * ((i * i) % 7),
  60 - 20 * (i % 3),
]);
const hoops = places.map((y) => hoopAt(y));
const alike = (stiffness: number) => ({ bending: stiffness, twist: stiffness });

/** Checks that a gap from a limit closes as fast as a stiffness grows. */
function closing(gapAt: (stiffness: number) => number): void {
  const gaps = [1e9, 1e10, 1e11].map(gapAt);
  for (const [i, gap] of gaps.slice(1).entries()) {
    expect((gaps[i] as number) / gap).toBeGreaterThan(9);
    expect((gaps[i] as number) / gap).toBeLessThan(11);
  }
}

const gapOf = (computed: ArrayLike<number>, expected: readonly number[]): number =>
  Math.max(...expected.map((value, i) => Math.abs((computed[i] as number) - value)));

describe("limits", () => {
  test("stiff rails on stiff cross members: feet as if clamped", () => {
    closing((stiffness) => {
      const crossMembers = [0, 12].map((y) => ({ y, axial: stiffness, bending: stiffness }));
      const rail = alike(stiffness);
      const { response } = heldPlan(baseOf({ left: rail, right: rail, hoops, crossMembers }), load);
      return gapOf(response.footForce, load);
    });
  });

  test("a stiff cross member at every hoop, soft rails: feet as if clamped", () => {
    closing((stiffness) => {
      const crossMembers = places.map((y) => ({ y, axial: stiffness, bending: stiffness }));
      const { response } = heldPlan(baseOf({ hoops, crossMembers }), load);
      return gapOf(response.footForce, load);
    });
  });

  test("stiff rails held by hoops alone move whole, and their feet's forces vanish in sum", () => {
    const rail = alike(1e11);
    const base = baseOf({ left: rail, right: rail, hoops });
    const { response } = heldPlan(base, thrusts(places.map(() => 500)));
    const spread = places.map(
      (_, i) =>
        (response.footDisplacement[4 * i + 2] as number) -
        (response.footDisplacement[4 * i] as number),
    );
    // All hoops are alike and bear the same load: each is free of force on the rails that give way.
    expectNear(
      spread,
      spread.map(() => spread[0] as number),
      1e-6,
    );
    expectNear(
      [...response.footForce],
      load.map(() => 0),
      1e-7,
      500,
    );
    // s = P / (k_ss - coupling) from the three equations of one hoop on its own.
    const [a, b, c] = [2e4, -2e4, 1.5e4];
    const det = 6e4 * 5e4 - 1e8;
    const condensed = a - (b * (5e4 * b + 1e4 * c) + c * (1e4 * b + 6e4 * c)) / det;
    expectNear([spread[0] as number], [500 / condensed], 1e-6);
  });

  test("soft ground under a stiff base: it sways whole, on springs that share by stiffness", () => {
    const crossMembers = [0, 12].map((y) => ({ y, axial: 1e9, bending: 1e9 }));
    const stiff = alike(1e11);
    const sideHold = [
      { rail: "left", y: 0, stiffness: 1e3 },
      { rail: "right", y: 12, stiffness: 1e3 },
      { rail: "left", y: 6, stiffness: 2e3 },
    ] as const;
    const base = baseOf({ left: stiff, right: stiff, hoops: [limp(6)], crossMembers, sideHold });
    const { response } = heldPlan(base, [-900, 0, -300, 0]);
    expectNear([...response.anchorForce], [-300, -300, -600], 1e-5);
    expectNear([response.footDisplacement[0] as number], [0.3], 1e-5);
  });

  test("each added stiff hoop takes more of the thrust of the limp ones", () => {
    const middle = (factor: number): number => {
      const given = places.map((y) => (y === 6 ? hoopAt(y, factor) : limp(y)));
      const crossMembers = [0, 12].map((y) => ({ y, axial: 1e8, bending: 1e5 }));
      const pushes = places.map((y) => (y === 6 ? 0 : 400));
      const { response } = heldPlan(baseOf({ hoops: given, crossMembers }), thrusts(pushes));
      return response.footForce[4 * 4 + 2] as number;
    };
    const taken = [0.01, 0.1, 1, 10, 100].map(middle);
    expect([...taken].sort((a, b) => a - b)).toEqual(taken);
    expect(taken[0]).toBeGreaterThan(0);
  });
});
