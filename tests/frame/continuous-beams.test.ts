import { RailSolver, railAt } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear, heldRail, reactionsOf, rigidAt } from "./held-rail.ts";

const spans = (count: number, length: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => i * length);

describe("closed forms", () => {
  test.each([
    [2, 3],
    [4.1, 1.3],
    [1, 9],
  ])("two spans %d and %d: M = w (a^3 + b^3) / (8 (a + b))", (a, b) => {
    const whole = { length: a + b, stiffness: 1e5 };
    const { bent } = heldRail(whole, { uniform: -60 }, rigidAt(0, a, a + b));
    const expected = (-60 * (a ** 3 + b ** 3)) / (8 * (a + b));
    expectNear([railAt(bent, a).moment], [expected], 1e-12);
  });

  const coefficients = [0, 0, 1 / 8, 1 / 10, 3 / 28];
  const cases = [2, 3, 4, 5, 6, 7, 8].flatMap((m) =>
    [1, 2, 3, 4].map((count) => [m, count] as const),
  );
  test.each(cases)("hoops at one %dth of the span, %d spans", (m, count) => {
    const [length, P] = [4.2, 1700];
    const hoops = Array.from({ length: m * count + 1 }, (_, i) => ({
      x: (i * length) / m,
      force: P,
    }));
    const whole = { length: count * length, stiffness: 3e5 };
    const anchors = rigidAt(...spans(count, length));
    const { bent, extremes } = heldRail(whole, { forces: hoops }, anchors);
    if (count === 1) {
      const simple = m % 2 === 0 ? (P * length * m) / 8 : (P * length * (m * m - 1)) / (8 * m);
      expectNear([-extremes.momentLeast.moment], [simple], 1e-12);
      return;
    }
    const smeared = (coefficients[count] as number) * ((P * m) / length) * length ** 2;
    expectNear([railAt(bent, length).moment], [smeared * (1 - 1 / (m * m))], 1e-12);
  });

  test("end load on an overhang: lever and deflection P c^2 (a + c) / (3 E I)", () => {
    const [a, c, P, bending] = [3, 1.2, 900, 1.5e5];
    const loads = { forces: [{ x: a + c, force: P }] };
    const { bent, ...solution } = heldRail(
      { length: a + c, stiffness: bending },
      loads,
      rigidAt(0, a),
    );
    expectNear(
      solution.supports.map(({ reaction }) => reaction),
      [(P * c) / a, -P * (1 + c / a)],
      1e-12,
    );
    expectNear(
      [railAt(bent, a + c).deflection, railAt(bent, a).moment],
      [(P * c * c * (a + c)) / (3 * bending), P * c],
      1e-12,
    );
  });

  test("a couple at mid-span of a simple beam: C/L at its ends, moment jumps by C, slope C L/(12 E I)", () => {
    const [length, C, bending] = [4, 800, 2e5];
    const loads = { couples: [{ x: length / 2, couple: C }] };
    const solution = heldRail({ length, stiffness: bending }, loads, rigidAt(0, length));
    expectNear(reactionsOf(solution), [C / length, -C / length], 1e-12);
    const [left, right] = (["left", "right"] as const).map((side) =>
      railAt(solution.bent, length / 2, side),
    );
    expectNear([left?.moment ?? 0, right?.moment ?? 0], [C / 2, -C / 2], 1e-12);
    expectNear([right?.slope ?? 0], [(C * length) / (12 * bending)], 1e-12);
  });

  test("a couple at the last support of a simple beam, all of it carried: C L/(6 E I) and C L/(3 E I)", () => {
    const [length, C, bending] = [4, 800, 2e5];
    for (const beyond of [0, 1]) {
      const couples = [{ x: length, couple: C }];
      const whole = { length: length + beyond, stiffness: bending };
      const solution = heldRail(whole, { couples }, rigidAt(0, length));
      expectNear(reactionsOf(solution), [C / length, -C / length], 1e-12);
      const { bent } = solution;
      expectNear(
        [railAt(bent, 0).slope, railAt(bent, length).slope],
        [(-C * length) / (6 * bending), (C * length) / (3 * bending)],
        1e-12,
      );
      const [left, right] = [railAt(bent, length, "left"), railAt(bent, length)];
      expectNear([left.moment, right.moment], [C, 0], 1e-12);
    }
  });

  test("at its left end and beyond its ends a rail goes on as it ends", () => {
    const whole = { length: 4, stiffness: 2e5 };
    const { bent } = heldRail(whole, { couples: [{ x: 0, couple: 900 }] }, rigidAt(0, 4));
    const slope = (900 * 4) / (3 * 2e5);
    const end = railAt(bent, 0, "left");
    expectNear([end.x, end.deflection, end.slope, end.moment], [0, 0, slope, -900], 1e-12);
    expectNear([railAt(bent, -0.1).slope], [slope + (0.1 * (900 + 0.05 * 225)) / 2e5], 1e-12);
    expectNear([railAt(bent, 5).deflection], [(-900 * 4) / (6 * 2e5)], 1e-12);
  });

  test("a case solved again after one a million million times as great: the same bytes", () => {
    const solver = new RailSolver(
      { length: 5, stiffness: 2e5 },
      [0.7, 3.3],
      rigidAt(0, 1, 2.4, 4.1),
    );
    const solved = (factor: number) => {
      expect(solver.solve(-90 * factor, [700 * factor, -440 * factor])).toBe("held");
      return [...solver.reactions, ...solver.bent.deflection];
    };
    const first = solved(1);
    solved(1e12);
    expect(solved(1)).toEqual(first);
  });

  test("a couple at a support and at a free end turns as a pair of forces there does", () => {
    const whole = { length: 5, stiffness: 2e5 };
    const held = rigidAt(0.5, 2, 4.1);
    const near = 1e-4;
    for (const x of [2, 5 - near, near]) {
      const couples = [{ x, couple: 600 }];
      const forces = [
        { x: x - near, force: -300 / near },
        { x: x + near, force: 300 / near },
      ];
      const one = reactionsOf(heldRail(whole, { couples }, held));
      expectNear(reactionsOf(heldRail(whole, { forces }, held)), one, 1e-3);
    }
  });

  test("three anchors load the worst more than two: 0.625 against 0.5 of the load", () => {
    const whole = { length: 10, stiffness: 1e5 };
    const worst = (...places: number[]) =>
      -Math.min(...reactionsOf(heldRail(whole, { uniform: 100 }, rigidAt(...places))));
    expectNear([worst(0, 10), worst(0, 5, 10)], [500, 625], 1e-12);
  });
});
