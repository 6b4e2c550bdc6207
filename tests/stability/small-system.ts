import { type JointSystem, jointSystem } from "@hoopstay/stability";
import {
  type Basis,
  emptyBasis,
  exchange,
} from "../../packages/stability/src/all-at-once/basis.ts";
import { problem } from "./fitted-problem.ts";

const house = jointSystem(problem({}), [{ x: 1, y: 1 }]);

/** A column with one number in it. */
export const column = (rows: number, row: number, value = 1): number[] =>
  Array.from({ length: rows }, (_, one) => (one === row ? value : 0));

/** Columns that no house has: the first with caps; unknowns of a fan that does not turn behind. */
export function smallSystem(
  singles: readonly (readonly number[])[],
  caps: readonly number[] = [],
  fan: readonly number[] | null = null,
  rows = (singles[0] ?? fan ?? []).length,
): JointSystem {
  const still = new Float64Array(rows);
  const fans = fan
    ? [{ first: singles.length, base: Float64Array.from(fan), alongX: still, alongY: still }]
    : [];
  return {
    ...house,
    rows,
    columns: singles.length + 32 * fans.length,
    singles: singles.map((one) => Float64Array.from(one)),
    fans,
    fanned: [],
    shafts: [],
    caps: Float64Array.from(caps),
    still,
  };
}

/** The basis of one unknown for each row, by row; -1 for none. */
export function basisOf(system: JointSystem, members: readonly number[]): Basis {
  const basis = emptyBasis(system);
  for (const [row, member] of members.entries()) {
    if (member >= 0) exchange(basis, row, member, false);
  }
  return basis;
}
