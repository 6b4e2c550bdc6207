import { emptyBasis } from "./basis.ts";
import type { CaseActions } from "./case-actions.ts";
import { askAt, demandOn } from "./demand.ts";
import { type JointSystem, jointSystem } from "./joint-system.ts";
import { solveProgram } from "./linear-program.ts";
import { orFault, SolverFault } from "./solver-fault.ts";
import { walk } from "./walk.ts";

/** Unknowns of a system that answer a case at a factor with the least sum of tensions. */
export interface LeastTensions {
  readonly system: JointSystem;
  readonly factor: number;
  readonly values: Float64Array;
}

/**
 * How far below the largest factor the least tensions are sought: at the factor itself there is
 * mostly one answer only, and rounding finds none. The next one where the solver fails at one; the
 * last is still less than the digits that are printed.
 */
const rooms = [1e-10, 1e-9, 1e-8, 1e-7, 1e-6];

/**
 * The answer with the least sum of tensions at the largest factor of a case; null where that is
 * infinite, or nought because the house does not stand without wind. Forces are in units of what
 * acts at the factor, if that is more than the weight.
 *
 * @throws SolverFault where the solver gives up or its answer does not balance
 */
export function leastTensions(
  { problem, corners, length }: JointSystem,
  actions: CaseActions,
  largest: number,
): LeastTensions | null {
  if (largest === Number.POSITIVE_INFINITY) return null;
  const sizes = actions.wind.map(
    (one, axis) => (largest * Math.abs(one)) / (axis < 3 ? 1 : length),
  );
  const system = jointSystem(problem, corners, Math.max(...sizes));
  const demand = demandOn(system, actions);
  const empty = emptyBasis(system);
  let fault = new SolverFault(
    "solver-disagrees",
    `no equilibrium at ${largest}, where one is known`,
  );
  for (const room of rooms) {
    const factor = largest * (1 - room);
    const right = askAt(demand, factor, new Float64Array(system.rows));
    const { held } = walk(empty, right);
    const found = orFault(() => solveProgram({ basis: held ?? empty, right, wind: null }));
    if (found instanceof SolverFault) fault = found;
    else if (found.status === "optimal") return { system, factor, values: found.values };
    if (largest === 0) return null;
  }
  throw fault;
}
