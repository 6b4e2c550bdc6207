import type { Bars } from "./bars.ts";
import type { Elements } from "./elements.ts";
import type { LoadTable } from "./load-table.ts";
import type { Unknowns } from "./unknowns.ts";

/** Stiffness of the whole frame, upper part, row by row; its last six rows are the feet. */
export function assembleStiffness(
  unknowns: Unknowns,
  elements: Elements,
  bars: Bars,
): Float64Array {
  const size = unknowns.free + 6;
  const matrix = new Float64Array(size * size);
  const local = new Float64Array(36);
  const at = new Int32Array(6);
  for (let element = 0; element < elements.count; element += 1) {
    elementUnknowns(unknowns, element, at);
    elementStiffness(elements, element, local);
    add(matrix, size, local, at);
  }
  for (let bar = 0; bar < bars.count; bar += 1) {
    at.set(bars.unknown.subarray(6 * bar, 6 * bar + 6));
    barStiffness(bars, bar, local);
    add(matrix, size, local, at);
  }
  return matrix;
}

/** Movements and turn at the start of an element, then at its end. */
export function elementUnknowns(
  { nodeMove, turnBefore, turnAfter }: Unknowns,
  element: number,
  into: Int32Array,
): void {
  const [from, to] = [nodeMove[element] as number, nodeMove[element + 1] as number];
  into[0] = from;
  into[1] = from + 1;
  into[2] = turnAfter[element] as number;
  into[3] = to;
  into[4] = to + 1;
  into[5] = turnBefore[element + 1] as number;
}

function add(matrix: Float64Array, size: number, local: Float64Array, at: Int32Array): void {
  for (let i = 0; i < 6; i += 1) {
    const row = at[i] as number;
    if (row < 0) continue;
    for (let j = 0; j < 6; j += 1) {
      const column = at[j] as number;
      if (column < row) continue;
      const entry = row * size + column;
      matrix[entry] = (matrix[entry] as number) + (local[6 * i + j] as number);
    }
  }
}

/**
 * With K on the start and T that brings a displacement of the end back to the start:
 * [[K, -K T], [-T^T K, T^T K T]].
 */
function elementStiffness(
  { stiffness, chord }: Elements,
  element: number,
  into: Float64Array,
): void {
  const [dx, dz] = [chord[2 * element] as number, chord[2 * element + 1] as number];
  const own = stiffness.subarray(9 * element, 9 * element + 9);
  for (let i = 0; i < 3; i += 1) {
    const [x, z] = [own[3 * i] as number, own[3 * i + 1] as number];
    const turn = (own[3 * i + 2] as number) + dz * x - dx * z;
    into.set([x, z, own[3 * i + 2] as number, -x, -z, -turn], 6 * i);
  }
  for (let j = 0; j < 6; j += 1) {
    const [x, z] = [into[j] as number, into[6 + j] as number];
    into[18 + j] = -x;
    into[24 + j] = -z;
    into[30 + j] = -((into[12 + j] as number) + dz * x - dx * z);
  }
}

/** Stretch and the two turns against the chord, each a row of six: B^T D B. */
function barStiffness(bars: Bars, bar: number, into: Float64Array): void {
  const [cos, sin] = [bars.cos[bar] as number, bars.sin[bar] as number];
  const length = bars.length[bar] as number;
  const stretching = bars.stretching[bar] as number;
  const near = bars.bending[3 * bar] as number;
  const across = bars.bending[3 * bar + 1] as number;
  const far = bars.bending[3 * bar + 2] as number;
  const [swayX, swayZ] = [-sin / length, cos / length];
  const stretch = [-cos, -sin, 0, cos, sin, 0];
  const from = [swayX, swayZ, 1, -swayX, -swayZ, 0];
  const to = [swayX, swayZ, 0, -swayX, -swayZ, 1];
  for (let i = 0; i < 6; i += 1) {
    const [e, a, b] = [stretch[i] as number, from[i] as number, to[i] as number];
    const [forceA, forceB] = [near * a + across * b, across * a + far * b];
    for (let j = 0; j < 6; j += 1) {
      into[6 * i + j] =
        stretching * e * (stretch[j] as number) +
        forceA * (from[j] as number) +
        forceB * (to[j] as number);
    }
  }
}

/** Adds a point load that acts at a joint of the hoop. */
export function givePoint(
  load: number,
  { point, pointNode }: LoadTable,
  { nodeMove, turnAfter }: Unknowns,
  into: Float64Array,
): void {
  const node = pointNode[load] as number;
  if (node < 0) return;
  const move = nodeMove[node] as number;
  give(into, move, point[3 * load] as number);
  give(into, move + 1, point[3 * load + 1] as number);
  give(into, turnAfter[node] as number, point[3 * load + 2] as number);
}

/** Adds a force or couple to the unknown it works on; a joint that nothing turns (-1) has none. */
export function give(into: Float64Array, at: number, value: number): void {
  if (at >= 0) into[at] = (into[at] as number) + value;
}
