import { flexibility, flexibilitySize } from "./flexibility.ts";
import type { MemberSection } from "./hoop.ts";
import type { HoopLine } from "./hoop-line.ts";
import { step, stepSize } from "./step.ts";

/** The smooth parts of a hoop between its breaks, in columns. */
export interface Intervals {
  readonly count: number;
  /** Places and points of the breaks: `count` + 1 numbers each. */
  readonly start: Float64Array;
  readonly x: Float64Array;
  readonly z: Float64Array;
  readonly length: Float64Array;
  readonly curvature: Float64Array;
  /** Direction at the start of each. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  /** What `step` writes, for the whole of each. */
  readonly steps: Float64Array;
  /** What `flexibility` writes, for the whole of each. */
  readonly flexibility: Float64Array;
}

/** Measures the intervals between breaks; every end of a piece is a break. */
export function hoopIntervals(
  line: HoopLine,
  section: MemberSection,
  places: Float64Array,
): Intervals {
  const count = places.length - 1;
  const column = (): Float64Array => new Float64Array(count);
  const intervals: Intervals = {
    count,
    start: places,
    x: new Float64Array(count + 1),
    z: new Float64Array(count + 1),
    length: column(),
    curvature: column(),
    cos: column(),
    sin: column(),
    steps: new Float64Array(stepSize * count),
    flexibility: new Float64Array(flexibilitySize * count),
  };
  const way = new Float64Array(stepSize);
  let piece = 0;
  for (let i = 0; i < count; i += 1) {
    const from = places[i] as number;
    while ((line.start[piece + 1] as number) <= from) piece += 1;
    const curvature = line.curvature[piece] as number;
    const beyond = from - (line.start[piece] as number);
    const angle = line.heading[piece] as number;
    step(curvature, Math.cos(angle), Math.sin(angle), beyond, way);
    intervals.x[i] = (line.x[piece] as number) + (way[0] as number);
    intervals.z[i] = (line.z[piece] as number) + (way[1] as number);
    intervals.curvature[i] = curvature;
    intervals.length[i] = (places[i + 1] as number) - from;
    intervals.cos[i] = way[2] as number;
    intervals.sin[i] = way[3] as number;
    measure(intervals, i, section, way);
  }
  intervals.x[count] = line.x[line.count] as number;
  intervals.z[count] = line.z[line.count] as number;
  return intervals;
}

function measure(intervals: Intervals, i: number, section: MemberSection, way: Float64Array): void {
  const length = intervals.length[i] as number;
  const curvature = intervals.curvature[i] as number;
  const [cos, sin] = [intervals.cos[i] as number, intervals.sin[i] as number];
  step(curvature, cos, sin, length, way);
  intervals.steps.set(way, stepSize * i);
  flexibility(curvature, cos, sin, length, section, intervals.flexibility, flexibilitySize * i);
}
