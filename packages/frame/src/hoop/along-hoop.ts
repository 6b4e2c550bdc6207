import { Refusal } from "@hoopstay/core";
import type { Side } from "../rail/along-rail.ts";
import { within } from "./complaints.ts";
import { flexibility, flexibilitySize } from "./flexibility.ts";
import type { HoopFrame } from "./hoop-frame.ts";
import type { Intervals } from "./intervals.ts";
import { moveOn } from "./recover.ts";
import { intervalWidth } from "./response.ts";
import { step, stepSize } from "./step.ts";

/** Axial force (N, tension positive), shear (N) and bending moment (N m, tension inside positive). */
export interface HoopForces {
  readonly N: number;
  readonly V: number;
  readonly M: number;
}

/** Displacement in x and z (m) and counter-clockwise turn (rad). */
export interface HoopShape {
  readonly x: number;
  readonly z: number;
  readonly turn: number;
}

/**
 * Forces inside the hoop at a place: those that the part to the left exerts on the part to the
 * right, seen along the line (N), outward across it (V), and the moment; dM/ds = V.
 *
 * @param side which side of a kink, a joint or a point load, the right one if not said
 * @throws Refusal for a place beside the hoop
 */
export function hoopForcesAt(
  frame: HoopFrame,
  response: Float64Array,
  s: number,
  side: Side = "right",
): HoopForces {
  const { intervals, statesAt } = frame;
  const i = intervalAt(intervals, s, side);
  const way = stepTo(intervals, i, s);
  const forces = new Float64Array(3);
  forcesAfter(
    response,
    statesAt + intervalWidth * i,
    s - (intervals.start[i] as number),
    way,
    0,
    forces,
    0,
  );
  return { N: forces[0] as number, V: forces[1] as number, M: forces[2] as number };
}

/**
 * Displacement of the hoop at a place. At a hinge the turn is that of the given side.
 *
 * @throws Refusal for a place beside the hoop
 */
export function hoopShapeAt(
  frame: HoopFrame,
  response: Float64Array,
  s: number,
  side: Side = "right",
): HoopShape {
  const { intervals, statesAt, hoop } = frame;
  const i = intervalAt(intervals, s, side);
  const way = stepTo(intervals, i, s);
  const give = new Float64Array(flexibilitySize);
  const [cos, sin] = [intervals.cos[i] as number, intervals.sin[i] as number];
  const length = s - (intervals.start[i] as number);
  flexibility(intervals.curvature[i] as number, cos, sin, length, hoop.section, give, 0);
  const place = new Float64Array(3);
  const state = statesAt + intervalWidth * i;
  moveOn(response, state, way[0] as number, way[1] as number, give, 0, place);
  return { x: place[0] as number, z: place[1] as number, turn: place[2] as number };
}

/** The smooth part that a place lies in; where two meet, that on the given side. */
export function intervalAt({ start, count }: Intervals, s: number, side: Side): number {
  const complaints = within("s", s, start[count] as number);
  if (complaints.length > 0) throw new Refusal(complaints);
  let [low, high] = [0, count];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const place = start[middle] as number;
    if (place < s || (place === s && side === "right")) low = middle;
    else high = middle;
  }
  return low;
}

function stepTo(intervals: Intervals, i: number, s: number): Float64Array {
  const way = new Float64Array(stepSize);
  const length = s - (intervals.start[i] as number);
  const [cos, sin] = [intervals.cos[i] as number, intervals.sin[i] as number];
  step(intervals.curvature[i] as number, cos, sin, length, way);
  return way;
}

/**
 * N, V and M at a way beyond the start of a smooth part.
 *
 * @param state where the state of its start stands in the response
 * @param length way beyond the start, m
 * @param steps what `step` wrote for that way, from `at` on
 */
export function forcesAfter(
  response: Float64Array,
  state: number,
  length: number,
  steps: Float64Array,
  at: number,
  into: Float64Array,
  out: number,
): void {
  const dx = steps[at] as number;
  const dz = steps[at + 1] as number;
  const alongX = steps[at + 2] as number;
  const alongZ = steps[at + 3] as number;
  const fx = response[state + 3] as number;
  const fz = response[state + 4] as number;
  const q = response[state + 6] as number;
  const w = response[state + 7] as number;
  const p = response[state + 8] as number;
  const x = fx + q * dz + p * length;
  const z = fz - q * dx - w * length;
  into[out] = -(x * alongX + z * alongZ);
  into[out + 1] = z * alongX - x * alongZ;
  into[out + 2] =
    (response[state + 5] as number) -
    fx * dz +
    fz * dx -
    q * (steps[at + 5] as number) -
    w * (steps[at + 4] as number) -
    p * (steps[at + 6] as number);
}
