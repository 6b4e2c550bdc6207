import type { MemberSection } from "./hoop.ts";
import { step, stepSize } from "./step.ts";

/** Numbers that `flexibility` writes. */
export const flexibilitySize = 15;

/**
 * Points and weights of Gauss and Legendre on 0 to 1, eight of them: roots of the Legendre
 * polynomial P_8 [derived]. For a turn of up to a right angle the rest,
 * L^17 8!^4 f^(16) / (17 16!^3), is below 3e-15 of f's size.
 */
const points = Float64Array.of(
  0.019855071751231884,
  0.10166676129318664,
  0.2372337950418355,
  0.4082826787521751,
  0.591717321247825,
  0.7627662049581645,
  0.8983332387068134,
  0.9801449282487681,
);
const weights = Float64Array.of(
  0.05061426814518813,
  0.11119051722668724,
  0.15685332293894363,
  0.181341891689181,
  0.181341891689181,
  0.15685332293894363,
  0.11119051722668724,
  0.05061426814518813,
);

/**
 * How a smooth part of the hoop gives. With S = (F_x, F_z, M) at its start, the sum of the forces up
 * to there and the bending moment, and with q, w and p on it, M = m . S + m_q q + m_w w + m_p p and
 * the axial force N = n . S + n_q q + n_w w + n_p p; written is, from `at` on:
 *
 * 0 to 5. integral of m m^T / (E I) + n n^T / (E A): xx, xz, zz, xm, zm, mm;
 * 6 to 8. integral of m m_q / (E I) + n n_q / (E A): x, z, m;
 * 9 to 11. the same with m_w and n_w;
 * 12 to 14. the same with m_p and n_p.
 *
 * Minus the first two of (matrix times S and loads) is how far its end moves off from where a rigid
 * turn about the start would bring it, pulled back to the start; the third is the turn itself.
 */
export function flexibility(
  curvature: number,
  cos: number,
  sin: number,
  length: number,
  { A, I, E }: MemberSection,
  into: Float64Array,
  at: number,
): void {
  const bending = E * I;
  const stretching = E * A;
  const way = new Float64Array(stepSize);
  into.fill(0, at, at + flexibilitySize);
  const add = (entry: number, value: number): void => {
    into[at + entry] = (into[at + entry] as number) + value;
  };
  for (let point = 0; point < points.length; point += 1) {
    const part = (points[point] as number) * length;
    step(curvature, cos, sin, part, way);
    const bend = ((weights[point] as number) * length) / bending;
    const stretch = ((weights[point] as number) * length) / stretching;
    const dx = way[0] as number;
    const dz = way[1] as number;
    const alongX = way[2] as number;
    const alongZ = way[3] as number;
    add(0, bend * dz * dz + stretch * alongX * alongX);
    add(1, stretch * alongX * alongZ - bend * dz * dx);
    add(2, bend * dx * dx + stretch * alongZ * alongZ);
    add(3, -bend * dz);
    add(4, bend * dx);
    add(5, bend);
    const normalMoment = -bend * (way[5] as number);
    const normalAxial = stretch * (dx * alongZ - dz * alongX);
    add(6, -dz * normalMoment - alongX * normalAxial);
    add(7, dx * normalMoment - alongZ * normalAxial);
    add(8, normalMoment);
    const weightMoment = -bend * (way[4] as number);
    const weightAxial = stretch * part * alongZ;
    add(9, -dz * weightMoment - alongX * weightAxial);
    add(10, dx * weightMoment - alongZ * weightAxial);
    add(11, weightMoment);
    const pushMoment = -bend * (way[6] as number);
    const pushAxial = -stretch * part * alongX;
    add(12, -dz * pushMoment - alongX * pushAxial);
    add(13, dx * pushMoment - alongZ * pushAxial);
    add(14, pushMoment);
  }
}
