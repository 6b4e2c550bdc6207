import { elementUnknowns } from "./assemble.ts";
import type { Bars } from "./bars.ts";
import { addPoint, carry, type Elements } from "./elements.ts";
import { flexibilitySize } from "./flexibility.ts";
import type { Intervals } from "./intervals.ts";
import type { LoadTable } from "./load-table.ts";
import { barWidth, intervalWidth, jointWidth, type ResponseLayout } from "./response.ts";
import { stepSize } from "./step.ts";
import type { Unknowns } from "./unknowns.ts";

/** All that is prepared of a frame before it is solved. */
export interface FrameParts {
  readonly intervals: Intervals;
  readonly unknowns: Unknowns;
  readonly loads: LoadTable;
  readonly elements: Elements;
  readonly bars: Bars;
  readonly layout: ResponseLayout;
  /** See `beamStiffness`, N/m: what gaps are measured by. */
  readonly beam: number;
  /** Room for the unknowns, the forces and the displacements of one member at a time. */
  readonly room: { unknown: Int32Array; state: Float64Array; place: Float64Array };
}

/** No load: the response to a displacement of a foot. */
export const noLoad = -1;

/**
 * Writes the state of every bar, free joint and interval for known displacements.
 *
 * @param load the unit load that acts, or `noLoad`
 * @returns how far the hoop, followed from joint to joint, ends beside its joints, as a part of what
 *   its forces would bend a beam and of its displacement: rounding only
 */
export function recover(
  parts: FrameParts,
  load: number,
  displaced: Float64Array,
  into: Float64Array,
): number {
  recoverBars(parts, load, displaced, into);
  const { jointMove, jointTurn } = parts.unknowns;
  for (let joint = 0; joint < jointMove.length; joint += 1) {
    const out = parts.layout.joints + jointWidth * joint;
    const [move, turn] = [jointMove[joint] as number, jointTurn[joint] as number];
    into[out] = displaced[move] as number;
    into[out + 1] = displaced[move + 1] as number;
    into[out + 2] = turn < 0 ? 0 : (displaced[turn] as number);
  }
  return recoverHoop(parts, load, displaced, into);
}

function recoverHoop(
  parts: FrameParts,
  load: number,
  displaced: Float64Array,
  into: Float64Array,
): number {
  const { intervals, unknowns, loads, elements, layout } = parts;
  const { unknown, state, place } = parts.room;
  const reach = intervals.start[intervals.count] as number;
  let [off, moved, force] = [0, 0, 0];
  for (let element = 0; element < elements.count; element += 1) {
    elementUnknowns(unknowns, element, unknown);
    for (let i = 0; i < 3; i += 1) place[i] = displaced[unknown[i] as number] as number;
    startForces(elements, element, load, displaced, unknown, state);
    const last = elements.first[element + 1] as number;
    for (let i = elements.first[element] as number; i < last; i += 1) {
      if (load >= 0) addPoint(loads, load, i, state);
      const row = load * intervals.count + i;
      const normal = load < 0 ? 0 : (loads.normal[row] as number);
      const weight = load < 0 ? 0 : (loads.weight[row] as number);
      const push = load < 0 ? 0 : (loads.push[row] as number);
      const out = layout.intervals + intervalWidth * i;
      for (let k = 0; k < 3; k += 1) {
        into[out + k] = place[k] as number;
        into[out + 3 + k] = state[k] as number;
      }
      into[out + 6] = normal;
      into[out + 7] = weight;
      into[out + 8] = push;
      const dx = intervals.steps[stepSize * i] as number;
      const dz = intervals.steps[stepSize * i + 1] as number;
      moveOn(into, out, dx, dz, intervals.flexibility, flexibilitySize * i, place);
      carry(intervals, i, normal, weight, push, state);
      moved = Math.max(moved, size(place, reach));
      force = Math.max(force, size(state, 1 / reach));
    }
    for (let i = 0; i < 3; i += 1) {
      place[i] = (place[i] as number) - (displaced[unknown[3 + i] as number] as number);
    }
    off = Math.max(off, size(place, reach));
  }
  return off === 0 ? 0 : off / (moved + force / parts.beam);
}

/** The greatest of two numbers and a third times a length. */
const size = (three: Float64Array, length: number): number =>
  Math.max(
    Math.abs(three[0] as number),
    Math.abs(three[1] as number),
    Math.abs(three[2] as number) * length,
  );

/** (F_x, F_z, M) where an element starts. */
function startForces(
  elements: Elements,
  element: number,
  load: number,
  displaced: Float64Array,
  unknown: Int32Array,
  into: Float64Array,
): void {
  const { stiffness, held, chord, count } = elements;
  const turn = displaced[unknown[5] as number] as number;
  const x = rise(displaced, unknown, 0) - turn * (chord[2 * element + 1] as number);
  const z = rise(displaced, unknown, 1) + turn * (chord[2 * element] as number);
  const apart = rise(displaced, unknown, 2);
  for (let row = 0; row < 3; row += 1) {
    const at = 9 * element + 3 * row;
    const force =
      (stiffness[at] as number) * x +
      (stiffness[at + 1] as number) * z +
      (stiffness[at + 2] as number) * apart;
    const own = load < 0 ? 0 : (held[3 * (load * count + element) + row] as number);
    into[row] = row === 2 ? -(force + own) : force + own;
  }
}

/** How far the start is displaced beyond the end, in one of the three ways. */
const rise = (displaced: Float64Array, unknown: Int32Array, way: number): number =>
  (displaced[unknown[way] as number] as number) - (displaced[unknown[3 + way] as number] as number);

/**
 * Displacements and turn at the end of a smooth part, from the state where it starts.
 *
 * @param states a response; the state of the part's start stands at `state`
 * @param flexibility what `flexibility` wrote for the part, from `at` on
 */
export function moveOn(
  states: Float64Array,
  state: number,
  dx: number,
  dz: number,
  flexibility: Float64Array,
  at: number,
  into: Float64Array,
): void {
  const fx = states[state + 3] as number;
  const fz = states[state + 4] as number;
  const moment = states[state + 5] as number;
  const q = states[state + 6] as number;
  const w = states[state + 7] as number;
  const p = states[state + 8] as number;
  const xz = flexibility[at + 1] as number;
  const xm = flexibility[at + 3] as number;
  const zm = flexibility[at + 4] as number;
  const giveX =
    (flexibility[at] as number) * fx +
    xz * fz +
    xm * moment +
    (flexibility[at + 6] as number) * q +
    (flexibility[at + 9] as number) * w +
    (flexibility[at + 12] as number) * p;
  const giveZ =
    xz * fx +
    (flexibility[at + 2] as number) * fz +
    zm * moment +
    (flexibility[at + 7] as number) * q +
    (flexibility[at + 10] as number) * w +
    (flexibility[at + 13] as number) * p;
  const turn =
    (states[state + 2] as number) +
    xm * fx +
    zm * fz +
    (flexibility[at + 5] as number) * moment +
    (flexibility[at + 8] as number) * q +
    (flexibility[at + 11] as number) * w +
    (flexibility[at + 14] as number) * p;
  into[0] = (states[state] as number) - giveX - turn * dz;
  into[1] = (states[state + 1] as number) - giveZ + turn * dx;
  into[2] = turn;
}

function recoverBars(
  { bars, loads, layout }: FrameParts,
  load: number,
  displaced: Float64Array,
  into: Float64Array,
): void {
  const weighs = load < 0 ? 0 : (loads.barWeight[load] as number);
  for (let bar = 0; bar < bars.count; bar += 1) {
    const out = layout.bars + barWidth * bar;
    const [cos, sin] = [bars.cos[bar] as number, bars.sin[bar] as number];
    const length = bars.length[bar] as number;
    const weight = weighs * (bars.weight[bar] as number);
    const across = -weight * cos;
    const [x, z] = [between(bars, bar, displaced, 0), between(bars, bar, displaced, 1)];
    const chordTurn = (cos * z - sin * x) / length;
    const from = turnAt(bars, bar, displaced, 2) - chordTurn;
    const to = turnAt(bars, bar, displaced, 5) - chordTurn;
    const near = bars.bending[3 * bar] as number;
    const both = bars.bending[3 * bar + 1] as number;
    const far = bars.bending[3 * bar + 2] as number;
    const axial = (bars.stretching[bar] as number) * (cos * x + sin * z);
    const lean = (weight * sin * length) / 2;
    const start = -(near * from + both * to + across * (bars.held[2 * bar] as number));
    const end = both * from + far * to + across * (bars.held[2 * bar + 1] as number);
    const shear = (end - start) / length;
    into[out] = axial - lean;
    into[out + 1] = shear - (across * length) / 2;
    into[out + 2] = start;
    into[out + 3] = axial + lean;
    into[out + 4] = shear + (across * length) / 2;
    into[out + 5] = end;
    into[out + 6] = weight;
  }
}

/** How much farther the end of a bar moves than its start, in x (0) or z (1). */
const between = ({ unknown }: Bars, bar: number, displaced: Float64Array, way: number): number =>
  (displaced[unknown[6 * bar + 3 + way] as number] as number) -
  (displaced[unknown[6 * bar + way] as number] as number);

/** Turn of a joint; a free one that no bar turns has none. A pinned end has no stiffness for it. */
function turnAt({ unknown }: Bars, bar: number, displaced: Float64Array, end: number): number {
  const at = unknown[6 * bar + end] as number;
  return at < 0 ? 0 : (displaced[at] as number);
}
