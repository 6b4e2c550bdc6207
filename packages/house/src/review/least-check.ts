import {
  type Covering,
  caseStride,
  type LeastLoad,
  leastLoads,
  type Obstacle,
  type Shell,
} from "@hoopstay/load";
import type { ActionTable, CheckOutcome, CombinationId, Governing } from "@hoopstay/stability";
import { checkHolds, type HeldChecks, heldIn } from "./held-checks.ts";
import type { Hold, HoldId } from "./hold.ts";

/** The least loads of one covering, and the same as forces on the house. */
export interface LeastTable extends ActionTable {
  readonly loads: readonly LeastLoad[];
}

export function leastTable(
  shell: Shell,
  covering: Covering,
  obstacles: readonly Obstacle[],
): LeastTable {
  const loads = leastLoads(shell, covering, obstacles);
  const components = new Float64Array(loads.length * caseStride);
  loads.forEach(({ axis, sense, force, height }, index) => {
    const at = index * caseStride;
    const push = sense * force;
    if (axis === "across") {
      components[at] = push;
      components[at + 4] = push * height;
      components[at + 6] = push;
    } else {
      components[at + 1] = push;
      components[at + 3] = -push * height;
    }
  });
  return { loads, count: loads.length, components };
}

/** The least-load checks of an arrangement: they pass or fail and have no limit speed. */
export interface LeastChecks {
  readonly table: LeastTable;
  readonly held: readonly HeldChecks[];
}

/** The loads are forces already: they run at a pressure of one. */
export const leastChecks = (table: LeastTable, holds: readonly Hold[]): LeastChecks => ({
  table,
  held: table.count === 0 ? [] : checkHolds(holds, table, table, 1),
});

/** One least-load check written out: the worst load of it. */
export interface LeastOutcome {
  readonly check: Governing["check"];
  readonly load: LeastLoad;
  readonly outcome: CheckOutcome;
}

export function leastOutcomes(
  { table, held }: LeastChecks,
  hold: HoldId,
  combination: CombinationId,
): LeastOutcome[] {
  if (held.length === 0) return [];
  return heldIn(held, hold, combination).map(({ check, byRatio }): LeastOutcome => {
    return { check, load: table.loads[byRatio.caseIndex] as LeastLoad, outcome: byRatio };
  });
}
