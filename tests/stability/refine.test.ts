import { SolverFault } from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { basicValues, emptyBasis } from "../../packages/stability/src/all-at-once/basis.ts";
import { askAt, demandOn } from "../../packages/stability/src/all-at-once/demand.ts";
import {
  capAt,
  columnAt,
  type JointSystem,
  jointSystem,
} from "../../packages/stability/src/all-at-once/joint-system.ts";
import { refined } from "../../packages/stability/src/all-at-once/refine.ts";
import { walk } from "../../packages/stability/src/all-at-once/walk.ts";
import { eachFactor, holds, lowOf, measuredHouse } from "./all-at-once-house.ts";
import { actions, between, combination, pressure, seed } from "./arbitrary-holding.ts";
import { fourAnchors, problem } from "./fitted-problem.ts";

const system = jointSystem(problem({ anchors: fourAnchors(700) }), [
  { x: 3, y: 6 },
  { x: 3, y: -6 },
  { x: -3, y: 6 },
  { x: -3, y: -6 },
]);
const { rows, columns } = system;
const cap = capAt(system, 0);

/** The right side that so many times each unknown answers, and what is off in one row. */
function asked(times: Record<number, number>, off: Record<number, number> = {}): Float64Array {
  const right = new Float64Array(rows);
  for (const [column, value] of Object.entries(times)) {
    for (const [row, one] of columnAt(system, Number(column)).entries()) {
      right[row] = (right[row] ?? NaN) + value * one;
    }
  }
  for (const [row, value] of Object.entries(off)) {
    right[Number(row)] = (right[Number(row)] ?? NaN) + value;
  }
  return right;
}

/** Refines an answer that says so much of each unknown. */
function refinedFrom(
  said: Record<number, number>,
  right: Float64Array,
  widening = 0,
): Float64Array {
  const values = new Float64Array(columns);
  for (const [column, value] of Object.entries(said)) values[Number(column)] = value;
  const program = { basis: emptyBasis(system), right, wind: null };
  return refined(program, { factor: 0, values }, widening).values;
}

describe("an answer refined", () => {
  test("takes the solver's rounding out of what lies between its bounds", () => {
    const right = asked({ 0: 0.05, 2: 0.07 });
    const found = refinedFrom({ 0: 0.05 + 1e-7, 2: 0.07 - 1e-7 }, right);
    expect(found[0]).toBeCloseTo(0.05, 14);
    expect(found[2]).toBeCloseTo(0.07, 14);
    expect(found.filter((one) => one !== 0)).toHaveLength(2);
  });

  test("sets to a bound what is next to it, and leaves there what is", () => {
    const found = refinedFrom({ 0: 0.9e-9, 1: cap - 0.9e-9, 3: 0.02 }, asked({ 1: cap, 3: 0.02 }));
    expect([found[0], found[1]]).toEqual([0, cap]);
    expect(found[3]).toBeCloseTo(0.02, 14);
    expect(refinedFrom({ 0: 1e-9 }, asked({ 0: 0.5e-9 }))[0]).toBe(0);
    const wide = refinedFrom({ 0: 25e-9, 1: cap - 25e-9 }, asked({ 1: cap }), 1e-9);
    expect([wide[0], wide[1]]).toEqual([0, cap]);
  });

  test("may miss a row by rounding, in proportion to the greatest number asked, and no more", () => {
    const within = (share: number, size: number) =>
      refinedFrom({ 4: size }, asked({ 4: size }, { 0: share * 1e-9 }));
    expect(() => within(0.9, 0.5)).not.toThrow();
    expect(() => within(1.1, 0.5)).toThrow(SolverFault);
    expect(() => within(45, 50)).not.toThrow();
    expect(() => within(55, 50)).toThrow(SolverFault);
    expect(() => within(-1.1, 0.5)).toThrow(SolverFault);
    expect(() => refinedFrom({}, asked({}, { 0: 1e-9 }))).not.toThrow();
  });

  test("may leave its bounds by rounding and no more", () => {
    const solves = (value: number) => refinedFrom({ 0: cap / 2 }, asked({ 0: value }));
    expect(solves(cap + 0.9e-9)[0]).toBeGreaterThan(cap);
    expect(() => solves(cap + 1.1e-9)).toThrow(/bounds/);
    expect(solves(-0.9e-9)[0]).toBeLessThan(0);
    expect(() => solves(-1.1e-9)).toThrow(/bounds/);
    expect(() => solves(-0.1)).toThrow(SolverFault);
  });

  test("is refused where its unknowns depend on each other: no vertex", () => {
    const [first] = system.fans;
    if (!first) throw new Error("corners have fans");
    const all = Object.fromEntries([...Array(12).keys()].map((side) => [first.first + side, 0.1]));
    expect(() => refinedFrom(all, asked(all))).toThrow(SolverFault);
    expect(() => refinedFrom(all, asked(all))).toThrow(/no vertex/);
  });

  test("holds a wind factor to a tenth of that, and to its own cap", () => {
    const values = new Float64Array(columns);
    const coefficient = new Float64Array(rows);
    coefficient[2] = 1;
    const right = (off: number, factor: number) => {
      const made = new Float64Array(rows);
      made[2] = factor;
      made[0] = off;
      return made;
    };
    const solve = (off: number, factor: number) =>
      refined(
        {
          basis: emptyBasis(system),
          right: right(off, factor),
          wind: { coefficient, cap: 0.8 },
        },
        { factor: 0.5, values },
        0,
      ).factor;
    expect(solve(0.9e-10, 0.6)).toBeCloseTo(0.6, 14);
    expect(() => solve(1.1e-10, 0.6)).toThrow(SolverFault);
    expect(solve(0, 0.8 + 0.9e-10)).toBeGreaterThan(0.8);
    expect(solve(0, 0.8 + 1e-10)).toBe(0.8 + 1e-10);
    expect(solve(0, -1e-10)).toBe(-1e-10);
    expect(() => solve(0, 0.8 + 1.1e-10)).toThrow(/bounds/);
  });

  test(`an answer that is right stays so (seed ${seed})`, () => {
    const valuesOf = (of: JointSystem, right: Float64Array) => {
      const { held } = walk(emptyBasis(of), right);
      if (!held) return null;
      const [values, basic] = [new Float64Array(of.columns), new Float64Array(of.rows)];
      basicValues(held, right, basic);
      for (const [row, member] of held.members.entries()) {
        if (member >= 0) values[member] = basic[row] ?? NaN;
      }
      for (const [column, stands] of held.standing.entries()) {
        if (stands === 1) values[column] = capAt(of, column);
      }
      return values;
    };
    let met = 0;
    holds(
      fc.property(
        measuredHouse({ anchors: "slanted" }),
        actions,
        combination,
        pressure,
        between(0.1, 0.9),
        (house, table, by, q, share) => {
          for (const { system: of, actions: acting, factor } of eachFactor(
            lowOf(house, by, q),
            table,
          )) {
            if (factor === 0 || factor === Number.POSITIVE_INFINITY) continue;
            const right = askAt(demandOn(of, acting), share * factor, new Float64Array(of.rows));
            const values = valuesOf(of, right);
            if (!values) continue;
            const basis = emptyBasis(of);
            const found = refined({ basis, right, wind: null }, { factor: 0, values }, 0).values;
            const off = found.map((one, column) => Math.abs(one - (values[column] ?? NaN)));
            expect(Math.max(...off)).toBeLessThan(1e-7);
            met += 1;
          }
        },
      ),
      40,
    );
    expect(met).toBeGreaterThan(5);
  });
});
