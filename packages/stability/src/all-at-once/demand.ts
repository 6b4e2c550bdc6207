import type { CaseActions } from "./case-actions.ts";
import { type JointSystem, limitRow } from "./joint-system.ts";

/** What one case asks of a system's unknowns: a right side that moves with the wind factor. */
export interface Demand {
  readonly right: Float64Array;
  /** What the right side gains per unit of the program's own wind unknown. */
  readonly perUnit: Float64Array;
  /** Wind factor of one such unit: the wind is then about as strong as all that holds the house. */
  readonly unit: number;
  /** The wind factor at which no contact is left; infinite where the wind does not lift. */
  readonly contactEnd: number;
}

export function demandOn(system: JointSystem, { wind, slope }: CaseActions): Demand {
  const { rows, force, length, still, problem } = system;
  const right = still.slice();
  const perUnit = new Float64Array(rows);
  let size = 0;
  for (let part = 0; part < 6; part += 1) {
    const scale = part < 3 ? force : force * length;
    right[part] = (right[part] as number) - (slope[part] as number) / scale;
    perUnit[part] = -(wind[part] as number) / scale;
    size = Math.max(size, Math.abs(perUnit[part] as number));
  }
  const unit = size > 0 ? 1 / size : 1;
  for (let part = 0; part < 6; part += 1) perUnit[part] = unit * (perUnit[part] as number);
  const { deadNormal } = problem.terms;
  const uplift = wind[2] as number;
  right[limitRow] = deadNormal / force;
  perUnit[limitRow] = perUnit[2] as number;
  const contactEnd = uplift > 0 ? deadNormal / uplift : Number.POSITIVE_INFINITY;
  return { right, perUnit, unit, contactEnd };
}

/** What is asked at one wind factor, into `at`: beyond `contactEnd` no summed friction at all. */
export function askAt(demand: Demand, factor: number, at: Float64Array): Float64Array {
  const { right, perUnit, unit, contactEnd } = demand;
  const units = factor / unit;
  for (let row = 0; row < at.length; row += 1) {
    at[row] = (right[row] as number) + units * (perUnit[row] as number);
  }
  if (factor >= contactEnd) at[limitRow] = 0;
  return at;
}
