import {
  type Rail,
  type RailLoads,
  type RailSolution,
  type RailSupport,
  railReactions,
} from "@hoopstay/frame";

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

export const rigidAt = (places: readonly number[]): RailSupport[] =>
  places.map((x) => ({ kind: "two-way", x, stiffness: "rigid" }));
