import { type EvaluatedState, evaluate, jointOf, jointOfCases, liftingRows } from "@hoopstay/house";
import { type CaseTable, torsionCases } from "@hoopstay/load";
import {
  balanceOf,
  certificateOf,
  cornerSets,
  jointFactor,
  jointProblems,
  jointSystem,
  slopesOf,
  windOf,
  worstJoint,
} from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { level, sloping } from "./example-house.ts";

const setsOf = (states: readonly EvaluatedState[]) => [...new Set(states.map(({ set }) => set))];

describe.each([
  ["level", level],
  ["sloping", sloping],
] as const)("everything at once, the example on %s ground", (_, { house, site }) => {
  const evaluation = evaluate(house, site);

  test("rows left out as less lifting never decide: all rows give the same factor", () => {
    const { shell } = evaluation;
    for (const set of setsOf(evaluation.states)) {
      const sizes = { across: shell.L, along: shell.b };
      const tables: CaseTable[] = [
        set.table,
        torsionCases(set.surfaces, set.insideCoefficients, sizes),
      ];
      for (const { id, terms, lines } of set.holds) {
        const works = jointProblems(terms.ASD).map((problem) => ({ problem, tables }));
        const whole = worstJoint(works)?.factor ?? Number.NaN;
        expect(jointOf(evaluation, set, id, "ASD").factor / whole).toBeCloseTo(1, 9);
        for (const table of tables) {
          expect(liftingRows(table, lines).count).toBeLessThanOrEqual(table.count);
        }
      }
    }
  });

  test("the factor of every case, the lowest of them the set's; some by the solver alone", () => {
    for (const set of setsOf(evaluation.states)) {
      const [single, torsion] = jointOfCases(evaluation, set, "fitted", "ASD");
      const lowest = Math.min(...single, ...torsion);
      expect(lowest / jointOf(evaluation, set, "fitted", "ASD").factor).toBeCloseTo(1, 9);
      const hold = set.holds.find(({ id }) => id === "fitted");
      const problems = hold ? jointProblems(hold.terms.ASD) : [];
      for (let row = 0; row < set.table.count; row += 13) {
        const found = problems.flatMap((problem) => {
          const wind = windOf(problem, set.table, row);
          return cornerSets(problem.lines).flatMap((corners) =>
            slopesOf(problem, wind[0] ?? 0, wind[1] ?? 0).map((slope) =>
              jointFactor(jointSystem(problem, corners), { wind, slope }),
            ),
          );
        });
        expect((single[row] ?? Number.NaN) / Math.min(...found)).toBeCloseTo(1, 7);
      }
    }
  });

  test("each certificate balances, its tethers only pull, the ground only pushes", () => {
    for (const set of setsOf(evaluation.states)) {
      for (const { id } of set.holds) {
        const { worst } = jointOf(evaluation, set, id, "ASD");
        const certificate = certificateOf(worst.system, worst.actions, worst.factor);
        if (!certificate) throw new Error("no certificate");
        const most = Math.max(...certificate.wind.map(Math.abs), certificate.weight.down);
        for (const left of balanceOf(certificate)) expect(Math.abs(left)).toBeLessThan(1e-9 * most);
        for (const { tension, most: cap } of certificate.tethers) {
          expect(tension).toBeGreaterThanOrEqual(0);
          expect(tension).toBeLessThanOrEqual(cap * (1 + 1e-9));
        }
        for (const { push } of certificate.pushes) expect(push).toBeGreaterThanOrEqual(0);
      }
    }
  });
});

test("on level ground LRFD takes exactly 0.9 of what ASD takes", () => {
  const evaluation = evaluate(level.house, level.site);
  for (const set of setsOf(evaluation.states)) {
    const asd = jointOf(evaluation, set, "fitted", "ASD").factor;
    const lrfd = jointOf(evaluation, set, "fitted", "LRFD").factor;
    expect(lrfd / asd).toBeCloseTo(0.9, 8);
  }
});
