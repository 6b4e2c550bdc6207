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
import { basisOf, column, smallSystem } from "./small-system.ts";

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

describe("the linear program, small ones", () => {
  const endless = Number.POSITIVE_INFINITY;

  /**
   * The largest wind for which each row has so much room, if a unit of it takes so much there. What
   * is left of a row counts a hundred in it: so the solver sees a hundredth of each share.
   */
  const windUpTo = (room: readonly number[], share: readonly number[]) => {
    const left = smallSystem(room.map((_, row) => column(room.length, row, 100)));
    const found = solveProgram({
      basis: basisOf(left, [...room.keys()]),
      right: Float64Array.from(room),
      wind: { coefficient: Float64Array.from(share), cap: endless },
    });
    return found.status === "optimal" ? found.factor : found.status;
  };

  test("a share of the wind that the solver sees as 1e-9 limits it", () => {
    expect(windUpTo([1], [1e-7])).toBeCloseTo(1 / 1e-7, 3);
  });

  test("a share that the first precision takes for nought is seen by the next", () => {
    expect(windUpTo([1, 5e-4], [1e-7, 5e-10])).toBeCloseTo(5e-4 / 5e-10, 3);
  });

  test("where none sees it, a row is missed at every precision: a fault, told as that", () => {
    expect(() => windUpTo([1, 5e-5], [1e-7, 5e-11])).toThrow(/solver-unbalanced/);
  });

  test("a fault that is not the solver's is passed on at once", () => {
    let times = 0;
    const right = asked(0);
    right.slice = () => {
      times += 1;
      throw new RangeError("broken");
    };
    expect(() => solveProgram({ basis, right, wind: null })).toThrow(RangeError);
    expect(times).toBe(1);
  });

  test("Beale's example, where the simplex method goes round in circles, is solved: 1/20", () => {
    // Most f = 3/4 a - 150 b + 1/50 c - 6 d, where a/4 - 60 b - c/25 + 9 d <= 0,
    // a/2 - 90 b - c/50 + 3 d <= 0 and c <= 1 (Beale 1955, from memory). Proof: a = 1/25 and c = 1
    // give 1/20; 3/2 times the second row and 1/20 times the third add up to no less than f.
    const unknowns = [
      [-3 / 4, 1 / 4, 1 / 2, 0],
      [150, -60, -90, 0],
      [-1 / 50, -1 / 25, -1 / 50, 1],
      [6, 9, 3, 0],
    ];
    // Besides, an unknown that has to be nought, and a tether that has to stand at its cap.
    const rows = 6;
    const left = Array.from({ length: 5 }, (_, row) => column(rows, row));
    const singles = [
      column(rows, 5),
      ...unknowns.map((one) => [...one, 0, 0]),
      column(rows, 4),
      ...left,
    ];
    const program = {
      basis: basisOf(smallSystem(singles, [1]), [6, 7, 8, 9, 10, 0]),
      right: Float64Array.from([0, 0, 0, 1, 0, 1]),
      wind: { coefficient: Float64Array.from(column(rows, 0)), cap: endless },
    };
    const found = solveProgram(program);
    if (found.status !== "optimal") throw new Error(found.status);
    expect(found.factor).toBeCloseTo(1 / 20, 12);
    expect(found.values[1]).toBeCloseTo(1 / 25, 12);
    expect(found.values[3]).toBeCloseTo(1, 12);
    expect([found.values[0], found.values[5]]).toEqual([1, 0]);
  });

  test("the least tension is the tethers' alone, whatever basis it is written from", () => {
    // Half of what is left over of friction, or a tether alone: twice as much of the former.
    const either = smallSystem([[1], [0.5]], [10]);
    for (const members of [[-1], [0], [1]]) {
      const found = solveProgram({
        basis: basisOf(either, members),
        right: Float64Array.from([1]),
        wind: null,
      });
      expect(found.status === "optimal" && [...found.values]).toEqual([0, 2]);
    }
  });
});
