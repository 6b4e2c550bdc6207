import { Chapter, type Formula } from "@hoopstay/core";
import { agreement } from "@hoopstay/core/second-evaluation";
import {
  anchorSpringLaws,
  forceBalance,
  momentBalance,
  type RailSupport,
  type WorkedFormula,
} from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear, heldRail, rigidAt } from "./held-rail.ts";

const supports: RailSupport[] = [
  { kind: "anchor", x: 0.3, stiffness: 2e5 },
  { kind: "anchor", x: 3, stiffness: 2e5, cap: 1000 },
  { kind: "anchor", x: 5.7, stiffness: "rigid" },
  { kind: "ground", x: 1.5, stiffness: 4e5 },
  { kind: "ground", x: 4.5, stiffness: 4e5 },
];
const loads = {
  uniform: -60,
  forces: [0, 1.5, 3, 4.5, 6].map((x) => ({ x, force: x === 4.5 ? -800 : 1500 })),
  couples: [{ x: 0.75, couple: 400 }],
};
const solution = heldRail({ length: 6, stiffness: 2e5 }, loads, supports);
const worked = ({ formula, inputs }: WorkedFormula): number => formula.evaluate(...inputs);

describe("the printed working of a rail", () => {
  const laws = anchorSpringLaws(solution, 0.01);
  const forces = forceBalance(solution);
  const moments = momentBalance(solution);

  test("tensions follow from the lift at each anchor; one gives at its cap, a rigid one has no law", () => {
    const tensions = solution.supports.slice(0, 2).map(({ reaction }) => 0 - reaction);
    expect(solution.supports[1]?.part).toBe("giving");
    expect(laws).toHaveLength(2);
    expectNear(laws.map(worked), tensions, 1e-9);
  });

  test("both sides of each balance are equal", () => {
    expectNear([worked(forces.loads)], [worked(forces.anchors)], 1e-9);
    expectNear([worked(moments.loads)], [worked(moments.anchors)], 1e-9);
    expect(worked(forces.anchors)).toBeGreaterThan(3000);
  });

  test("every force is named, numbered and measured", () => {
    const printed = ({ formula }: WorkedFormula) =>
      formula.arguments.map(({ symbol, name, measure }) => `${symbol} ${name}: ${measure}`);
    expect(printed(forces.loads)).toEqual([
      "F_1 uniform load, at mid-length: force",
      ...[1, 2, 3, 4, 5].map((i) => `F_${i + 1} load ${i} on the rail: force`),
      "F_7 push of the ground: force",
      "F_8 push of the ground: force",
    ]);
    expect(printed(forces.anchors)).toEqual(
      [1, 2, 3].map((i) => `T_${i} tension of anchor ${i}: force`),
    );
    expect(printed(moments.loads).at(-1)).toBe("C_1 couple 1 on the rail: moment");
    expect(printed(moments.loads).at(-2)).toBe("M_8 push of the ground: moment");
    expect(printed(moments.anchors)).toEqual(
      [1, 2, 3].map((i) => `M_T_${i} moment of the tension of anchor ${i}: moment`),
    );
    expect(moments.loads.formula.id).toBe("turning-on-anchors");
    expect(moments.loads.formula.symbol).toBe("M_U");
    const both = heldRail({ length: 6, stiffness: 2e5 }, loads, rigidAt(1, 5));
    expect(printed(forceBalance(both).loads).at(-1)).toBe("F_8 force of a two-way support: force");
  });

  test("every step is evaluated a second time and agrees", () => {
    const chapter = new Chapter("rail", "Rail");
    const sums = [forces.loads, forces.anchors, moments.loads, moments.anchors];
    const all = [...laws, ...moments.levers, ...sums];
    for (const { formula, inputs } of all) {
      chapter.work(formula as Formula<number[]>, [...inputs]);
    }
    expect(agreement([chapter])).toEqual({
      steps: all.length,
      evaluated: all.length,
      agreeing: all.length,
      disagreeing: [],
    });
  });
});
