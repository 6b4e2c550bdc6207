import { forcesAfter } from "./along-hoop.ts";
import type { HoopFrame } from "./hoop-frame.ts";
import type { Intervals } from "./intervals.ts";
import { intervalWidth } from "./response.ts";
import { step, stepSize } from "./step.ts";
import { mostRoots, swingingRoots } from "./swinging-roots.ts";

/** Where each extreme stands in what `hoopExtremes` writes; its place (s, m) follows it. */
export const extremeAt = {
  axialMost: 0,
  axialLeast: 2,
  shearMost: 4,
  shearLeast: 6,
  momentMost: 8,
  momentLeast: 10,
} as const;

/**
 * The most and the least that N, V and M come to anywhere in the hoop, and where: at the ends of the
 * smooth parts from both sides, and within them where the slope of each passes zero, found exactly.
 *
 * @param into twelve numbers, see `extremeAt`
 */
export function hoopExtremes(frame: HoopFrame, response: Float64Array, into: Float64Array): void {
  const { intervals, statesAt } = frame;
  const forces = new Float64Array(3);
  const way = new Float64Array(stepSize);
  const roots = new Float64Array(mostRoots);
  for (let i = 0; i < 12; i += 2) into[i] = i % 4 === 0 ? -Infinity : Infinity;
  for (let i = 0; i < intervals.count; i += 1) {
    const state = statesAt + intervalWidth * i;
    const start = intervals.start[i] as number;
    const length = intervals.length[i] as number;
    startForces(intervals, i, response, state, forces);
    for (let force = 0; force < 3; force += 1) consider(forces, force, start, into);
    forcesAfter(response, state, length, intervals.steps, stepSize * i, forces, 0);
    for (let force = 0; force < 3; force += 1) consider(forces, force, start + length, into);
    const curvature = intervals.curvature[i] as number;
    for (let force = 0; force < 3; force += 1) {
      const count = levels(intervals, i, response, state, force, roots);
      for (let root = 0; root < count; root += 1) {
        const beyond = roots[root] as number;
        step(curvature, intervals.cos[i] as number, intervals.sin[i] as number, beyond, way);
        forcesAfter(response, state, beyond, way, 0, forces, 0);
        consider(forces, force, start + beyond, into);
      }
    }
  }
}

function startForces(
  { cos, sin }: Intervals,
  i: number,
  response: Float64Array,
  state: number,
  into: Float64Array,
): void {
  const [x, z] = [response[state + 3] as number, response[state + 4] as number];
  const [alongX, alongZ] = [cos[i] as number, sin[i] as number];
  into[0] = -(x * alongX + z * alongZ);
  into[1] = z * alongX - x * alongZ;
  into[2] = response[state + 5] as number;
}

function consider(forces: Float64Array, force: number, s: number, into: Float64Array): void {
  const value = forces[force] as number;
  const most = 4 * force;
  if (value > (into[most] as number)) {
    into[most] = value;
    into[most + 1] = s;
  }
  if (value < (into[most + 2] as number)) {
    into[most + 2] = value;
    into[most + 3] = s;
  }
}

/** Ways beyond the start of a smooth part at which N (0), V (1) or M (2) has no slope. */
function levels(
  { curvature: curvatures, length: lengths, cos: cosines, sin: sines }: Intervals,
  i: number,
  response: Float64Array,
  state: number,
  force: number,
  roots: Float64Array,
): number {
  const curvature = curvatures[i] as number;
  const length = lengths[i] as number;
  const [cos, sin] = [cosines[i] as number, sines[i] as number];
  const [x, z] = [response[state + 3] as number, response[state + 4] as number];
  const [q, w] = [response[state + 6] as number, response[state + 7] as number];
  const p = response[state + 8] as number;
  const shear = z * cos - x * sin;
  if (curvature === 0) {
    const way = shear / (q + w * cos + p * sin);
    roots[0] = way;
    return force === 2 && way > 0 && way < length ? 1 : 0;
  }
  const radius = 1 / curvature;
  const across = radius * (w * cos + p * sin);
  const along = radius * (w * sin - p * cos);
  const push = x * cos + z * sin - q * radius;
  // With h the heading: M' = V, R N' = V + R (w sin h - p cos h), R V' = -q R - R (w cos h + p sin h) - N.
  let a = shear;
  let c = push;
  if (force === 0) {
    a += along;
    c -= across;
  } else if (force === 1) {
    a = push - across;
    c = -shear - along;
  }
  const b = force === 1 ? -along : -across;
  const d = force === 1 ? across : -along;
  const count = swingingRoots(a, b, c, d, length * curvature, roots);
  for (let root = 0; root < count; root += 1) roots[root] = (roots[root] as number) * radius;
  return count;
}
