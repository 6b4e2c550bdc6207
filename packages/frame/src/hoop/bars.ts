import { breakAt } from "./breaks.ts";
import type { BarJoint, Hoop, HoopBar } from "./hoop.ts";
import type { PlanePoint } from "./hoop-piece.ts";
import type { Intervals } from "./intervals.ts";
import type { Unknowns } from "./unknowns.ts";

/** The bars of a hoop, in columns. */
export interface Bars {
  readonly count: number;
  readonly length: Float64Array;
  /** Direction from `from` to `to`. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly weight: Float64Array;
  /** E A / length. */
  readonly stretching: Float64Array;
  /** Couple on each end for its own turn and the other's: near, far, three for each bar. */
  readonly bending: Float64Array;
  /** Couples on the two ends for a unit load across, up to the left of the way, ends held. */
  readonly held: Float64Array;
  /** Unknowns: movements and turn at `from`, then at `to`, six for each bar; -1 where none turns. */
  readonly unknown: Int32Array;
}

export function hoopBars(hoop: Hoop, intervals: Intervals, unknowns: Unknowns): Bars {
  const count = hoop.bars.length;
  const column = (width: number): Float64Array => new Float64Array(width * count);
  const bars: Bars = {
    count,
    length: column(1),
    cos: column(1),
    sin: column(1),
    weight: column(1),
    stretching: column(1),
    bending: column(3),
    held: column(2),
    unknown: new Int32Array(6 * count),
  };
  for (const [i, bar] of hoop.bars.entries()) {
    const [a, b] = barEnds(hoop, bar, intervals);
    const length = Math.hypot(b.x - a.x, b.z - a.z);
    bars.length[i] = length;
    bars.cos[i] = (b.x - a.x) / length;
    bars.sin[i] = (b.z - a.z) / length;
    bars.weight[i] = bar.weight;
    bars.stretching[i] = (bar.section.E * bar.section.A) / length;
    bend(bars, i, bar, length);
    bars.unknown.set(unknownsAt(bar.from, intervals.start, unknowns), 6 * i);
    bars.unknown.set(unknownsAt(bar.to, intervals.start, unknowns), 6 * i + 3);
  }
  return bars;
}

/** Points where a bar starts and ends: those of its joints, which may be a hair beside its places. */
export function barEnds(
  { joints }: Hoop,
  { from, to }: HoopBar,
  { start, x, z }: Intervals,
): [PlanePoint, PlanePoint] {
  const point = (at: BarJoint): PlanePoint => {
    if ("joint" in at) return joints[at.joint] as PlanePoint;
    const joint = breakAt(start, at.s);
    return { x: x[joint] as number, z: z[joint] as number };
  };
  return [point(from), point(to)];
}

/** Slope-deflection of a straight member, with none, one or two ends pinned. */
function bend(bars: Bars, i: number, { fromEnd, toEnd, section }: HoopBar, length: number): void {
  const unit = (section.E * section.I) / length;
  const load = (length * length) / 24;
  const from = fromEnd === "rigid";
  const to = toEnd === "rigid";
  if (from && to) {
    bars.bending.set([4 * unit, 2 * unit, 4 * unit], 3 * i);
    bars.held.set([-2 * load, 2 * load], 2 * i);
  } else if (from || to) {
    bars.bending[3 * i + (from ? 0 : 2)] = 3 * unit;
    bars.held[2 * i + (from ? 0 : 1)] = from ? -3 * load : 3 * load;
  }
}

function unknownsAt(
  at: BarJoint,
  places: Float64Array,
  { nodeBreak, nodeMove, turnBefore, jointMove, jointTurn }: Unknowns,
): number[] {
  const node = "s" in at ? nodeBreak.indexOf(breakAt(places, at.s)) : at.joint;
  const [moves, turns] = "s" in at ? [nodeMove, turnBefore] : [jointMove, jointTurn];
  const move = moves[node] as number;
  return [move, move + 1, turns[node] as number];
}
