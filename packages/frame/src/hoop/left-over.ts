import { elementUnknowns, give, givePoint } from "./assemble.ts";
import type { Bars } from "./bars.ts";
import { carry } from "./elements.ts";
import type { FrameParts } from "./recover.ts";
import { barWidth, intervalWidth } from "./response.ts";
import type { Unknowns } from "./unknowns.ts";

/**
 * Forces and couples that the members of a response and its load leave over at every unknown: zero
 * where the joints balance, what the ground must hold at the feet.
 *
 * Computed from the forces of the members, not from displacements: the difference of two nearly
 * equal displacements, times the stiffness of a short member, is good to few digits; its effect on
 * the balance is exact.
 *
 * @param load the unit load that acts, or `noLoad`
 */
export function leftOver(
  { intervals, unknowns, loads, elements, bars, layout, room }: FrameParts,
  load: number,
  response: Float64Array,
  into: Float64Array,
): void {
  const { unknown, state } = room;
  into.fill(0);
  for (let element = 0; element < elements.count; element += 1) {
    elementUnknowns(unknowns, element, unknown);
    const first = layout.intervals + intervalWidth * (elements.first[element] as number);
    add(into, unknown, 0, response, first + 3, -1);
    const last = (elements.first[element + 1] as number) - 1;
    const out = layout.intervals + intervalWidth * last;
    for (let i = 0; i < 3; i += 1) state[i] = response[out + 3 + i] as number;
    const normal = response[out + 6] as number;
    const weight = response[out + 7] as number;
    const push = response[out + 8] as number;
    carry(intervals, last, normal, weight, push, state);
    add(into, unknown, 3, state, 0, 1);
  }
  for (let bar = 0; bar < bars.count; bar += 1) {
    addBar(bars, bar, response, layout.bars + barWidth * bar, into);
  }
  if (load >= 0) givePoint(load, loads, unknowns, into);
}

/** What the hoop gives to a joint: (F_x, F_z, -M) where it arrives, reversed where it leaves. */
function add(
  into: Float64Array,
  unknown: Int32Array,
  end: number,
  forces: Float64Array,
  at: number,
  sign: number,
): void {
  give(into, unknown[end] as number, sign * (forces[at] as number));
  give(into, unknown[end + 1] as number, sign * (forces[at + 1] as number));
  give(into, unknown[end + 2] as number, -sign * (forces[at + 2] as number));
}

function addBar(
  { unknown, cos, sin }: Bars,
  bar: number,
  response: Float64Array,
  at: number,
  into: Float64Array,
): void {
  const [alongX, alongZ] = [cos[bar] as number, sin[bar] as number];
  for (const [end, sign] of [
    [0, 1],
    [3, -1],
  ] as const) {
    const [N, V] = [response[at + end] as number, response[at + end + 1] as number];
    const first = 6 * bar + end;
    give(into, unknown[first] as number, sign * (N * alongX + V * alongZ));
    give(into, unknown[first + 1] as number, sign * (N * alongZ - V * alongX));
    give(into, unknown[first + 2] as number, sign * (response[at + end + 2] as number));
  }
}

/** The greatest force left over at a joint besides the feet, couples over the developed length. */
export function greatestLeftOver({ free, lever }: Unknowns, left: Float64Array): number {
  let greatest = 0;
  for (let i = 0; i < free; i += 1) {
    greatest = Math.max(greatest, Math.abs(left[i] as number) / (lever[i] as number));
  }
  return greatest;
}
