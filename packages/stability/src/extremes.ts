import type { BaseLine } from "./base-line.ts";
import { overturning } from "./lift-and-turn.ts";
import { type ActionTable, stride } from "./outcome.ts";

/** Rows of greatest uplift and of greatest moment about each line: they govern those checks. */
export interface Extremes {
  readonly uplift: number;
  readonly moments: readonly number[];
  /** Horizontal wind of every case with and without the arch's part, m2: two numbers a case. */
  readonly horizontal: Float64Array;
}

/**
 * For lift off and turning the resistance is the same in every case, so the case of greatest wind
 * effect governs, whatever the weight and the combination.
 */
export function extremesOf(table: ActionTable, lines: readonly BaseLine[]): Extremes {
  const { components, count } = table;
  const moments = lines.map((line) => greatestMoment(table, line));
  const horizontal = new Float64Array(2 * count);
  let uplift = 0;
  let highest = Number.NEGATIVE_INFINITY;
  for (let index = 0, at = 0; index < count; index += 1, at += stride) {
    const fx = components[at] as number;
    const fy = components[at + 1] as number;
    const fz = components[at + 2] as number;
    const bare = components[at + 6] as number;
    horizontal[2 * index] = Math.sqrt(fx * fx + fy * fy);
    horizontal[2 * index + 1] = Math.sqrt(bare * bare + fy * fy);
    if (fz > highest) {
      highest = fz;
      uplift = index;
    }
  }
  return { uplift, moments, horizontal };
}

function greatestMoment({ components, count }: ActionTable, line: BaseLine): number {
  const { nx, ny, distance } = line;
  let highest = Number.NEGATIVE_INFINITY;
  let found = 0;
  for (let index = 0, at = 2; index < count; index += 1, at += stride) {
    const moment = overturning.evaluate(
      nx,
      ny,
      components[at + 1] as number,
      components[at + 2] as number,
      components[at] as number,
      distance,
    );
    if (moment > highest) {
      highest = moment;
      found = index;
    }
  }
  return found;
}
