import { angleArea } from "../angle/angle-formulas.ts";
import { hollowRectangleArea } from "../hollow-rectangle/hollow-rectangle-area.ts";
import { roundArea } from "../round/round-formulas.ts";
import { flatArea } from "../solid/flat-formulas.ts";
import { cornerRadii } from "../tube/corner-radii.ts";
import type { Tube } from "../tube/tube.ts";

/**
 * Steel area of a section at a multiple of its nominal wall; solid sections ignore the multiple.
 *
 * @param tube section, m
 * @param wallFactor multiple of the nominal wall, 0.8 to 1.1
 * @returns m2
 */
export function steelArea(tube: Tube, wallFactor: number): number {
  switch (tube.kind) {
    case "round":
      return roundArea.evaluate(tube.outside, tube.wall * wallFactor);
    case "rectangular":
      return hollowRectangleArea(
        tube.depth,
        tube.width,
        tube.wall * wallFactor,
        cornerRadii(tube.convention, tube.wall),
      );
    case "flat":
      return flatArea.evaluate(tube.width, tube.thickness);
    case "angle":
      return angleArea.evaluate(tube.legs[0], tube.legs[1], tube.thickness);
    case "bar":
      return roundArea.evaluate(tube.diameter, tube.diameter / 2);
  }
}
