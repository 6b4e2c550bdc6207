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
import { expectNear, heldRail } from "./held-rail.ts";

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
