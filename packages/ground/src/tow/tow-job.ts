import { Refusal } from "@hoopstay/core";

/** The house as it is dragged in one state (bin empty, bin full), low and high estimate, N. */
export interface TowLoad {
  readonly id: string;
  readonly low: number;
  readonly high: number;
  /** Centre of gravity to the right of the left rail, m. */
  readonly fromLeft: number;
}

export interface Tractor {
  /** N */
  readonly weight: number;
  /** Weight on the driven wheels, N: all of it with four-wheel drive. */
  readonly onDrivenWheels: number;
}

export interface TowJob {
  readonly loads: readonly TowLoad[];
  /** m */
  readonly railSpacing: number;
  /** Steepest slope on the way, rad, 0 to 45 degrees. */
  readonly slope: number;
  /** Low friction of the ground as it is counted for holding. */
  readonly holdingFriction: number;
  /** What drags it; the pull needed is told without one. */
  readonly tractor: Tractor | null;
}

/**
 * Refuses a job that cannot be computed.
 *
 * @throws Refusal `not-positive` for a weight or a rail spacing, `sizes-disagree` for low above high or
 *   more weight on the driven wheels than the tractor has, `out-of-range` for a slope outside 0 to 45
 *   degrees, a friction below zero or a centre of gravity outside the rails
 */
export function refuseJob({ loads, railSpacing, slope, holdingFriction, tractor }: TowJob): void {
  positive("rail spacing", railSpacing);
  if (tractor) refuseTractor(tractor);
  if (!(slope >= 0 && slope <= Math.PI / 4)) refuse("out-of-range", "a slope of 0 to 45 degrees");
  if (!(holdingFriction >= 0 && Number.isFinite(holdingFriction))) {
    refuse("out-of-range", "a friction of zero or more");
  }
  for (const { id, low, high, fromLeft } of loads) {
    positive(`low weight, ${id}`, low);
    positive(`high weight, ${id}`, high);
    if (low > high) refuse("sizes-disagree", `a low weight of at most the high one, ${id}`);
    if (!(fromLeft >= 0 && fromLeft <= railSpacing)) {
      refuse("out-of-range", `a centre of gravity between the rails, ${id}`);
    }
  }
}

function refuseTractor({ weight, onDrivenWheels }: Tractor): void {
  positive("weight of the tractor", weight);
  positive("weight on the driven wheels", onDrivenWheels);
  if (onDrivenWheels > weight) {
    refuse("sizes-disagree", "no more weight on the driven wheels than the tractor weighs");
  }
}

function positive(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) refuse("not-positive", `a ${name} above zero`);
}

function refuse(code: "not-positive" | "sizes-disagree" | "out-of-range", expected: string): never {
  throw new Refusal([{ code, expected, mend: "Check the number and its unit." }]);
}
