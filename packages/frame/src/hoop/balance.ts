import { beamStiffness } from "./beam.ts";
import type { Hoop } from "./hoop.ts";
import { jointPoint } from "./hoop-input.ts";
import type { Intervals } from "./intervals.ts";
import { barWidth, footMovesAt, intervalWidth, resultantAt } from "./response.ts";

/** A frame as far as its balance needs it. */
export interface Framed {
  readonly hoop: Hoop;
  readonly intervals: Intervals;
  readonly size: number;
  readonly statesAt: number;
  barAt(bar: number): number;
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
  const { hoop, intervals } = frame;
  const reach = hoop.line.length;
  let [loads, inside] = [0, 0];
  for (const [bar, { from, to }] of hoop.bars.entries()) {
    const [a, b] = [jointPoint(hoop, from), jointPoint(hoop, to)];
    const weight = response[frame.barAt(bar) + barWidth - 1] as number;
    loads += Math.abs(weight) * Math.hypot(b.x - a.x, b.z - a.z);
  }
  for (let i = 0; i < intervals.count; i += 1) {
    const at = frame.statesAt + intervalWidth * i;
    const [x, z, moment] = [response[at + 3], response[at + 4], response[at + 5]];
    for (let load = 6; load < intervalWidth; load += 1) {
      loads += Math.abs(response[at + load] as number) * (intervals.length[i] as number);
    }
    inside = Math.max(inside, Math.abs(x as number), Math.abs(z as number));
    inside = Math.max(inside, Math.abs(moment as number) / reach);
  }
  // A foot may move without force: what is left is then rounding of what bending it would take.
  const bending = beamStiffness(hoop);
  for (let i = 0; i < 6; i += 1) {
    const force = Math.abs(response[i] as number);
    inside = Math.max(inside, i % 3 === 2 ? force / reach : force);
    const settled = Math.abs(response[footMovesAt + i] as number);
    inside = Math.max(inside, bending * (i % 3 === 2 ? settled * reach : settled));
  }
  return Math.max(loads, inside);
}

/** @throws Error where a response is out of balance by more than rounding */
export function checkedImbalance(frame: Framed, response: Float64Array, rounding: number): void {
  const imbalance = hoopImbalance(frame, response);
  if (imbalance <= rounding) return;
  throw new Error(`fault of its own: the hoop is out of balance by ${imbalance} of its load`);
}
