import type { Axis, RectangularSection } from "./member-section.ts";

/** A rectangular tube seen along the axis it bends about: flanges across it, webs along the depth. */
export interface BentBox {
  readonly depth: number;
  readonly width: number;
  readonly wall: number;
  readonly area: number;
  readonly secondMoment: number;
  readonly elasticModulus: number;
  readonly plasticModulus: number;
  readonly torsionConstant: number;
  /** About the other axis. */
  readonly otherRadius: number;
}

/** The tube as it bends about an axis. */
export function bentBox(section: RectangularSection, axis: Axis): BentBox {
  const { area, designWall: wall, torsionConstant } = section;
  const common = { area, wall, torsionConstant };
  return axis === "x"
    ? {
        ...common,
        depth: section.depth,
        width: section.width,
        secondMoment: section.secondMomentX,
        elasticModulus: section.elasticModulusX,
        plasticModulus: section.plasticModulusX,
        otherRadius: section.radiusY,
      }
    : {
        ...common,
        depth: section.width,
        width: section.depth,
        secondMoment: section.secondMomentY,
        elasticModulus: section.elasticModulusY,
        plasticModulus: section.plasticModulusY,
        otherRadius: section.radiusX,
      };
}
