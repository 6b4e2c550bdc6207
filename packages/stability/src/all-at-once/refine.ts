import { capAt, columnAt } from "./joint-system.ts";
import { leastSquares } from "./least-squares.ts";
import type { LinearProgram } from "./program.ts";
import { SolverFault } from "./solver-fault.ts";

/** A value nearer to its bound than this stands at it; the solver's own noise is far smaller. */
const nearBound = 1e-9;
/**
 * What an answer may miss its right side or its bounds by, in units near 1: little where the wind
 * factor is sought, more below it, where values stand as near their bounds as the factor to its.
 */
const tolerances = { factor: 1e-10, below: 1e-9 };

interface Answer {
  readonly factor: number;
  readonly values: Float64Array;
}

/**
 * A vertex as exactly as numbers allow: values at a bound are set to it, and those strictly between
 * their bounds solve the equations again, by least squares (a vertex has no more of them than
 * rows). Throws where the result misses a row or a bound.
 *
 * @param widening by how much the rows were widened: values may stand that much off their bounds
 */
export function refined(
  program: LinearProgram,
  { factor, values }: Answer,
  widening: number,
): Answer {
  const tolerance = program.wind ? tolerances.factor : tolerances.below;
  const atBound = nearBound + 30 * widening;
  const { basis, right, wind } = program;
  const { system } = basis;
  const { rows, columns } = system;
  const all = [...values, factor];
  const capOf = (place: number): number =>
    place < columns ? capAt(system, place) : (wind?.cap ?? 0);
  const columnOf = (place: number): Float64Array =>
    place < columns || !wind ? columnAt(system, place) : wind.coefficient;
  const free: number[] = [];
  for (const [place, value] of all.entries()) {
    const most = capOf(place);
    if (value <= atBound) all[place] = 0;
    else if (most - value <= atBound) all[place] = most;
    else free.push(place);
  }
  const missing = (): Float64Array => {
    const miss = right.slice();
    for (const [place, value] of all.entries()) {
      if (value === 0) continue;
      const column = columnOf(place);
      for (let row = 0; row < rows; row += 1) {
        miss[row] = (miss[row] as number) - value * (column[row] as number);
      }
    }
    return miss;
  };
  for (let round = 0; round < 2; round += 1) {
    const step = leastSquares(free.map(columnOf), missing());
    if (!step) throw new SolverFault("solver-unbalanced", "the answer is no vertex");
    for (const [place, one] of free.entries()) {
      all[one] = (all[one] as number) + (step[place] as number);
    }
  }
  const size = right.reduce((most, one) => Math.max(most, Math.abs(one)), 1);
  const worst = missing().reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  if (!(worst <= tolerance * size)) {
    throw new SolverFault("solver-unbalanced", `a row is missed by ${worst}`);
  }
  for (const [place, value] of all.entries()) {
    const most = capOf(place);
    if (!(value >= -tolerance && value <= most + tolerance)) {
      throw new SolverFault(
        "solver-unbalanced",
        `an unknown leaves its bounds: ${value} of ${most}`,
      );
    }
  }
  return { factor: all.pop() as number, values: Float64Array.from(all) };
}
