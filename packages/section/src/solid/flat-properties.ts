import { radiusOfGyration } from "../round/round-formulas.ts";
import type { NominalProperties, SectionProperties } from "../tube/section-properties.ts";
import {
  flatArea,
  flatTorsionConstant,
  flatTorsionModulus,
  rectangleSecondMoment,
} from "./flat-formulas.ts";

/**
 * Properties of a flat bar standing on edge: axis x works the width.
 *
 * Left out: rounded mill edges, holes.
 *
 * @param width m
 * @param thickness m, at most the width
 * @param nominal what depends on the nominal size and the convention
 * @returns SI: m, m2, m3, m4
 * @example // b = t: torsion constant 0.1406 b^4 (Timoshenko and Goodier)
 */
export function flatProperties(
  width: number,
  thickness: number,
  nominal: NominalProperties,
): SectionProperties {
  const area = flatArea.evaluate(width, thickness);
  const secondMomentX = rectangleSecondMoment.evaluate(width, thickness);
  const secondMomentY = rectangleSecondMoment.evaluate(thickness, width);
  const leastRadius = radiusOfGyration.evaluate(secondMomentY, area);
  return {
    area,
    secondMomentX,
    secondMomentY,
    elasticModulusX: (2 * secondMomentX) / width,
    elasticModulusY: (2 * secondMomentY) / thickness,
    plasticModulusX: (area * width) / 4,
    plasticModulusY: (area * thickness) / 4,
    radiusX: radiusOfGyration.evaluate(secondMomentX, area),
    radiusY: leastRadius,
    leastRadius,
    torsionConstant: flatTorsionConstant.evaluate(width, thickness),
    torsionModulus: flatTorsionModulus.evaluate(width, thickness),
    designWall: thickness,
    outsidePerimeter: nominal.outsidePerimeter,
    massPerLength: nominal.massPerLength,
    listed: nominal.listed,
  };
}
