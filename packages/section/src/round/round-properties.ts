import type { NominalProperties, SectionProperties } from "../tube/section-properties.ts";
import {
  radiusOfGyration,
  roundArea,
  roundElasticModulus,
  roundPlasticModulus,
  roundSecondMoment,
  roundTorsionConstant,
  roundTorsionModulus,
} from "./round-formulas.ts";

/**
 * Properties of a round tube, exactly, from the wall given.
 *
 * Left out: swaged ends, weld bead, ovality, residual stress of a bent hoop.
 *
 * @param outside outside diameter, m
 * @param wall wall to compute with, m; at most half the diameter, which gives a solid bar
 * @param nominal what depends on the nominal size and the convention
 * @returns SI: m, m2, m3, m4
 * @example // HSS1.660X0.140, wall 0.130 in: area 0.625 in2
 */
export function roundProperties(
  outside: number,
  wall: number,
  nominal: NominalProperties,
): SectionProperties {
  const area = roundArea.evaluate(outside, wall);
  const secondMoment = roundSecondMoment.evaluate(outside, wall);
  const elasticModulus = roundElasticModulus.evaluate(secondMoment, outside);
  const plasticModulus = roundPlasticModulus.evaluate(outside, wall);
  const radius = radiusOfGyration.evaluate(secondMoment, area);
  const torsionConstant = roundTorsionConstant.evaluate(secondMoment);
  return {
    area,
    secondMomentX: secondMoment,
    secondMomentY: secondMoment,
    elasticModulusX: elasticModulus,
    elasticModulusY: elasticModulus,
    plasticModulusX: plasticModulus,
    plasticModulusY: plasticModulus,
    radiusX: radius,
    radiusY: radius,
    leastRadius: radius,
    torsionConstant,
    torsionModulus: roundTorsionModulus.evaluate(torsionConstant, outside),
    designWall: wall,
    outsidePerimeter: nominal.outsidePerimeter,
    massPerLength: nominal.massPerLength,
    listed: nominal.listed,
  };
}
