import { derived, formula } from "@hoopstay/core";
import { type SlidingTerms, type SlidingWind, slopeAgainst } from "./slide.ts";
import { searchSlideLimit } from "./slide-search.ts";

/** Sliding limit on level ground while there is contact. */
export const slidingLimit = formula({
  id: "sliding-limit",
  symbol: "q_c",
  name: "K_d q_h at which the house begins to slide",
  measure: "pressure",
  arguments: [
    ["mu", "low friction coefficient", "ratio"],
    ["D_n", "factored weight normal to the ground", "force"],
    ["S", "slope along the wind", "force"],
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["h", "horizontal wind per unit of K_d q_h", "area"],
    ["v", "uplift per unit of K_d q_h", "area"],
  ],
  expression: "(mu * D_n - S) / (gamma_W * (h + mu * v))",
  citation: derived("friction on the contact left = horizontal force, solved for the pressure"),
  range: "no slanted tethers, slope along the wind; h + mu v above zero",
  evaluate: (mu, dead, slope, factor, h, v) => (mu * dead - slope) / (factor * (h + mu * v)),
});

/**
 * The lowest K_d q_h, Pa, at which a case slides. Infinite where it is not limited by sliding (with
 * slanted tethers: not below a thousand times the design pressure).
 *
 * @param below with slanted tethers only a limit below this is worked out; infinite where there is none
 */
export function slideLimit(
  sliding: SlidingTerms,
  wind: SlidingWind,
  design: number,
  below?: number,
): number {
  const { terms } = sliding;
  if (terms.sideways) return searchSlideLimit(sliding, wind, design, below);
  const factor = terms.combination.wind;
  const mu = terms.holding.friction;
  const h = Math.sqrt(wind.fx * wind.fx + wind.fy * wind.fy);
  const [sx, sy] = slopeAgainst(terms, wind.fx, wind.fy);
  const along = h > 0 ? (sx * wind.fx + sy * wind.fy) / h : Math.sqrt(sx * sx + sy * sy);
  const across = h > 0 ? (sx * wind.fy - sy * wind.fx) / h : 0;
  const grip = mu * terms.deadNormal;
  if (grip * grip < along * along + across * across) return 0;
  if (across === 0) {
    if (h + mu * wind.fz <= 0) return Number.POSITIVE_INFINITY;
    return slidingLimit.evaluate(mu, terms.deadNormal, along, factor, h, wind.fz);
  }
  return quadraticLimit(grip, mu * factor * wind.fz, factor * h, along, across);
}

/**
 * First q with (grip - loss q)^2 = (drive q + along)^2 + across^2; infinite where there is none. It
 * comes before contact ends at grip = loss q: there nothing is left to hold what slides across.
 */
function quadraticLimit(
  grip: number,
  loss: number,
  drive: number,
  along: number,
  across: number,
): number {
  const a = loss * loss - drive * drive;
  const b = grip * loss + drive * along;
  const c = grip * grip - along * along - across * across;
  // a q^2 - 2 b q + c = 0; the stable form of the smaller root, and the other one. They are real:
  // b^2 - a c = (grip drive + loss along)^2 + a across^2, and c is not below nought.
  const large = b + Math.sign(b || 1) * Math.sqrt(b * b - a * c);
  return Math.min(...[c / large, large / a].filter((q) => q >= 0));
}
