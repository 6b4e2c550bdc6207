import { type ActionTable, stride } from "../outcome.ts";
import { type CaseActions, slopesOf, windOf } from "./case-actions.ts";
import { factorUpTo, type Pool, poolOf } from "./case-search.ts";
import { demandOn } from "./demand.ts";
import { jointFactor } from "./joint-factor.ts";
import { cornerSets, type JointProblem, type JointWork } from "./joint-problem.ts";
import { type JointSystem, jointSystem } from "./joint-system.ts";
import { outweighs } from "./outweighed.ts";
import { SolverFault } from "./solver-fault.ts";

/** The case with the lowest wind factor, and what it came from. */
export interface WorstJoint {
  readonly factor: number;
  readonly work: number;
  readonly table: number;
  readonly row: number;
  readonly system: JointSystem;
  readonly actions: CaseActions;
}

/** Where a case stands in the works. */
interface Place {
  readonly pool: Pool;
  readonly work: number;
  readonly table: number;
  readonly cases: ActionTable;
}

/** No wind this many times as strong as all that holds a house is resisted, unless all are. */
const beyondAll = 1e4;
/** The walk's answer and the solver's may differ by rounding, no more. */
const agreement = 1e-9;

/**
 * The lowest wind factor of many cases, exactly; null where there is no case. A case is passed over
 * only where an answer with every unknown within its bounds is in hand at the lowest factor found
 * so far (`factorUpTo`): its own factor is not lower then. The one that remains is solved by the
 * solver, whose answer has to agree. A heavier house that cannot be worse is left out.
 *
 * @param below only a factor below this is asked for; null where there is none
 * @throws SolverFault where the two disagree or the solver gives up
 */
export function worstJoint(
  works: readonly JointWork[],
  below = Number.POSITIVE_INFINITY,
): WorstJoint | null {
  const places = placesOf(works);
  let worst: WorstJoint | null = null;
  for (const place of places) worst = lowerOf(worst, below, place, mostSideways(place.cases));
  for (const place of places) {
    for (let row = 0; row < place.cases.count; row += 1) worst = lowerOf(worst, below, place, row);
  }
  if (!worst) return null;
  const factor = jointFactor(worst.system, worst.actions);
  const { unit } = demandOn(worst.system, worst.actions);
  const most = agreement * (worst.factor + unit);
  if (factor !== worst.factor && !(Math.abs(factor - worst.factor) <= most)) {
    throw new SolverFault("solver-disagrees", `${factor} against ${worst.factor}`);
  }
  return { ...worst, factor };
}

/**
 * The wind factor of every case, by table and row: the lowest over the weights. The same walk as for
 * the worst case, without the solver's second opinion on each.
 */
export function jointOfEachCase(works: readonly JointWork[]): number[][] {
  const found = (works[0]?.tables ?? []).map(({ count }) =>
    new Array<number>(count).fill(Number.POSITIVE_INFINITY),
  );
  for (const { pool, table, cases } of placesOf(works)) {
    const { problem } = pool.system;
    const factors = found[table] as number[];
    for (let row = 0; row < cases.count; row += 1) {
      const wind = windOf(problem, cases, row);
      for (const slope of slopesOf(problem, wind[0] as number, wind[1] as number)) {
        const factor = factorBelow(pool, { wind, slope }, Number.POSITIVE_INFINITY);
        factors[row] = Math.min(factors[row] as number, factor);
      }
    }
  }
  return found;
}

function placesOf(works: readonly JointWork[]): Place[] {
  const pools = new Map<JointProblem, Pool[]>();
  return works.flatMap((each, work) => {
    const { problem, tables } = each;
    if (works.some((other) => outweighs(each, other))) return [];
    const made =
      pools.get(problem) ??
      cornerSets(problem.lines).map((corners) => poolOf(jointSystem(problem, corners)));
    pools.set(problem, made);
    return made.flatMap((pool) =>
      tables.flatMap((cases, table) => (cases.count > 0 ? [{ pool, work, table, cases }] : [])),
    );
  });
}

/** The row with the greatest horizontal force: often the worst, so that the rest is passed over. */
function mostSideways({ count, components }: ActionTable): number {
  let [most, found] = [0, 0];
  for (let row = 0; row < count; row += 1) {
    const [fx, fy] = [components[row * stride] as number, components[row * stride + 1] as number];
    const square = fx * fx + fy * fy;
    if (square > most) {
      most = square;
      found = row;
    }
  }
  return found;
}

/** The worse of what is known and one row. */
function lowerOf(
  worst: WorstJoint | null,
  below: number,
  place: Place,
  row: number,
): WorstJoint | null {
  const { pool, work, table, cases } = place;
  const { system } = pool;
  const wind = windOf(system.problem, cases, row);
  let lowest = worst;
  for (const slope of slopesOf(system.problem, wind[0] as number, wind[1] as number)) {
    const actions = { wind, slope };
    const most = lowest?.factor ?? below;
    if (most <= 0) break;
    const factor = factorBelow(pool, actions, most);
    if (factor < most || (!lowest && below === Number.POSITIVE_INFINITY))
      lowest = { factor, work, table, row, system, actions };
  }
  return lowest;
}

/** A case's factor, or `most` where it is not below that. */
function factorBelow(pool: Pool, actions: CaseActions, most: number): number {
  const demand = demandOn(pool.system, actions);
  const limit = Math.min(most, beyondAll * demand.unit);
  const found = factorUpTo(pool, demand, limit);
  const open = found === null || (found === limit && limit < most);
  return open ? jointFactor(pool.system, actions) : found;
}
