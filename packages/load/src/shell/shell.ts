import { type Arc, arcByOffset, arcLineCentroid } from "./arc.ts";
import { uprightOffset } from "./arc-formulas.ts";
import { endWallCentroid, flatEndArea, underArcArea, underArcMoment } from "./end-wall-formulas.ts";

/** Centre-line sizes of the house, as the house file gives them, m. */
export interface CentreLines {
  readonly shape: "round" | "pointed";
  readonly span: number;
  readonly rise: number;
  readonly length: number;
  /** Springing above ground: rail, stub shoulder and straight leg. */
  readonly springing: number;
  readonly hoopDiameter: number;
  readonly hoopCount: number;
  /** Offset of the arc centres of a pointed hoop that does not spring vertically. */
  readonly centreOffset?: number;
}

/**
 * The shell that the wind sees: the centre lines grown by half a hoop tube on every side. All
 * ratios, areas and enclosure classes follow from it; pivots, anchors and weights do not.
 */
export interface Shell {
  readonly b: number;
  readonly f: number;
  readonly L: number;
  readonly springing: number;
  readonly crown: number;
  /** Mean roof height: half way from the springing to the crown. */
  readonly h: number;
  readonly riseRatio: number;
  readonly arc: Arc;
  readonly endArea: number;
  readonly endCentroid: number;
  readonly hoopDiameter: number;
  readonly hoopCount: number;
  /** Line of one hoop from ground to ground, m, and the height of its centroid, m. */
  readonly hoopLine: number;
  readonly hoopLineCentroid: number;
}

/**
 * @param lines centre-line sizes, m
 * @returns the shell; the caller has refused shapes that are no arch (see `shapeComplaint`)
 */
export function shellOf(lines: CentreLines): Shell {
  const { springing, hoopDiameter } = lines;
  const b = lines.span + hoopDiameter;
  const f = lines.rise + hoopDiameter / 2;
  const offset = lines.shape === "round" ? 0 : (lines.centreOffset ?? uprightOffset.evaluate(b, f));
  const arc = arcByOffset(b, f, offset);
  const { radius, springAngle, crownAngle, c, e } = arc;
  const crown = springing + f;
  const endArea = flatEndArea.evaluate(radius, springAngle, crownAngle, c, b, springing);
  const under = underArcArea.evaluate(endArea, b, springing);
  const moment = underArcMoment.evaluate(under, e, radius, springAngle, crownAngle, c);
  const hoopLine = arc.length + 2 * springing;
  return {
    b,
    f,
    L: lines.length + hoopDiameter,
    springing,
    crown,
    h: (springing + crown) / 2,
    riseRatio: f / b,
    arc,
    endArea,
    endCentroid: endWallCentroid.evaluate(under, moment, b, springing, endArea),
    hoopDiameter,
    hoopCount: lines.hoopCount,
    hoopLine,
    hoopLineCentroid:
      (arc.length * (springing + arcLineCentroid(arc)) + springing * springing) / hoopLine,
  };
}
