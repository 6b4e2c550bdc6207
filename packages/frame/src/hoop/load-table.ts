import { barEnds } from "./bars.ts";
import { breakAt } from "./breaks.ts";
import type { Hoop, HoopLoad } from "./hoop.ts";
import type { Intervals } from "./intervals.ts";
import { stepSize } from "./step.ts";
import type { Unknowns } from "./unknowns.ts";

/** What each unit load does, in columns. */
export interface LoadTable {
  readonly count: number;
  /** Normal load, weight and push of each interval, N/m, load by load. */
  readonly normal: Float64Array;
  readonly weight: Float64Array;
  readonly push: Float64Array;
  /** Whether the bars weigh (1) or not (0). */
  readonly barWeight: Float64Array;
  /** Force in x and z and couple of a point load, three for each load. */
  readonly point: Float64Array;
  /** Interval at whose start it acts, or -1; and the joint on the hoop where it acts, or -1. */
  readonly pointInterval: Int32Array;
  readonly pointNode: Int32Array;
  /** Resultant in x and z and couple about the origin, three for each load. */
  readonly resultant: Float64Array;
}

export function loadTable(
  hoop: Hoop,
  loads: readonly HoopLoad[],
  intervals: Intervals,
  { nodeBreak }: Unknowns,
): LoadTable {
  const count = loads.length;
  const table: LoadTable = {
    count,
    normal: new Float64Array(count * intervals.count),
    weight: new Float64Array(count * intervals.count),
    push: new Float64Array(count * intervals.count),
    barWeight: new Float64Array(count),
    point: new Float64Array(3 * count),
    pointInterval: new Int32Array(count).fill(-1),
    pointNode: new Int32Array(count).fill(-1),
    resultant: new Float64Array(3 * count),
  };
  for (const [load, one] of loads.entries()) {
    const row = load * intervals.count;
    if (one.kind === "normal") {
      const [from, to] = [breakAt(intervals.start, one.from), breakAt(intervals.start, one.to)];
      table.normal.fill(1, row + from, row + to);
      addNormal(table, load, intervals, from, to);
    } else if (one.kind === "weight") {
      table.weight.fill(1, row, row + intervals.count);
      addWeight(table, load, intervals);
    } else if (one.kind === "push") {
      table.push.fill(1, row, row + intervals.count);
      addPush(table, load, intervals);
    } else if (one.kind === "bar-weight") {
      table.barWeight[load] = 1;
      addBars(table, load, hoop, intervals);
    } else {
      const at = breakAt(intervals.start, one.s);
      const node = nodeBreak.indexOf(at);
      table.pointNode[load] = node;
      if (node < 0) table.pointInterval[load] = at;
      table.point.set([one.x, one.z, one.couple], 3 * load);
      const [x, z] = [intervals.x[at] as number, intervals.z[at] as number];
      addResultant(table, load, one.x, one.z, one.couple + x * one.z - z * one.x);
    }
  }
  return table;
}

/** Only the end points count: force (d_z, -d_x), moment -(|OB|^2 - |OA|^2)/2. */
function addNormal(
  table: LoadTable,
  load: number,
  { x, z }: Intervals,
  a: number,
  b: number,
): void {
  const [ax, az, bx, bz] = [x[a], z[a], x[b], z[b]] as [number, number, number, number];
  const moment = -(bx * bx + bz * bz - ax * ax - az * az) / 2;
  addResultant(table, load, bz - az, -(bx - ax), moment);
}

function addWeight(table: LoadTable, load: number, intervals: Intervals): void {
  for (let i = 0; i < intervals.count; i += 1) {
    const length = intervals.length[i] as number;
    const [dx, lag] = [intervals.steps[stepSize * i], intervals.steps[stepSize * i + 4]];
    const lever = length * ((intervals.x[i] as number) + (dx as number)) - (lag as number);
    addResultant(table, load, 0, -length, -lever);
  }
}

function addPush(table: LoadTable, load: number, intervals: Intervals): void {
  for (let i = 0; i < intervals.count; i += 1) {
    const length = intervals.length[i] as number;
    const [dz, lag] = [intervals.steps[stepSize * i + 1], intervals.steps[stepSize * i + 6]];
    const lever = length * ((intervals.z[i] as number) + (dz as number)) - (lag as number);
    addResultant(table, load, length, 0, -lever);
  }
}

function addBars(table: LoadTable, load: number, hoop: Hoop, intervals: Intervals): void {
  for (const bar of hoop.bars) {
    const [a, b] = barEnds(hoop, bar, intervals);
    const whole = bar.weight * Math.hypot(b.x - a.x, b.z - a.z);
    addResultant(table, load, 0, -whole, (-whole * (a.x + b.x)) / 2);
  }
}

function addResultant(table: LoadTable, load: number, x: number, z: number, couple: number): void {
  const { resultant } = table;
  const at = 3 * load;
  resultant[at] = (resultant[at] as number) + x;
  resultant[at + 1] = (resultant[at + 1] as number) + z;
  resultant[at + 2] = (resultant[at + 2] as number) + couple;
}
