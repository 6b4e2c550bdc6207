import {
  type Rail,
  type RailLoads,
  type RailSolution,
  type RailSupport,
  railReactions,
} from "@hoopstay/frame";
import { expect } from "vitest";

/** Solves a rail that must be held. */
export function heldRail(
  rail: Rail,
  loads: Partial<RailLoads>,
  supports: readonly RailSupport[],
): RailSolution {
  const found = railReactions(rail, { uniform: 0, forces: [], couples: [], ...loads }, supports);
  if (found.outcome !== "held") throw new Error(`the rail is ${found.outcome}`);
  return found;
}

export const reactionsOf = ({ supports }: RailSolution): number[] =>
  supports.map(({ reaction }) => reaction);

/** Compares lists of numbers, to a part of the greatest expected size. */
export function expectNear(
  computed: readonly number[],
  expected: readonly number[],
  part: number,
  least = 0,
): void {
  expect(computed).toHaveLength(expected.length);
  const size = Math.max(least, ...expected.map(Math.abs));
  for (const [i, value] of expected.entries()) {
    const off = Math.abs((computed[i] ?? Number.NaN) - value);
    expect(off, `${i}: computed ${computed[i]}, expected ${value}`).toBeLessThanOrEqual(
      part * size,
    );
  }
}

export const rigidAt = (...places: readonly number[]): RailSupport[] =>
  places.map((x) => ({ kind: "two-way", x, stiffness: "rigid" }));
