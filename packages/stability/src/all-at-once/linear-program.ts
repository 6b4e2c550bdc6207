import { solve } from "yalps";
import { basicValues, isBasic, seenFrom, standsAtCap } from "./basis.ts";
import { capAt, columnAt } from "./joint-system.ts";
import type { LinearProgram } from "./program.ts";
import { refined } from "./refine.ts";
import { SolverFault } from "./solver-fault.ts";

/** A best vertex (the wind factor, then the unknowns of the system), or why there is none. */
export type ProgramAnswer =
  | { readonly status: "optimal"; readonly factor: number; readonly values: Float64Array }
  | { readonly status: "unbounded" | "infeasible" };

/** Keys of the model: rows of the basis from 0 on, the objective, the wind, caps from here on. */
const objective = -1;
const windKey = -2;
const capsFrom = 1000;
/**
 * Below `precision` the solver takes a number for nought. It has no guard against going round in
 * circles where many unknowns stand at nought at once: widening each row a little, each by another
 * amount, breaks the ties, and refining the answer takes the widening out again.
 */
const attempts = [
  { precision: 1e-11, widening: 0 },
  { precision: 1e-12, widening: 1e-9 },
  { precision: 1e-10, widening: 0 },
  { precision: 1e-12, widening: 1e-8 },
  { precision: 1e-11, widening: 1e-7 },
];
const maxPivots = 400;
/** Its multiples less their whole parts are all unlike. */
const goldenRatio = (1 + Math.sqrt(5)) / 2;

interface Model {
  readonly constraints: [number, { min?: number; max: number }][];
  readonly variables: [number, [number, number][]][];
}

/**
 * Solves by yalps. An unknown at its cap is written as what it lacks of it, a basic one through the
 * others: its bounds become a row. From a basis that answers the right side the solver starts with
 * a solution; from the empty one it has to find one, each row twice.
 */
export function solveProgram(program: LinearProgram): ProgramAnswer {
  let infeasible = false;
  let fault = new SolverFault("solver-gave-up", "no answer at any precision");
  for (const { precision, widening } of attempts) {
    const found = solve(
      { direction: "maximize", objective, ...modelOf(program, widening) },
      { precision, maxPivots },
    );
    if (found.status === "unbounded") return { status: "unbounded" };
    if (found.status === "infeasible") infeasible = true;
    if (found.status !== "optimal") continue;
    try {
      return {
        status: "optimal",
        ...refined(program, valuesOf(program, found.variables), widening),
      };
    } catch (thrown) {
      if (!(thrown instanceof SolverFault)) throw thrown;
      fault = thrown;
    }
  }
  if (infeasible) return { status: "infeasible" };
  throw fault;
}

function modelOf({ basis, right, wind }: LinearProgram, widening: number): Model {
  const { system, members, standing } = basis;
  const { rows, columns, caps } = system;
  const tethers = caps.length;
  const values = new Float64Array(rows);
  basicValues(basis, right, values);
  const constraints: Model["constraints"] = [];
  for (let row = 0; row < rows; row += 1) {
    const wider = widening * (1 + ((row * goldenRatio) % 1));
    const value = values[row] as number;
    const least = value - (basis.caps[row] as number);
    constraints.push([row, { min: least - wider, max: value + wider }]);
  }
  const variables: Model["variables"] = [];
  const write = (key: number, seen: Float64Array, sign: number, own: number, limit: number) => {
    const entries: [number, number][] = [];
    let gain = sign * own;
    for (let row = 0; row < rows; row += 1) {
      const share = sign * (seen[row] as number);
      if (Math.abs(share) <= noise) continue;
      entries.push([row, share]);
      const member = members[row] as number;
      if (!wind && member >= 0 && member < tethers) gain += share;
    }
    if (Math.abs(gain) > noise) entries.push([objective, gain]);
    if (limit < Number.POSITIVE_INFINITY) {
      entries.push([capsFrom + key, 1]);
      constraints.push([capsFrom + key, { max: limit }]);
    }
    variables.push([key, entries]);
  };
  if (wind) write(windKey, seenFrom(basis, wind.coefficient), 1, 1, wind.cap);
  for (let column = 0; column < columns; column += 1) {
    if (standing[column] === isBasic) continue;
    const sign = standing[column] === standsAtCap ? -1 : 1;
    const own = !wind && column < tethers ? -1 : 0;
    const seen = seenFrom(basis, columnAt(system, column));
    write(column, seen, sign, own, capAt(system, column));
  }
  return { constraints, variables };
}

/** A coefficient this small is rounding. */
const noise = 1e-14;

function valuesOf(
  { basis, right, wind }: LinearProgram,
  found: readonly (readonly [number, number])[],
): { factor: number; values: Float64Array } {
  const { system, members, standing } = basis;
  const { rows, columns } = system;
  const values = new Float64Array(columns);
  const rest = right.slice();
  let factor = 0;
  const use = (column: Float64Array, value: number) => {
    for (let row = 0; row < rows; row += 1) {
      rest[row] = (rest[row] as number) - value * (column[row] as number);
    }
  };
  for (let column = 0; column < columns; column += 1) {
    if (standing[column] === standsAtCap) values[column] = capAt(system, column);
  }
  for (const [key, value] of found) {
    if (key === windKey) factor = value;
    else values[key] = standing[key] === standsAtCap ? capAt(system, key) - value : value;
  }
  if (wind) use(wind.coefficient, factor);
  for (let column = 0; column < columns; column += 1) {
    if (values[column] !== 0) use(columnAt(system, column), values[column] as number);
  }
  const basic = seenFrom(basis, rest);
  for (let row = 0; row < rows; row += 1) {
    const member = members[row] as number;
    if (member >= 0) values[member] = basic[row] as number;
  }
  return { factor, values };
}
