import { angleProperties } from "../angle/angle-properties.ts";
import { hollowRectangleProperties } from "../hollow-rectangle/hollow-rectangle-properties.ts";
import { roundProperties } from "../round/round-properties.ts";
import { flatProperties } from "../solid/flat-properties.ts";
import { massPerLength } from "../weight/mass-per-length.ts";
import { conventionRules, designWall } from "./convention.ts";
import { cornerRadii } from "./corner-radii.ts";
import { outsidePerimeter } from "./outside-perimeter.ts";
import type { NominalProperties, SectionProperties } from "./section-properties.ts";
import type { RectangularTube, RoundTube, Tube } from "./tube.ts";

/**
 * All properties of a section by its convention: strength and stiffness from the design wall, mass
 * from the nominal wall.
 *
 * Left out: holes, dents, corrosion, swaged ends, residual stress, effective width of slender
 * walls.
 *
 * Source: AISC 360-22, B4.2 and H3.1; AISC Shapes Database v15.0; EN 10219-2:2006 and
 * EN 10210-2:2006, annex B.
 *
 * @param tube section, m
 * @returns SI: m, m2, m3, m4, kg/m
 * @throws Refusal as `refuseImpossible`
 * @example // HSS2X2X1/8: A 0.840 in2, I 0.486 in4, J 0.796 in4
 * properties({ kind: "rectangular", depth: 0.0508, width: 0.0508, wall: 0.003175,
 *   convention: "AISC", galvanized: false })
 */
export function properties(tube: Tube): SectionProperties {
  const nominal: NominalProperties = {
    massPerLength: massPerLength(tube),
    outsidePerimeter: outsidePerimeter(tube),
    listed: isListed(tube),
  };
  switch (tube.kind) {
    case "round":
      return roundProperties(tube.outside, designWallOf(tube), nominal);
    case "rectangular":
      return hollowRectangleProperties(
        tube.depth,
        tube.width,
        designWallOf(tube),
        cornerRadii(tube.convention, tube.wall),
        conventionRules[tube.convention].torsion,
        nominal,
      );
    case "flat":
      return flatProperties(tube.width, tube.thickness, nominal);
    case "angle":
      return angleProperties(tube.legs[0], tube.legs[1], tube.thickness, nominal);
    case "bar":
      return roundProperties(tube.diameter, tube.diameter / 2, nominal);
  }
}

/**
 * Whether a listed standard stands behind a section. Solid sections always are.
 *
 * @param tube section
 * @returns false for tube of the convention `other`
 */
export function isListed(tube: Tube): boolean {
  return tube.kind === "round" || tube.kind === "rectangular"
    ? conventionRules[tube.convention].listed
    : true;
}

/**
 * Wall from which strength and stiffness are computed.
 *
 * @param tube round or rectangular tube, nominal wall in m
 * @returns m
 * @example // 1/8 in by AISC 360-22, B4.2: 0.116 in
 */
export function designWallOf(tube: RoundTube | RectangularTube): number {
  return designWall.evaluate(conventionRules[tube.convention].wallFactor.value, tube.wall);
}
