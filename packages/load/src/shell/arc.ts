import { power } from "@hoopstay/core";
/**
 * One hoop line: two circular arcs, mirror images, that meet at the crown. The right-hand arc has
 * its centre at (-c, e) seen from the foot of the crown on the springing line, the left-hand one at
 * (+c, e). A round arch has c = 0; a pointed arch that springs vertically has e = 0.
 */
export interface Arc {
  readonly span: number;
  readonly rise: number;
  /** Offset of each half's centre beyond the middle plane, m. */
  readonly c: number;
  /** Height of the centres above the springing, m (negative for a flat round arch). */
  readonly e: number;
  readonly radius: number;
  /** Angle of the springing and of the crown as seen from the centre of the right half, rad. */
  readonly springAngle: number;
  readonly crownAngle: number;
  /** Developed length of both halves, m. */
  readonly length: number;
}

/**
 * The arc through both springings and the crown whose half centres are offset by `c`.
 *
 * @param span m, between the springings
 * @param rise m, crown above the springing
 * @param c m, centre offset; 0 for a round arch, (rise^2 - span^2/4)/span for a pointed one that
 *   springs vertically
 * @see statics: two equations (through springing, through crown) in e and R
 */
export function arcByOffset(span: number, rise: number, c: number): Arc {
  const half = span / 2;
  const e = (rise * rise - half * half - 2 * c * half) / (2 * rise);
  const radius = Math.hypot(half + c, e);
  const springAngle = Math.atan2(-e, half + c);
  const crownAngle = Math.atan2(rise - e, c);
  const length = 2 * radius * (crownAngle - springAngle);
  return { span, rise, c, e, radius, springAngle, crownAngle, length };
}

/** Centre offset of the arch that springs vertically: positive when rise exceeds half the span. */
export const verticalSpringOffset = (span: number, rise: number): number =>
  (rise * rise - (span * span) / 4) / span;

/** Height above the springing of the arc at a distance from the middle plane. */
export function arcHeightAt(arc: Arc, x: number): number {
  const fromCentre = Math.abs(x) + arc.c;
  return arc.e + Math.sqrt(arc.radius * arc.radius - fromCentre * fromCentre);
}

/** Point of the right half at a share (0 springing, 1 crown) of its developed length. */
export function arcPointAt(arc: Arc, share: number): { x: number; z: number } {
  const angle = arc.springAngle + share * (arc.crownAngle - arc.springAngle);
  return { x: arc.radius * Math.cos(angle) - arc.c, z: arc.e + arc.radius * Math.sin(angle) };
}

/** Area between the arc and its springing line, m2, and the height of its centroid above it, m. */
export function arcArea(arc: Arc): { area: number; centroid: number } {
  const { radius: R, c, e, springAngle: t0, crownAngle: t1 } = arc;
  // Right half by Green's theorem along the arc: dA = x dz, dS = x z dz, doubled for both halves.
  const xdz = (t: number): number =>
    (R * R * (t + Math.sin(t) * Math.cos(t))) / 2 - c * R * Math.sin(t);
  const xzdz = (t: number): number =>
    e * xdz(t) + (-power(R, 3) * power(Math.cos(t), 3)) / 3 - (c * R * R * Math.sin(t) ** 2) / 2;
  const area = 2 * (xdz(t1) - xdz(t0));
  return { area, centroid: (2 * (xzdz(t1) - xzdz(t0))) / area };
}

/** Height above the springing of the centroid of the arc as a line, m. */
export function arcLineCentroid(arc: Arc): number {
  const { radius, e, springAngle, crownAngle } = arc;
  const turn = crownAngle - springAngle;
  return e + (radius * (Math.cos(springAngle) - Math.cos(crownAngle))) / turn;
}
