import { caseStride } from "@hoopstay/load";
import { type BaseLine, overturning } from "@hoopstay/stability";
import type { HeldRows } from "./held-rows.ts";

/**
 * The cases that can govern turning over an end, wherever its line lies from the middle of the house
 * to `farthest`: the moment is a straight line in that distance, so a case that is less at both ends
 * is less between them. Pairs of the moment about the middle, m3, and the uplift, m2.
 */
export class EndRows {
  private readonly kept: readonly (readonly [moment: number, uplift: number])[];

  constructor({ components, count }: HeldRows, ny: 1 | -1, farthest: number) {
    const all: [moment: number, uplift: number][] = [];
    for (let row = 0; row < count; row += 1) {
      const at = row * caseStride;
      all.push([-ny * (components[at + 3] as number), components[at + 2] as number]);
    }
    const far = ([moment, uplift]: readonly [number, number]): number => moment + farthest * uplift;
    all.sort((one, other) => other[0] - one[0] || far(other) - far(one));
    let most = Number.NEGATIVE_INFINITY;
    this.kept = all.filter((row) => {
      if (far(row) <= most) return false;
      most = far(row);
      return true;
    });
  }

  /** The greatest moment about a line at a distance from the middle, per unit of K_d q_h, m3. */
  greatest(distance: number): number {
    let most = Number.NEGATIVE_INFINITY;
    for (const [moment, uplift] of this.kept) most = Math.max(most, moment + distance * uplift);
    return most;
  }
}

/** The greatest moment of all cases about a line that never moves, m3. */
export function greatestAbout({ components, count }: HeldRows, line: BaseLine): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < count; row += 1) {
    const at = row * caseStride;
    const [fz, mx, my] = [at + 2, at + 3, at + 4].map((place) => components[place] as number);
    most = Math.max(
      most,
      overturning.evaluate(
        line.nx,
        line.ny,
        mx as number,
        my as number,
        fz as number,
        line.distance,
      ),
    );
  }
  return most;
}
