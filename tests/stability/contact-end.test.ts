import { jointFactor, jointSystem, separationAt } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { factorUpTo, poolOf } from "../../packages/stability/src/all-at-once/case-search.ts";
import { askAt, demandOn } from "../../packages/stability/src/all-at-once/demand.ts";
import { limitRow } from "../../packages/stability/src/all-at-once/joint-system.ts";
import { dead, type Fitted, fourAnchors, problem } from "./fitted-problem.ts";

const held = (of: Fitted) =>
  jointSystem(problem(of), [
    { x: 3, y: 6 },
    { x: 3, y: -6 },
    { x: -3, y: 6 },
    { x: -3, y: -6 },
  ]);
const acts = (...sums: number[]) => ({
  wind: Float64Array.from(sums),
  slope: new Float64Array(6),
});

describe("where the wind takes all contact", () => {
  test("it does not count that a stronger wind would be held again", () => {
    // The weight stands half a metre beyond the right rail, so that a tether aslant on the left one
    // has to pull, at 45 degrees to the left: T_h >= D / 12 + f V / 2 about the right rail. Friction
    // makes up for what the wind to the right, f H, lacks of that: up to mu (D - f V). Beyond the end
    // of contact, at D / V = 6, only tether and wind may even out: f H >= D / 12 + f V / 2.
    const [H, V] = [550, 1000];
    const toward = [-Math.SQRT1_2, 0, -Math.SQRT1_2] as const;
    const system = held({ heavy: { x: 3.5 }, anchors: [{ x: -3, y: 0, pull: 1e5, toward }] });
    const actions = acts(H, 0, V, 0, 0, 0);
    const demand = demandOn(system, actions);
    const slides = (0.3 * dead - dead / 12) / (0.3 * V + V / 2 - H);
    const again = dead / 12 / (H - V / 2);
    expect([slides, demand.contactEnd, again]).toEqual([5.2, 6, 10]);
    expect(separationAt(system, actions, 7)).not.toBeNull();
    expect(separationAt(system, actions, 12)).toBeNull();
    for (const most of [12, 1e4]) {
      expect(factorUpTo(poolOf(system), demand, most)).toBeCloseTo(slides, 9);
    }
    expect(jointFactor(system, actions)).toBeCloseTo(slides, 9);
  });

  test("a house without weight has none from the start: its anchors alone against the uplift", () => {
    const system = held({ heavy: { W: 0 }, anchors: fourAnchors(700) });
    const demand = demandOn(system, acts(0, 0, 1000, 0, 0, 0));
    expect(demand.contactEnd).toBe(0);
    expect(factorUpTo(poolOf(system), demand, 1e4)).toBeCloseTo(2800 / 1000, 12);
    for (const uplift of [0, -0]) {
      expect(demandOn(system, acts(9, 0, uplift, 0, 0, 0)).contactEnd).toBe(
        Number.POSITIVE_INFINITY,
      );
    }
  });

  test("no friction at all is asked for there, though rounding leaves some", () => {
    const system = held({});
    for (let uplift = 100; uplift < 200; uplift += 1) {
      const demand = demandOn(system, acts(700, 0, uplift, 0, 0, 0));
      const right = askAt(demand, demand.contactEnd, new Float64Array(system.rows));
      expect(right[limitRow], `${uplift}`).toBe(0);
    }
  });
});
