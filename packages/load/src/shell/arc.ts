import {
  angleAlong,
  arcCentreHeight,
  arcHeight,
  arcPlaceAcross,
  arcPlaceUp,
  arcRadius,
  crownAngleOf,
  springAngleOf,
} from "./arc-formulas.ts";

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
  const e = arcCentreHeight.evaluate(span, rise, c);
  const radius = arcRadius.evaluate(span, c, e);
  const springAngle = springAngleOf.evaluate(span, c, e);
  const crownAngle = crownAngleOf.evaluate(rise, c, e);
  const length = 2 * radius * (crownAngle - springAngle);
  return { span, rise, c, e, radius, springAngle, crownAngle, length };
}

/** Height above the springing of the arc at a distance from the middle plane. */
export const arcHeightAt = ({ e, radius, c }: Arc, x: number): number =>
  arcHeight.evaluate(e, radius, Math.abs(x), c);

/** Point of the right half at a share (0 springing, 1 crown) of its developed length. */
export function arcPointAt(arc: Arc, share: number): { x: number; z: number } {
  const { radius, c, e } = arc;
  const angle = angleAlong.evaluate(arc.springAngle, arc.crownAngle, share);
  return {
    x: arcPlaceAcross.evaluate(radius, angle, c),
    z: arcPlaceUp.evaluate(e, radius, angle),
  };
}

/** Height above the springing of the centroid of the arc as a line, m. */
export function arcLineCentroid(arc: Arc): number {
  const { radius, e, springAngle, crownAngle } = arc;
  const turn = crownAngle - springAngle;
  return e + (radius * (Math.cos(springAngle) - Math.cos(crownAngle))) / turn;
}
