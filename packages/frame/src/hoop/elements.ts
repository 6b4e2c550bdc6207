import { flexibilitySize } from "./flexibility.ts";
import type { Intervals } from "./intervals.ts";
import { invertSymmetric } from "./invert-symmetric.ts";
import type { LoadTable } from "./load-table.ts";
import { stepSize } from "./step.ts";
import type { Unknowns } from "./unknowns.ts";

/** The parts of the hoop from joint to joint, each as stiff as its own flexibility says. */
export interface Elements {
  readonly count: number;
  /** First interval of each, and the count of all: `count` + 1 numbers. */
  readonly first: Int32Array;
  /** Way in x and z from the start to the end of each. */
  readonly chord: Float64Array;
  /** Force and couple on the start for its own displacement, the end held: 3 by 3 each. */
  readonly stiffness: Float64Array;
  /** Force and couple on the start, both ends held: three for each element, load by load. */
  readonly held: Float64Array;
}

/** Integrates each element's flexibility about its start, inverts it, and holds its loads. */
export function hoopElements(intervals: Intervals, loads: LoadTable, unknowns: Unknowns): Elements {
  const count = unknowns.nodeBreak.length - 1;
  const elements: Elements = {
    count,
    first: unknowns.nodeBreak,
    chord: new Float64Array(2 * count),
    stiffness: new Float64Array(9 * count),
    held: new Float64Array(3 * count * loads.count),
  };
  const give = new Float64Array(9);
  const state = new Float64Array(3);
  for (let element = 0; element < count; element += 1) {
    gather(intervals, elements, element, give);
    invertSymmetric(give);
    // From (F_x, F_z, M) to forces on the start (F_x, F_z, couple = -M): signs of the third change.
    const at = 9 * element;
    for (let i = 0; i < 9; i += 1) elements.stiffness[at + i] = give[i] as number;
    for (const i of [2, 5, 6, 7]) elements.stiffness[at + i] = -(give[i] as number);
    for (let load = 0; load < loads.count; load += 1) {
      const out = 3 * (load * count + element);
      hold(intervals, loads, elements, element, load, state, out);
    }
  }
  return elements;
}

/** Flexibility of an element about its start, and its chord. */
function gather(
  intervals: Intervals,
  elements: Elements,
  element: number,
  into: Float64Array,
): void {
  const { flexibility, steps } = intervals;
  const last = elements.first[element + 1] as number;
  let [x, z] = [0, 0];
  let [xx, xz, zz, xm, zm, mm] = [0, 0, 0, 0, 0, 0];
  for (let i = elements.first[element] as number; i < last; i += 1) {
    const at = flexibilitySize * i;
    const moveX = flexibility[at + 3] as number;
    const moveZ = flexibility[at + 4] as number;
    const turn = flexibility[at + 5] as number;
    xx += (flexibility[at] as number) - 2 * z * moveX + z * z * turn;
    xz += (flexibility[at + 1] as number) - z * moveZ + x * moveX - x * z * turn;
    zz += (flexibility[at + 2] as number) + 2 * x * moveZ + x * x * turn;
    xm += moveX - z * turn;
    zm += moveZ + x * turn;
    mm += turn;
    x += steps[stepSize * i] as number;
    z += steps[stepSize * i + 1] as number;
  }
  into.set([xx, xz, xm, xz, zz, zm, xm, zm, mm]);
  elements.chord[2 * element] = x;
  elements.chord[2 * element + 1] = z;
}

/** Forces on the start of an element whose two ends are held. */
function hold(
  intervals: Intervals,
  loads: LoadTable,
  elements: Elements,
  element: number,
  load: number,
  state: Float64Array,
  out: number,
): void {
  const { flexibility, steps } = intervals;
  const last = elements.first[element + 1] as number;
  let [x, z] = [0, 0];
  let [giveX, giveZ, giveTurn] = [0, 0, 0];
  state.fill(0);
  for (let i = elements.first[element] as number; i < last; i += 1) {
    addPoint(loads, load, i, state);
    const at = flexibilitySize * i;
    const normal = loads.normal[load * intervals.count + i] as number;
    const weight = loads.weight[load * intervals.count + i] as number;
    const push = loads.push[load * intervals.count + i] as number;
    const fx = state[0] as number;
    const fz = state[1] as number;
    const moment = state[2] as number;
    const xm = flexibility[at + 3] as number;
    const zm = flexibility[at + 4] as number;
    const xz = flexibility[at + 1] as number;
    const turn =
      xm * fx +
      zm * fz +
      (flexibility[at + 5] as number) * moment +
      (flexibility[at + 8] as number) * normal +
      (flexibility[at + 11] as number) * weight +
      (flexibility[at + 14] as number) * push;
    giveX +=
      (flexibility[at] as number) * fx +
      xz * fz +
      xm * moment +
      (flexibility[at + 6] as number) * normal +
      (flexibility[at + 9] as number) * weight +
      (flexibility[at + 12] as number) * push -
      z * turn;
    giveZ +=
      xz * fx +
      (flexibility[at + 2] as number) * fz +
      zm * moment +
      (flexibility[at + 7] as number) * normal +
      (flexibility[at + 10] as number) * weight +
      (flexibility[at + 13] as number) * push +
      x * turn;
    giveTurn += turn;
    carry(intervals, i, normal, weight, push, state);
    x += steps[stepSize * i] as number;
    z += steps[stepSize * i + 1] as number;
  }
  const stiffness = elements.stiffness;
  for (let row = 0; row < 3; row += 1) {
    const at = 9 * element + 3 * row;
    elements.held[out + row] =
      (stiffness[at + 2] as number) * giveTurn -
      (stiffness[at] as number) * giveX -
      (stiffness[at + 1] as number) * giveZ;
  }
}

/** Adds a point load that acts at the start of an interval to (F_x, F_z, M). */
export function addPoint(
  { point, pointInterval }: LoadTable,
  load: number,
  interval: number,
  state: Float64Array,
): void {
  if (pointInterval[load] !== interval) return;
  state[0] = (state[0] as number) + (point[3 * load] as number);
  state[1] = (state[1] as number) + (point[3 * load + 1] as number);
  state[2] = (state[2] as number) - (point[3 * load + 2] as number);
}

/** Takes (F_x, F_z, M) from the start of an interval to its end. */
export function carry(
  { steps, length }: Intervals,
  i: number,
  normal: number,
  weight: number,
  push: number,
  state: Float64Array,
): void {
  const at = stepSize * i;
  const dx = steps[at] as number;
  const dz = steps[at + 1] as number;
  const fx = state[0] as number;
  const fz = state[1] as number;
  state[2] =
    (state[2] as number) -
    fx * dz +
    fz * dx -
    normal * (steps[at + 5] as number) -
    weight * (steps[at + 4] as number) -
    push * (steps[at + 6] as number);
  state[0] = fx + normal * dz + push * (length[i] as number);
  state[1] = fz - normal * dx - weight * (length[i] as number);
}
