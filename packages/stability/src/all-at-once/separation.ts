import { emptyBasis } from "./basis.ts";
import type { CaseActions } from "./case-actions.ts";
import { askAt, demandOn } from "./demand.ts";
import type { Facet } from "./facet.ts";
import type { JointSystem } from "./joint-system.ts";
import { walk } from "./walk.ts";

/**
 * Proof that a case is not in equilibrium at a wind factor: a facet that parts what the case asks,
 * `asked`, from all that the system can answer. Null where none is found: then there is an answer.
 */
export function separationAt(
  system: JointSystem,
  actions: CaseActions,
  factor: number,
): (Facet & { readonly asked: Float64Array }) | null {
  const demand = demandOn(system, actions);
  const asked = askAt(demand, factor, new Float64Array(system.rows));
  const { facet } = walk(emptyBasis(system), asked);
  return facet && { ...facet, asked };
}
