import { type RailSolution, railAt, railReactions } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  contactRail,
  type LoadedRail,
  loadsOn,
  seed,
  solutionOf,
  twoWayRail,
} from "./arbitrary-rail.ts";
import { mirrorOf, scaled, turnsOf } from "./changed-rail.ts";
import { expectNear, heldRail, reactionsOf } from "./held-rail.ts";
import { imbalance, macaulayDeflection, sizeOf } from "./macaulay.ts";

const numRuns = 600;
const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns });

const solved = ({ rail, loads, supports }: LoadedRail) => heldRail(rail, loads, supports);
const sizeIn = ({ rail, loads }: LoadedRail) => sizeOf(loads, rail.length);
const greatestOf = ({ bent }: RailSolution) => Math.max(...bent.deflection.map(Math.abs));

/** Equilibrium, and the rail bent by its own forces: what any solution must meet. */
function expectExact(one: LoadedRail, solution: RailSolution): void {
  const size = sizeIn(one);
  const { force, moment } = imbalance(solution);
  expect(Math.abs(force)).toBeLessThanOrEqual(1e-9 * size);
  expect(Math.abs(moment)).toBeLessThanOrEqual(1e-9 * size * one.rail.length);
  // Macaulay's sums grow with the cube of the length, and their rounding with them.
  const reach = (size * one.rail.length ** 3) / one.rail.stiffness;
  const within = 1e-7 * greatestOf(solution) + 1e-12 * reach;
  for (const { x, deflection } of solution.supports) {
    expect(Math.abs(macaulayDeflection(solution, x) - deflection)).toBeLessThanOrEqual(within);
  }
  for (let i = 0; i <= 10; i += 1) {
    const x = (i / 10) * one.rail.length;
    const { deflection } = railAt(solution.bent, x);
    expect(Math.abs(macaulayDeflection(solution, x) - deflection)).toBeLessThanOrEqual(within);
  }
}

describe(`laws of rails on two-way supports (seed ${seed})`, () => {
  test("forces balance, and bend the rail to where its springs have these forces", () => {
    holds(
      fc.property(twoWayRail, (one) => {
        const solution = solved(one);
        expectExact(one, solution);
        for (const { stiffness, reaction, deflection } of solution.supports) {
          if (stiffness === "rigid") expect(Math.abs(deflection)).toBe(0);
          else expectNear([reaction], [-stiffness * deflection], 1e-9, sizeIn(one));
        }
      }),
    );
  });

  test("effects of two load cases add up", () => {
    holds(
      fc.property(
        twoWayRail.chain((one) => fc.tuple(fc.constant(one), loadsOn(one.rail))),
        ([one, more]) => {
          const both = {
            uniform: one.loads.uniform + more.uniform,
            forces: [...one.loads.forces, ...more.forces],
            couples: [...one.loads.couples, ...more.couples],
          };
          const other = reactionsOf(solved({ ...one, loads: more }));
          const sum = reactionsOf(solved(one)).map(
            (reaction, i) => reaction + (other[i] as number),
          );
          const size = sizeIn(one) + sizeIn({ ...one, loads: more });
          expectNear(reactionsOf(solved({ ...one, loads: both })), sum, 1e-9, size);
        },
      ),
    );
  });

  test("extremes are not exceeded anywhere, and are met where they are said to be", () => {
    holds(
      fc.property(twoWayRail, (one) => {
        const { bent, extremes } = solved(one);
        const { momentMost, momentLeast, shear, deflection } = extremes;
        const points = Array.from({ length: 200 }, (_, i) =>
          railAt(bent, ((i + 0.5) / 200) * one.rail.length),
        );
        const slack = 1e-9 * sizeIn(one);
        for (const point of points) {
          expect(point.moment).toBeLessThanOrEqual(momentMost.moment + slack * one.rail.length);
          expect(point.moment).toBeGreaterThanOrEqual(momentLeast.moment - slack * one.rail.length);
          expect(Math.abs(point.shear)).toBeLessThanOrEqual(Math.abs(shear.shear) + slack);
          expect(Math.abs(point.deflection)).toBeLessThanOrEqual(
            Math.abs(deflection.deflection) * (1 + 1e-9),
          );
        }
        const there = railAt(bent, deflection.x);
        expectNear([there.deflection], [deflection.deflection], 1e-9);
      }),
    );
  });
});

describe(`laws of rails on anchors and ground (seed ${seed})`, () => {
  test("forces balance; anchors never push, ground never pulls, no cap is exceeded; what is idle is free", () => {
    let [tried, held] = [0, 0];
    holds(
      fc.property(contactRail, (one) => {
        tried += 1;
        const solution = solutionOf(one);
        if (!solution) return;
        held += 1;
        expectExact(one, solution);
        const size = sizeIn(one);
        const slack = 1e-9 * greatestOf(solution);
        for (const {
          kind,
          part,
          stiffness,
          cap = Number.POSITIVE_INFINITY,
          reaction,
          deflection,
        } of solution.supports) {
          if (kind === "two-way") continue;
          const [effort, pressed] =
            kind === "anchor" ? [0 - reaction, deflection] : [reaction, -deflection];
          expect(effort).toBeGreaterThanOrEqual(0);
          expect(effort).toBeLessThanOrEqual(cap);
          if (part === "idle") expect(effort).toBe(0);
          if (part === "idle" || stiffness === "rigid")
            expect(pressed).toBeLessThanOrEqual(
              part === "giving" ? Number.POSITIVE_INFINITY : slack,
            );
          if (stiffness === "rigid" && effort > 0 && effort < cap)
            expect(Math.abs(pressed)).toBeLessThanOrEqual(slack);
          if (stiffness !== "rigid") {
            const law = Math.min(cap, Math.max(0, stiffness * pressed));
            expectNear([effort], [law], 1e-9, Math.max(size, stiffness * greatestOf(solution)));
          }
        }
      }),
    );
    expect(held).toBeGreaterThan(tried / 5);
  });

  test("not held exactly where some turn of the stiff rail gains more work than the supports can take", () => {
    const seen = { held: 0, "not-held": 0, unsettled: 0 };
    let tried = 0;
    holds(
      fc.property(contactRail, (one) => {
        const { outcome } = railReactions(one.rail, one.loads, one.supports);
        seen[outcome] += 1;
        tried += 1;
        const excess = Math.max(...turnsOf(one));
        const border = 1e-9 * sizeIn(one) * one.rail.length;
        if (Math.abs(excess) <= border) return;
        expect(outcome).toBe(excess > 0 ? "not-held" : "held");
      }),
    );
    expect(Math.min(seen.held, seen["not-held"])).toBeGreaterThan(tried / 10);
    expect(seen.unsettled).toBe(0);
  });

  test("a rail and its mirror image are held alike", () => {
    holds(
      fc.property(contactRail, (one) => {
        const solution = solutionOf(one);
        const mirrored = solutionOf(mirrorOf(one));
        expect(mirrored === undefined).toBe(solution === undefined);
        if (!solution || !mirrored) return;
        expectNear(reactionsOf(mirrored), reactionsOf(solution), 1e-8, sizeIn(one));
      }),
    );
  });

  test("without caps, all loads times a factor give all forces times the factor", () => {
    holds(
      fc.property(contactRail, fc.double({ min: 0.1, max: 20, noNaN: true }), (given, factor) => {
        const supports = given.supports.map(({ cap: _, ...support }) => support);
        const one = { ...given, supports };
        const solution = solutionOf(one);
        const more = solutionOf({ ...one, loads: scaled(one, factor) });
        expect(more === undefined).toBe(solution === undefined);
        if (!solution || !more) return;
        const expected = reactionsOf(solution).map((reaction) => factor * reaction);
        expectNear(reactionsOf(more), expected, 1e-8, factor * sizeIn(one));
      }),
    );
  });

  test("more lift at an anchor never lessens that anchor's tension", () => {
    holds(
      fc.property(contactRail, fc.double({ min: 1, max: 5000, noNaN: true }), (one, force) => {
        const index = one.supports.findIndex(({ kind }) => kind === "anchor");
        const anchor = one.supports[index];
        if (!anchor) return;
        const lifted = { ...one.loads, forces: [...one.loads.forces, { x: anchor.x, force }] };
        const [before, after] = [solutionOf(one), solutionOf({ ...one, loads: lifted })];
        if (!before || !after) return;
        const [few = 0, many = 0] = [before, after].map((of) => -(reactionsOf(of)[index] ?? 0));
        expect(many).toBeGreaterThanOrEqual(few - 1e-8 * (sizeIn(one) + force));
      }),
    );
  });

  test("more lift elsewhere can lessen the sum of tensions: less prying", () => {
    const rail = { length: 3, stiffness: 1e5 };
    const supports = [
      { kind: "anchor", x: 1, stiffness: 1e6 },
      { kind: "ground", x: 2, stiffness: 1e6 },
    ] as const;
    const tension = (far: number) => {
      const forces = [
        { x: 0, force: 1000 },
        { x: 3, force: far },
      ];
      return -(reactionsOf(heldRail(rail, { forces }, supports))[0] ?? 0);
    };
    expectNear([tension(0), tension(100)], [2000, 1900], 1e-12);
  });
});
