import { hoopForcesAt, hoopShapeAt, pointOnLine, tangentOnLine } from "@hoopstay/frame";
import type { LoadedHoop } from "./hoop-arbitrary.ts";
import { gaussPoints, type SolvedHoop } from "./hoop-simple.ts";

const points = gaussPoints(10);

/** Sum of what `value` gives along the hoop, between its breaks. */
export function alongHoop({ frame }: SolvedHoop, value: (s: number) => number): number {
  const { breaks } = frame;
  let sum = 0;
  for (let i = 0; i + 1 < breaks.length; i += 1) {
    const [from, to] = [breaks[i] as number, breaks[i + 1] as number];
    const half = (to - from) / 2;
    for (const { point, weight } of points) {
      sum += weight * half * value((from + to) / 2 + half * point);
    }
  }
  return sum;
}

/** Energy of bending and stretching in hoop, bars and springs, J. */
export function strainEnergy(solved: SolvedHoop, { feet }: LoadedHoop): number {
  const { frame, response } = solved;
  const { section, bars } = frame.hoop;
  const [EI, EA] = [section.E * section.I, section.E * section.A];
  let energy = alongHoop(solved, (s) => {
    const { N, M } = hoopForcesAt(frame, response, s);
    return (M * M) / (2 * EI) + (N * N) / (2 * EA);
  });
  for (const [i, bar] of bars.entries()) {
    const at = frame.barAt(i);
    const [N, V, M, N1] = [0, 1, 2, 3].map((k) => response[at + k] as number) as [
      number,
      number,
      number,
      number,
    ];
    const [V1, M1] = [response[at + 4] as number, response[at + 5] as number];
    const { length } = barOf(solved, i);
    for (const { point, weight } of points) {
      const t = (1 + point) / 2;
      const axial = N + (N1 - N) * t;
      // Cubic through moments and shears of both ends; a uniform load makes it a parabola.
      const moment = M + V * length * t + ((V1 - V) * length * t * t) / 2;
      const dl = (weight * length) / 2;
      energy += dl * ((axial * axial) / (2 * bar.section.E * bar.section.A));
      if (bar.section.I > 0)
        energy += dl * ((moment * moment) / (2 * bar.section.E * bar.section.I));
    }
    if (Math.abs(M + ((V + V1) * length) / 2 - M1) > 1e-9 * (Math.abs(M1) + Math.abs(V) * length)) {
      throw new Error("a bar out of balance");
    }
  }
  for (const [way, spring] of feet.entries()) {
    const moved = response[6 + way] as number;
    if (spring !== Number.POSITIVE_INFINITY) energy += (spring * moved * moved) / 2;
  }
  return energy;
}

/** Length of a bar, and its middle. */
export function barOf({ frame }: SolvedHoop, bar: number) {
  const [a, b] = endsOf(frame, bar);
  const length = Math.hypot(b.x - a.x, b.z - a.z);
  return { length, middle: { x: (a.x + b.x) / 2, z: (a.z + b.z) / 2 } };
}

/** Work of loads (those of `loads`) on the displacements of a solved hoop, J. */
export function workOf(loads: LoadedHoop["loads"], solved: SolvedHoop): number {
  const { frame, response } = solved;
  const { line, bars } = frame.hoop;
  let work = 0;
  for (const [load, factor] of loads) {
    if (load.kind === "normal") {
      work += alongHoop(solved, (s) => {
        if (s < load.from || s > load.to) return 0;
        const [way, moved] = [tangentOnLine(line, s), hoopShapeAt(frame, response, s)];
        return factor * (way.z * moved.x - way.x * moved.z);
      });
    } else if (load.kind === "weight") {
      work -= factor * alongHoop(solved, (s) => hoopShapeAt(frame, response, s).z);
    } else if (load.kind === "push") {
      work += factor * alongHoop(solved, (s) => hoopShapeAt(frame, response, s).x);
    } else if (load.kind === "point") {
      const moved = hoopShapeAt(frame, response, load.s);
      work += factor * (load.x * moved.x + load.z * moved.z + load.couple * moved.turn);
    } else if (bars.length > 0 && factor !== 0) {
      throw new Error("the shape of bars between their joints is not given");
    }
  }
  return work;
}

function endsOf(frame: SolvedHoop["frame"], bar: number) {
  const { hoop } = frame;
  const one = hoop.bars[bar];
  if (!one) throw new Error("no such bar");
  return [one.from, one.to].map((at) =>
    "s" in at ? pointOnLine(hoop.line, at.s) : (hoop.joints[at.joint] as { x: number; z: number }),
  ) as [{ x: number; z: number }, { x: number; z: number }];
}
