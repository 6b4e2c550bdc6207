import type { Hoop } from "./hoop.ts";
import type { Intervals } from "./intervals.ts";
import { barWidth, footMovesAt, intervalWidth, resultantAt } from "./response.ts";

/** A frame as far as its balance needs it. */
export interface Framed {
  readonly hoop: Hoop;
  readonly intervals: Intervals;
  readonly size: number;
  readonly statesAt: number;
  readonly beam: number;
  barAt(bar: number): number;
  barLength(bar: number): number;
}

/**
 * What is left over of the three sums of equilibrium of the whole (forces in x and z, moments about
 * the left foot), as a part of the loads' size: forces, and moments over the developed length. The
 * size counts loads without sign, and forces inside the hoop where they are greater.
 */
export function hoopImbalance(frame: Framed, response: Float64Array): number {
  const { line } = frame.hoop;
  const reach = line.length;
  const left = { x: line.x[0] as number, z: line.z[0] as number };
  const right = { x: line.x[line.count] as number, z: line.z[line.count] as number };
  const force = (i: number): number => response[i] as number;
  const x = force(0) + force(3) + force(resultantAt);
  const z = force(1) + force(4) + force(resultantAt + 1);
  const couple =
    force(2) +
    force(5) +
    (right.x - left.x) * force(4) -
    (right.z - left.z) * force(3) +
    force(resultantAt + 2) -
    left.x * force(resultantAt + 1) +
    left.z * force(resultantAt);
  const off = Math.max(Math.abs(x), Math.abs(z), Math.abs(couple) / reach);
  return off === 0 ? 0 : off / loadSize(frame, response);
}

/**
 * Size of what acts on and in the hoop, N: loads without sign, or forces inside where they are
 * greater.
 */
export function loadSize(frame: Framed, response: Float64Array): number {
  const { hoop, intervals, beam } = frame;
  const reach = hoop.line.length;
  let [loads, inside] = [0, 0];
  for (let bar = 0; bar < hoop.bars.length; bar += 1) {
    const weight = response[frame.barAt(bar) + barWidth - 1] as number;
    loads += Math.abs(weight) * frame.barLength(bar);
  }
  for (let i = 0; i < intervals.count; i += 1) {
    const at = frame.statesAt + intervalWidth * i;
    for (let load = 6; load < intervalWidth; load += 1) {
      loads += Math.abs(response[at + load] as number) * (intervals.length[i] as number);
    }
    inside = Math.max(
      inside,
      Math.abs(response[at + 3] as number),
      Math.abs(response[at + 4] as number),
      Math.abs(response[at + 5] as number) / reach,
    );
  }
  // A foot may move without force: what is left is then rounding of what bending it would take.
  for (let i = 0; i < 6; i += 1) {
    const force = Math.abs(response[i] as number);
    inside = Math.max(inside, i % 3 === 2 ? force / reach : force);
    const settled = Math.abs(response[footMovesAt + i] as number);
    inside = Math.max(inside, beam * (i % 3 === 2 ? settled * reach : settled));
  }
  return Math.max(loads, inside);
}

/** @throws Error where a response is out of balance by more than rounding */
export function checkedImbalance(frame: Framed, response: Float64Array, rounding: number): void {
  const imbalance = hoopImbalance(frame, response);
  if (imbalance <= rounding) return;
  throw new Error(`fault of its own: the hoop is out of balance by ${imbalance} of its load`);
}
