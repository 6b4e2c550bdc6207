import { SolverFault } from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { emptyBasis } from "../../packages/stability/src/all-at-once/basis.ts";
import { askAt, demandOn } from "../../packages/stability/src/all-at-once/demand.ts";
import { jointSystem } from "../../packages/stability/src/all-at-once/joint-system.ts";
import { solveProgram } from "../../packages/stability/src/all-at-once/linear-program.ts";
import { walk } from "../../packages/stability/src/all-at-once/walk.ts";
import { eachFactor, holds, lowOf, measuredHouse, someLaterals } from "./all-at-once-house.ts";
import { actions, between, combination, pressure, seed } from "./arbitrary-holding.ts";
import { dead, fourAnchors, problem } from "./fitted-problem.ts";

const system = jointSystem(problem({ anchors: fourAnchors(700) }), [
  { x: 3, y: 6 },
  { x: 3, y: -6 },
  { x: -3, y: 6 },
  { x: -3, y: -6 },
]);
const basis = emptyBasis(system);
const lifts = (uplift: number) =>
  demandOn(system, {
    wind: Float64Array.from([0, 0, uplift, 0, 0, 0]),
    slope: new Float64Array(6),
  });
const asked = (uplift: number) => askAt(lifts(uplift), 1, new Float64Array(system.rows));

describe("the linear program", () => {
  test("nothing answers more uplift than weight and anchors hold", () => {
    expect(solveProgram({ basis, right: asked(dead + 2801), wind: null }).status).toBe(
      "infeasible",
    );
    expect(solveProgram({ basis, right: asked(dead + 2799), wind: null }).status).toBe("optimal");
  });

  test("a wind that takes nothing from any row is not limited, but by its own cap", () => {
    const right = asked(0);
    const coefficient = new Float64Array(system.rows);
    const answer = (cap: number) => solveProgram({ basis, right, wind: { coefficient, cap } });
    expect(answer(Number.POSITIVE_INFINITY).status).toBe("unbounded");
    const capped = answer(7);
    expect(capped.status === "optimal" && capped.factor).toBeCloseTo(7, 9);
  });

  test("a wind that lifts goes as far as weight and anchors hold", () => {
    // One unit lifts as much as the weight; no friction is asked for once contact has ended.
    const right = asked(dead);
    const coefficient = new Float64Array(system.rows);
    coefficient[2] = 1;
    const cap = Number.POSITIVE_INFINITY;
    const found = solveProgram({ basis, right, wind: { coefficient, cap } });
    if (found.status !== "optimal") throw new Error(found.status);
    expect(found.factor).toBeCloseTo(2800 / dead, 9);
    for (let tether = 0; tether < 4; tether += 1) {
      expect(found.values[tether]).toBeCloseTo(700 / dead, 9);
    }
  });

  test(`finds as little tension from whatever basis it is written (seed ${seed})`, () => {
    const houses = measuredHouse({ anchors: "slanted" });
    let [met, pulled, faults] = [0, 0, 0];
    const law = [houses, actions, combination, pressure, someLaterals, between(0.5, 1)] as const;
    holds(
      fc.property(...law, (house, table, by, q, laterals, share) => {
        for (const { system: of, actions: acting, factor } of eachFactor(
          lowOf(house, by, q, laterals),
          table,
        )) {
          if (factor === 0 || factor === Number.POSITIVE_INFINITY) continue;
          const demand = demandOn(of, acting);
          const at = (one: number) => askAt(demand, one, new Float64Array(of.rows));
          const right = at(share * 0.999 * factor);
          const tension = (from: ReturnType<typeof emptyBasis>) => {
            const found = solveProgram({ basis: from, right, wind: null });
            if (found.status !== "optimal") throw new Error(found.status);
            return found.values.subarray(0, of.caps.length).reduce((sum, one) => sum + one, 0);
          };
          const own = walk(emptyBasis(of), right).held;
          const other = walk(emptyBasis(of), at(0.999 * factor)).held;
          const bases = [own, other].filter((one) => one !== null);
          if (bases.length < 2) continue;
          let [first, second] = [0, 0];
          try {
            [first, second] = bases.map(tension) as [number, number];
          } catch (fault) {
            // Near the largest factor it may find no vertex: the callers then ask for a little less.
            if (!(fault instanceof SolverFault)) throw fault;
            faults += 1;
            continue;
          }
          expect(Math.abs(first - second)).toBeLessThan(1e-7 * (1 + first));
          met += 1;
          if (first > 1e-6) pulled += 1;
        }
      }),
      40,
    );
    expect(met).toBeGreaterThan(5);
    expect(pulled).toBeGreaterThan(0);
    expect(faults).toBeLessThan(1 + met / 20);
  });
});
