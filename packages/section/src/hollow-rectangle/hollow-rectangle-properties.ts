import { radiusOfGyration } from "../round/round-formulas.ts";
import type { CornerRadii } from "../tube/corner-radii.ts";
import type { NominalProperties, SectionProperties } from "../tube/section-properties.ts";
import {
  hollowElasticModulus,
  hollowPlasticModulus,
  hollowSecondMoment,
} from "./hollow-formulas.ts";
import { hollowRectangleArea } from "./hollow-rectangle-area.ts";
import {
  roundedRectanglePlasticModulus,
  roundedRectangleSecondMoment,
} from "./rounded-rectangle.ts";
import {
  aiscTorsionModulus,
  bredtTorsionConstant,
  coldFormedTorsionConstant,
  coldFormedTorsionModulus,
  midLineArea,
  midLineLength,
} from "./torsion.ts";

/**
 * Properties of a square or rectangular tube with rounded corners, from the wall given.
 *
 * Left out: the weld bead, swaged or drilled ends, out-of-squareness, local buckling (see
 * `flatOverWall`).
 *
 * @param depth outside depth, m
 * @param width outside width, m
 * @param wall wall to compute with, m
 * @param corners corner radii over the wall
 * @param torsion mid-line formulas of the American tables, or annex B of EN 10219-2 and EN 10210-2;
 *   the second gives up to 3 % more for the same tube
 * @param nominal what depends on the nominal size and the convention
 * @returns SI: m, m2, m3, m4
 * @example // HSS2X2X1/8, wall 0.116 in, corners 2 and 1: area 0.840 in2
 */
export function hollowRectangleProperties(
  depth: number,
  width: number,
  wall: number,
  corners: CornerRadii,
  torsion: "mid-line" | "annex B",
  nominal: NominalProperties,
): SectionProperties {
  const area = hollowRectangleArea(depth, width, wall, corners);
  const secondMomentX = secondMoment(depth, width, wall, corners);
  const secondMomentY = secondMoment(width, depth, wall, corners);
  const radiusX = radiusOfGyration.evaluate(secondMomentX, area);
  const radiusY = radiusOfGyration.evaluate(secondMomentY, area);
  const midRadius = ((corners.outside + corners.inside) / 2) * wall;
  const length = midLineLength.evaluate(depth, width, wall, midRadius);
  const enclosed = midLineArea.evaluate(depth, width, wall, midRadius);
  const torsionConstant =
    torsion === "annex B"
      ? coldFormedTorsionConstant.evaluate(enclosed, wall, length)
      : bredtTorsionConstant.evaluate(enclosed, wall, length);
  return {
    area,
    secondMomentX,
    secondMomentY,
    elasticModulusX: hollowElasticModulus.evaluate(secondMomentX, depth),
    elasticModulusY: hollowElasticModulus.evaluate(secondMomentY, width),
    plasticModulusX: plasticModulus(depth, width, wall, corners),
    plasticModulusY: plasticModulus(width, depth, wall, corners),
    radiusX,
    radiusY,
    leastRadius: Math.min(radiusX, radiusY),
    torsionConstant,
    torsionModulus:
      torsion === "annex B"
        ? coldFormedTorsionModulus.evaluate(torsionConstant, enclosed, wall, length)
        : aiscTorsionModulus.evaluate(depth, width, wall),
    designWall: wall,
    outsidePerimeter: nominal.outsidePerimeter,
    massPerLength: nominal.massPerLength,
    listed: nominal.listed,
  };
}

function secondMoment(depth: number, width: number, wall: number, corners: CornerRadii): number {
  const twice = 2 * wall;
  return hollowSecondMoment.evaluate(
    roundedRectangleSecondMoment.evaluate(depth, width, corners.outside * wall),
    roundedRectangleSecondMoment.evaluate(depth - twice, width - twice, corners.inside * wall),
  );
}

function plasticModulus(depth: number, width: number, wall: number, corners: CornerRadii): number {
  const twice = 2 * wall;
  return hollowPlasticModulus.evaluate(
    roundedRectanglePlasticModulus.evaluate(depth, width, corners.outside * wall),
    roundedRectanglePlasticModulus.evaluate(depth - twice, width - twice, corners.inside * wall),
  );
}
