import { cite, constant, formula, POUND_PER_SQUARE_FOOT, power } from "@hoopstay/core";
import type { ComponentCoefficients } from "./component-arch.ts";
import { lowestHeight, type WindPlace } from "./velocity-pressure.ts";

/** What the 30 ft floor of components adds in exposure B, the same in both editions. */
export const componentHeightRatio = formula({
  id: "component-height-ratio",
  symbol: "k_z",
  name: "components in exposure B: K_z at no less than 30 ft over K_z",
  measure: "ratio",
  arguments: [
    ["z", "height used in the profile", "length"],
    ["alpha", "power of the wind profile", "ratio"],
  ],
  expression: "max(1, (9.144 / z)^(2 / alpha))",
  citation: cite("bnbc-2020", "table 6.2.11, notes 1 and 2 (ASCE 7 table 26.10-1)", "read"),
  range: "exposure B; 1 in C and D",
  evaluate: (z, alpha) => Math.max(1, power(9.144 / z, 2 / alpha)),
});

/** The ratio at a place for a mean roof height, m. */
export const componentRatioOf = ({ edition, exposure }: WindPlace, h: number): number =>
  exposure === "B"
    ? componentHeightRatio.evaluate(Math.max(h, lowestHeight), edition.exposures.B.alpha)
    : 1;

/** Net coefficient of a component per unit of K_d q_h at mean roof height. */
export const componentCoefficient = formula({
  id: "component-coefficient",
  symbol: "C_c",
  name: "net coefficient of a component",
  measure: "ratio",
  arguments: [
    ["k_z", "ratio for exposure B", "ratio"],
    ["GC_p", "outside coefficient", "ratio"],
    ["GC_pi", "inside coefficient", "ratio"],
  ],
  expression: "k_z * (GC_p - GC_pi)",
  citation: cite("asce-7-16", "eq. 30.3-1", "memory"),
  evaluate: (ratio, outside, inside) => ratio * (outside - inside),
});

export const componentPressure = formula({
  id: "component-pressure",
  symbol: "p",
  name: "net pressure on a component, toward the surface",
  measure: "pressure",
  arguments: [
    ["q", "K_d q_h", "pressure"],
    ["C_c", "net coefficient", "ratio"],
  ],
  expression: "q * C_c",
  citation: cite("asce-7-16", "eq. 30.3-1", "memory"),
  evaluate: (q, coefficient) => q * coefficient,
});

/** Not linear in the wind: a required check beside the others, never part of a wind ratio. */
export const leastComponentPressure = constant(
  "least-component-pressure",
  "p_min",
  "least net pressure on a component, either way, strength level (16 psf)",
  16 * POUND_PER_SQUARE_FOOT,
  "pressure",
  cite("asce-7-16", "30.2.2", "memory"),
);

/**
 * Net coefficients of a component with every inside pressure of the state: the greatest inward and
 * the greatest outward (the least number).
 */
export function componentNet(
  { inward, outward }: ComponentCoefficients,
  insideCoefficients: readonly number[],
  ratio: number,
): ComponentCoefficients {
  let most = Number.NEGATIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (const inside of insideCoefficients) {
    most = Math.max(most, componentCoefficient.evaluate(ratio, inward, inside));
    least = Math.min(least, componentCoefficient.evaluate(ratio, outward, inside));
  }
  return { inward: most, outward: least };
}
