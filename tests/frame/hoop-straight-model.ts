import {
  type BarJoint,
  type FeetSupport,
  type Hoop,
  type HoopBar,
  type HoopLoad,
  pointOnLine,
} from "@hoopstay/frame";
import { EnvelopeMatrix } from "./hoop-envelope-matrix.ts";
import { pushIn, type StraightElement, stiffnessIn } from "./hoop-straight-element.ts";

/** What the model of straight elements finds. */
export interface StraightModel {
  /** Ground on the feet: x, z, couple; left, right. */
  readonly feet: readonly number[];
  /** N, V, M at the start of each bar and N, V, M at its end. */
  readonly bars: readonly number[];
  /** x, z and turn at each of the given places; after a hinge, the turn of the part beyond. */
  readonly shape: readonly number[];
  /** Bending moment at each of these places. */
  readonly moments: readonly number[];
}

/**
 * A hoop cut into straight elements, every smooth part into `parts`, and solved by the common
 * stiffness method: a second way, with an error that falls with the square of their length. A
 * pinned end of a bar has a turn of its own. It shares nothing with the solver but the points of the
 * centre line.
 *
 * @param breaks places that must be joints of the model, rising, the feet with them
 */
export function straightModel(
  hoop: Hoop,
  breaks: readonly number[],
  support: FeetSupport,
  loads: readonly (readonly [HoopLoad, number])[],
  parts: number,
): StraightModel {
  const { line, section } = hoop;
  const near = 1e-7 * line.length;
  const places = breaks.flatMap((from, i) => {
    const to = breaks[i + 1];
    if (to === undefined) return [from];
    return Array.from({ length: parts }, (_, part) => from + ((to - from) * part) / parts);
  });
  const nodes = places.map((s) => pointOnLine(line, s));
  let size = 0;
  const next = (): number => size++;
  const nodeUnknowns = places.map((s) => {
    const own = [next(), next(), next()];
    const hinged = hoop.hinges.some((hinge) => Math.abs(hinge - s) < near);
    return { move: own, before: own[2] as number, after: hinged ? next() : (own[2] as number) };
  });
  const joints = hoop.joints.map(() => [next(), next()]);
  const jointTurns = new Map<number, number>();
  const turnOf = (joint: number): number => {
    const known = jointTurns.get(joint) ?? next();
    jointTurns.set(joint, known);
    return known;
  };
  const nodeAt = (s: number): number =>
    breaks.findIndex((place) => Math.abs(place - s) < near) * parts;
  const point = (at: BarJoint) => ("s" in at ? nodes[nodeAt(at.s)] : hoop.joints[at.joint]);
  const endOf = (at: BarJoint, rigid: boolean): number[] => {
    if ("joint" in at) {
      const move = joints[at.joint] as number[];
      return [...move, rigid ? turnOf(at.joint) : next()];
    }
    const { move, before } = nodeUnknowns[nodeAt(at.s)] as (typeof nodeUnknowns)[number];
    return [...move.slice(0, 2), rigid ? before : next()];
  };

  const factorOf = (kind: HoopLoad["kind"]): number =>
    loads.reduce((sum, [load, factor]) => (load.kind === kind ? sum + factor : sum), 0);
  const weight = factorOf("weight");
  const push = factorOf("push");
  const barWeight = factorOf("bar-weight");

  const onHoop = nodes.slice(1).map((to, i): StraightElement => {
    const from = nodes[i] as (typeof nodes)[number];
    const [low, high] = [places[i] as number, places[i + 1] as number];
    const middle = (low + high) / 2;
    const q = loads.reduce(
      (sum, [load, factor]) =>
        load.kind === "normal" && load.from < middle && middle < load.to ? sum + factor : sum,
      0,
    );
    const length = Math.hypot(to.x - from.x, to.z - from.z);
    const [cos, sin] = [(to.x - from.x) / length, (to.z - from.z) / length];
    const [a, b] = [nodeUnknowns[i], nodeUnknowns[i + 1]];
    if (!a || !b) throw new Error("no node");
    return {
      unknown: [...a.move.slice(0, 2), a.after, ...b.move.slice(0, 2), b.before],
      length,
      cos,
      sin,
      EA: section.E * section.A,
      EI: section.E * section.I,
      // The true length of the arc, not that of its chord, for weight and push.
      px: q * sin + (push * (high - low)) / length,
      pz: -q * cos - (weight * (high - low)) / length,
    };
  });
  const bars = hoop.bars.map((bar): StraightElement => {
    const [from, to] = [point(bar.from), point(bar.to)];
    if (!from || !to) throw new Error("no joint");
    const length = Math.hypot(to.x - from.x, to.z - from.z);
    return {
      unknown: [
        ...endOf(bar.from, bar.fromEnd === "rigid"),
        ...endOf(bar.to, bar.toEnd === "rigid"),
      ],
      length,
      cos: (to.x - from.x) / length,
      sin: (to.z - from.z) / length,
      EA: bar.section.E * bar.section.A,
      EI: bar.section.E * stiffnessOf(bar),
      px: 0,
      pz: -barWeight * bar.weight,
    };
  });

  const matrix = new EnvelopeMatrix(
    size,
    [...onHoop, ...bars].map(({ unknown }) => unknown),
  );
  const right = new Float64Array(size);
  for (const element of [...onHoop, ...bars]) {
    const stiffness = stiffnessIn(element);
    const pushed = pushIn(element);
    for (const [i, row] of element.unknown.entries()) {
      right[row] = (right[row] as number) + (pushed[i] as number);
      for (const [j, column] of element.unknown.entries()) {
        matrix.add(row, column, (stiffness[i] as number[])[j] as number);
      }
    }
  }
  const pointForces = new Float64Array(size);
  for (const [load, factor] of loads) {
    if (load.kind !== "point") continue;
    const { move, after } = nodeUnknowns[nodeAt(load.s)] as (typeof nodeUnknowns)[number];
    for (const [at, value] of [
      [move[0], load.x],
      [move[1], load.z],
      [after, load.couple],
    ] as [number, number][]) {
      pointForces[at] = (pointForces[at] as number) + factor * value;
    }
  }
  for (let i = 0; i < size; i += 1) right[i] = (right[i] as number) + (pointForces[i] as number);
  const [first, last] = [nodeUnknowns[0], nodeUnknowns[nodes.length - 1]];
  if (!first || !last) throw new Error("no foot");
  const footUnknowns = [...first.move, ...last.move];
  for (const [i, unknown] of footUnknowns.entries()) {
    const spring = support[i] as number;
    if (spring === Number.POSITIVE_INFINITY) matrix.hold(unknown, right);
    else matrix.add(unknown, unknown, spring);
  }
  const displaced = matrix.solve(right);

  const forcesOf = (element: StraightElement): number[] => {
    const stiffness = stiffnessIn(element);
    const pushed = pushIn(element);
    const own = element.unknown.map((at) => displaced[at] as number);
    return stiffness.map((row, i) =>
      row.reduce((sum, k, j) => sum + k * (own[j] as number), 0 - (pushed[i] as number)),
    );
  };
  const hoopForces = onHoop.map(forcesOf);
  const at = breaks.map((_, i) => i * parts);
  const feet = footUnknowns.map((unknown) => 0 - (pointForces[unknown] as number));
  for (const [index, element] of [...onHoop, ...bars].entries()) {
    const own = hoopForces[index] ?? forcesOf(element);
    for (const [i, unknown] of element.unknown.entries()) {
      const foot = footUnknowns.indexOf(unknown);
      if (foot >= 0) feet[foot] = (feet[foot] as number) + (own[i] as number);
    }
  }
  return {
    feet,
    bars: bars.flatMap((bar) => {
      const [ax = 0, az = 0, ac = 0, bx = 0, bz = 0, bc = 0] = forcesOf(bar);
      const { cos, sin } = bar;
      return [
        -(ax * cos + az * sin),
        az * cos - ax * sin,
        -ac,
        bx * cos + bz * sin,
        bx * sin - bz * cos,
        bc,
      ];
    }),
    shape: at.flatMap((node) => {
      const { move, after } = nodeUnknowns[node] as (typeof nodeUnknowns)[number];
      return [...move.slice(0, 2), after].map((unknown) => displaced[unknown] as number);
    }),
    moments: at.map((node) => {
      const beyond = hoopForces[node];
      if (beyond) return 0 - (beyond[2] as number);
      return (hoopForces[node - 1] as number[])[5] as number;
    }),
  };
}

/** A pinned bar bends under its own weight only: it needs some stiffness for its free turns. */
const stiffnessOf = ({ section }: HoopBar): number => section.I || 1e-9;

/** Two models, the second with elements half as long, carried on to none: fourth order. */
export function carriedOn(coarse: StraightModel, fine: StraightModel): StraightModel {
  const on = (key: keyof StraightModel): number[] =>
    fine[key].map((value, i) => (4 * value - (coarse[key][i] as number)) / 3);
  return { feet: on("feet"), bars: on("bars"), shape: on("shape"), moments: on("moments") };
}
