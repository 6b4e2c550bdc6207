import { derived, formula } from "@hoopstay/core";
import { refuse } from "../connection/common/require.ts";
import { requireSpan } from "./member-section.ts";

export const archEffectiveLength = formula({
  id: "arch-effective-length",
  symbol: "L_c",
  name: "effective length of an arch that sways in its plane",
  measure: "length",
  arguments: [
    ["s_a", "length of the arc", "length"],
    ["alpha", "half the angle at the centre", "angle"],
  ],
  expression: "s_a / 2 / sqrt(1 - (alpha / 3.141592653589793)^2)",
  citation: derived("two-hinged round arch under even pressure, antisymmetric buckling"),
  range: "alpha above 0 and below pi",
  evaluate: (arc, halfAngle) => arc / 2 / Math.sqrt(1 - (halfAngle / Math.PI) ** 2),
});

/**
 * Effective length of a round arch between hinged feet, in its own plane: half the arc, and more
 * the more of a circle it is. Half the arc alone is a quarter unsafe in load for a semicircle.
 *
 * Left out: straight legs below the arc and pointed arches, which sway more easily; feet that
 * give way sideways.
 *
 * Source: derived; N = E I ((pi/alpha)^2 - 1)/R^2 of the arch that sways, as textbooks print it.
 *
 * @param arc length of the arc, m
 * @param halfAngle half the angle at the centre, rad
 * @returns m
 * @throws Refusal `out-of-range` for an angle outside 0 to pi, `not-positive` for an arc
 * @example archBucklingLength(Math.PI, Math.PI / 2) // pi/2 / sqrt(3/4), a semicircle of radius 1
 */
export function archBucklingLength(arc: number, halfAngle: number): number {
  requireSpan(arc, "an arc");
  if (!(halfAngle > 0 && halfAngle < Math.PI)) {
    const expected = "half an angle at the centre above 0 and below pi, in rad";
    refuse("out-of-range", expected, halfAngle, "Check the angle's unit.");
  }
  return archEffectiveLength.evaluate(arc, halfAngle);
}
