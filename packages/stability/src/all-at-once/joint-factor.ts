import { type Basis, emptyBasis } from "./basis.ts";
import type { CaseActions } from "./case-actions.ts";
import { askAt, type Demand, demandOn } from "./demand.ts";
import { beyond } from "./facet.ts";
import { type JointSystem, limitRow } from "./joint-system.ts";
import { solveProgram } from "./linear-program.ts";
import { SolverFault } from "./solver-fault.ts";
import { walk } from "./walk.ts";

/**
 * The largest wind factor below which every smaller one is in equilibrium; 0 where the house does
 * not stand without wind, infinite where this check does not limit it.
 *
 * While contact is left, the friction limit falls in line with the factor, so the factors in
 * equilibrium, with all their unknowns, are a convex set: an interval. It holds 0, so it holds all
 * below its largest. Beyond, the summed friction is nought whatever the factor: an interval again.
 * Both parts ask the same at the factor where contact ends, so the second adds to the first only
 * where the first reaches that end.
 *
 * @throws SolverFault where the solver gives up or its answer does not balance
 */
export function jointFactor(system: JointSystem, actions: CaseActions): number {
  const demand = demandOn(system, actions);
  const { contactEnd } = demand;
  const still = startAt(system, demand, 0);
  if (!still) return 0;
  const lifted = contactEnd < Number.POSITIVE_INFINITY ? startAt(system, demand, contactEnd) : null;
  return (lifted && reach(lifted, demand, true)) ?? reach(still, demand, false) ?? 0;
}

/** A basis to start from at a wind factor in equilibrium; null where it is not in equilibrium. */
function startAt(system: JointSystem, demand: Demand, factor: number): Basis | null {
  const empty = emptyBasis(system);
  const right = askAt(demand, factor, new Float64Array(system.rows));
  const { held, facet } = walk(empty, right);
  if (held) return held;
  if (facet && beyond(facet, right)) return null;
  return solveProgram({ basis: empty, right, wind: null }).status === "optimal" ? empty : null;
}

/** An answer this much beyond the largest factor, in proportion, shows that it is not the largest. */
const clearlyMore = 1e-6;

/**
 * The largest factor with contact, from nought; or without, from where contact ends. Null where the
 * start is in equilibrium by rounding only.
 */
function reach(basis: Basis, demand: Demand, lifted: boolean): number | null {
  const { perUnit, unit, contactEnd } = demand;
  const coefficient = perUnit.map((one) => -one);
  if (lifted) coefficient[limitRow] = 0;
  const start = lifted ? contactEnd : 0;
  const right = askAt(demand, start, new Float64Array(perUnit.length));
  const cap = lifted ? Number.POSITIVE_INFINITY : contactEnd / unit;
  const found = solveProgram({ basis, right, wind: { coefficient, cap } });
  if (found.status !== "optimal") {
    return found.status === "unbounded" ? Number.POSITIVE_INFINITY : null;
  }
  const factor = start + unit * found.factor;
  const more = askAt(demand, factor + clearlyMore * (factor + unit), right);
  if (!walk(basis, more).held) return factor;
  throw new SolverFault("solver-disagrees", `equilibrium beyond ${factor}`);
}
