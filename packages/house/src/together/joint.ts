import { type CaseTable, torsionCases, type WindCase } from "@hoopstay/load";
import {
  type Certificate,
  type CombinationId,
  certificateOf,
  checkIds,
  jointOfEachCase,
  jointProblems,
  type LateralHold,
  type WorstJoint,
  worstJoint,
} from "@hoopstay/stability";
import { lateralOf } from "../rating/laterals.ts";
import type { EvaluatedState, Evaluation, LoadSet } from "../review/evaluate.ts";
import type { HoldId } from "../review/hold.ts";
import { liftingRows } from "./lifting-rows.ts";

/** Everything at once in one load set and hold: the largest share of the design wind in balance. */
export interface JointResult {
  readonly set: LoadSet;
  readonly hold: HoldId;
  readonly combination: CombinationId;
  /** Wind factor; infinite where the wind of no case ever moves the house. */
  readonly factor: number;
  readonly table: CaseTable;
  readonly row: number;
  readonly windCase: WindCase;
  readonly weight: "low" | "high";
  readonly worst: WorstJoint;
}

/** Torsion cases of a load set, 2 and 4, beside its cases 1 and 3. */
function caseTables({ shell }: Evaluation, set: LoadSet): readonly [CaseTable, CaseTable] {
  const sizes = { across: shell.L, along: shell.b };
  return [set.table, torsionCases(set.surfaces, set.insideCoefficients, sizes)];
}

const tables = new WeakMap<LoadSet, readonly [CaseTable, CaseTable]>();

function tablesOf(evaluation: Evaluation, set: LoadSet): readonly [CaseTable, CaseTable] {
  const made = tables.get(set) ?? caseTables(evaluation, set);
  tables.set(set, made);
  return made;
}

/** What is known of a load set in one hold and combination: its result, or a bound it is not below. */
interface Known {
  result: JointResult | null;
  atLeast: number;
}
const known = new WeakMap<LoadSet, Map<string, Known>>();

function knownOf(set: LoadSet, hold: HoldId, combination: CombinationId): Known {
  const all = known.get(set) ?? new Map<string, Known>();
  known.set(set, all);
  const key = `${hold} ${combination}`;
  const one = all.get(key) ?? { result: null, atLeast: Number.NEGATIVE_INFINITY };
  all.set(key, one);
  return one;
}

/**
 * The lowest wind factor of a load set over all cases 1 to 4, both weights.
 *
 * @param below only a factor below this is asked for; null where there is none
 */
export function jointBelow(
  evaluation: Evaluation,
  set: LoadSet,
  hold: HoldId,
  combination: CombinationId,
  below: number,
): JointResult | null {
  const found = knownOf(set, hold, combination);
  if (!found.result && found.atLeast < below) {
    found.result = worked(evaluation, set, hold, combination, below);
    if (!found.result) found.atLeast = below;
  }
  const { result } = found;
  return result && (result.factor < below || below === Number.POSITIVE_INFINITY) ? result : null;
}

function worked(
  evaluation: Evaluation,
  set: LoadSet,
  holdId: HoldId,
  combination: CombinationId,
  below: number,
): JointResult | null {
  const hold = set.holds.find(({ id }) => id === holdId);
  if (!hold) throw new Error(`nothing holds the house ${holdId}`);
  const laterals = holdId === "bare" ? undefined : lateralsOf(evaluation);
  const problems = jointProblems(hold.terms[combination], laterals);
  const both = tablesOf(evaluation, set);
  const lifting = both.map((one) => liftingRows(one, hold.lines));
  const worst = worstJoint(
    problems.map((problem) => ({ problem, tables: lifting })),
    below,
  );
  if (!worst) return null;
  const table = both[worst.table] as CaseTable;
  const row = lifting[worst.table]?.places[worst.row] ?? 0;
  return {
    set,
    hold: holdId,
    combination,
    factor: worst.factor,
    table,
    row,
    windCase: table.cases[row] as WindCase,
    weight: worst.system.problem.terms.holding.weight.name,
    worst,
  };
}

/** The joint result of a load set as it is held. */
export function jointOf(
  evaluation: Evaluation,
  set: LoadSet,
  hold: HoldId,
  combination: CombinationId,
): JointResult {
  const result = jointBelow(evaluation, set, hold, combination, Number.POSITIVE_INFINITY);
  if (!result) throw new Error("a load set without load cases");
  return result;
}

/** The factor of every case of a load set: cases 1 and 3, then those with torsion. */
export function jointOfCases(
  evaluation: Evaluation,
  set: LoadSet,
  holdId: HoldId,
  combination: CombinationId,
): readonly [readonly number[], readonly number[]] {
  const hold = set.holds.find(({ id }) => id === holdId);
  if (!hold) throw new Error(`nothing holds the house ${holdId}`);
  const laterals = holdId === "bare" ? undefined : lateralsOf(evaluation);
  const both = tablesOf(evaluation, set);
  const problems = jointProblems(hold.terms[combination], laterals);
  const [single, torsion] = jointOfEachCase(problems.map((problem) => ({ problem, tables: both })));
  return [single ?? [], torsion ?? []];
}

/** Side pulls that shafts take, by anchor; none where no tether is made fast to its shaft. */
function lateralsOf({ ratings, site }: Evaluation): readonly (LateralHold | null)[] | undefined {
  const laterals = ratings.map((rating) => lateralOf(rating, site));
  return laterals.some((lateral) => lateral !== null) ? laterals : undefined;
}

/** The forces in balance at a result's factor; null where the wind never moves the house. */
export const certificateAt = ({ worst }: JointResult): Certificate | null =>
  certificateOf(worst.system, worst.actions, worst.factor);

/** The lowest joint factor of some states in one hold and combination. */
export function lowestJoint(
  evaluation: Evaluation,
  states: readonly EvaluatedState[],
  hold: HoldId,
  combination: CombinationId,
): JointResult {
  // Sets of which a factor is known come first: the others then have less to prove.
  const guess = (set: LoadSet): number =>
    knownOf(set, hold, combination).result?.factor ??
    singleFactor(evaluation, set, hold, combination);
  const sets = [...new Set(states.map(({ set }) => set))].sort((a, b) => guess(a) - guess(b));
  const [first, ...others] = sets;
  if (!first) throw new Error("no state");
  let worst = jointOf(evaluation, first, hold, combination);
  for (const set of others) {
    worst = jointBelow(evaluation, set, hold, combination, worst.factor) ?? worst;
  }
  return worst;
}

/** The wind factor at which the first single check of a load set gives way. */
export function singleFactor(
  { pressure }: Evaluation,
  set: LoadSet,
  hold: HoldId,
  combination: CombinationId,
): number {
  const held = set.governing.find((one) => one.hold === hold && one.combination === combination);
  if (!held) throw new Error(`no checks for ${hold} ${combination}`);
  return Math.min(...checkIds.map((check) => held.worst.limit(check))) / pressure;
}
