import {
  type FeetSupport,
  type Hoop,
  HoopFrame,
  type HoopLine,
  type HoopLoad,
  hoopLine,
  type MemberSection,
  responsesOnFeet,
  superpose,
} from "@hoopstay/frame";

/** A circular arch of a half centre angle, its feet on z = 0; half a turn is a semicircle. */
export const segment = (radius: number, half: number): HoopLine =>
  hoopLine([
    {
      kind: "arc",
      centre: { x: 0, z: -radius * Math.cos(half) },
      radius,
      fromAngle: Math.PI / 2 + half,
      toAngle: Math.PI / 2 - half,
    },
  ]);

/** Two columns and a beam. */
export const portal = (height: number, span: number): HoopLine =>
  hoopLine([
    { kind: "straight", from: { x: 0, z: 0 }, to: { x: 0, z: height } },
    { kind: "straight", from: { x: 0, z: height }, to: { x: span, z: height } },
    { kind: "straight", from: { x: span, z: height }, to: { x: span, z: 0 } },
  ]);

/** A section with the ratio k = EI / (EA R^2). */
export function sectionOf(k: number, radius: number): MemberSection {
  const I = 2.16e-7;
  return { A: I / (k * radius * radius), I, E: 2e11 };
}

export const bareHoop = (line: HoopLine, section: MemberSection): Hoop => ({
  line,
  section,
  hinges: [],
  joints: [],
  bars: [],
});

export interface SolvedHoop {
  readonly frame: HoopFrame;
  readonly response: Float64Array;
}

/** A hoop on its feet under loads with their factors. */
export function solvedHoop(
  hoop: Hoop,
  feet: FeetSupport,
  loads: readonly (readonly [HoopLoad, number])[],
): SolvedHoop {
  const frame = new HoopFrame(
    hoop,
    loads.map(([load]) => load),
  );
  const response = new Float64Array(frame.size);
  const factors = loads.map(([, factor]) => factor);
  superpose(responsesOnFeet(frame, feet), frame.size, factors, response);
  return { frame, response };
}

export const downAt = (s: number): HoopLoad => ({ kind: "point", s, x: 0, z: -1, couple: 0 });

export const sidewaysAt = (s: number): HoopLoad => ({ kind: "point", s, x: 1, z: 0, couple: 0 });

export const normalOn = (from: number, to: number): HoopLoad => ({ kind: "normal", from, to });

/** Gauss and Legendre's points on -1 to 1 and their weights, found by Newton's method. */
export function gaussPoints(count: number): { point: number; weight: number }[] {
  return Array.from({ length: count }, (_, i) => {
    let point = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let tries = 0; tries < 40; tries += 1) {
      let [before, here] = [1, point];
      for (let n = 2; n <= count; n += 1) {
        [before, here] = [here, ((2 * n - 1) * point * here - (n - 1) * before) / n];
      }
      slope = (count * (point * here - before)) / (point * point - 1);
      point -= here / slope;
    }
    return { point, weight: 2 / ((1 - point * point) * slope * slope) };
  });
}

/**
 * A unit load per horizontal length on a circular arch as point loads: Gauss's sum over the angle,
 * exact where what it does is smooth in the load's place, so split at the given places.
 */
export function horizontalLoad(line: HoopLine, splits: readonly number[]): [HoopLoad, number][] {
  const places = [0, ...splits, line.length].sort((a, b) => a - b);
  const curvature = line.curvature[0] as number;
  return places.slice(1).flatMap((to, i) => {
    const from = places[i] as number;
    return gaussPoints(16).map(({ point, weight }): [HoopLoad, number] => {
      const s = from + ((to - from) * (1 + point)) / 2;
      const across = Math.cos((line.heading[0] as number) - curvature * s);
      return [downAt(s), (weight / 2) * (to - from) * across];
    });
  });
}
