import { derived, formula } from "@hoopstay/core";
import { refuse, requireLength } from "../common/require.ts";

export const curveOffset = formula({
  id: "curve-offset",
  symbol: "e_s",
  name: "offset of the bent hoop from a straight stub",
  measure: "length",
  arguments: [
    ["a", "length of sleeve on the curve", "length"],
    ["R", "radius of the hoop", "length"],
    ["k", "slope against the stub with which the curve begins", "ratio"],
  ],
  expression: "R - sqrt(R^2 - a^2) + a * k",
  citation: derived("circle that begins at the stub, with a kink where it does not spring upright"),
  range: "a at most R",
  evaluate: (a, R, k) => (a * a) / (R + Math.sqrt(R * R - a * a)) + a * k,
});

export interface StubFit {
  readonly fits: boolean;
  /** Offset over the curved part of the sleeve, m. */
  readonly offset: number;
  /** Straight leg with which the stub would go in, m. */
  readonly legNeeded: number;
}

/**
 * Whether a straight stub goes into a bent hoop: the curve's offset over the sleeve must not exceed
 * the play between the tubes.
 *
 * @param overlap sleeve length, m
 * @param leg straight leg of the hoop, m; zero where there is none
 * @param radius of the hoop's centre line, m
 * @param kink slope of the arc against the stub where it begins; zero where it springs upright
 * @param play inside diameter of the outer tube less outside diameter of the inner one, m
 * @throws Refusal `not-positive`, `out-of-range`
 */
export function stubFit(
  overlap: number,
  leg: number,
  radius: number,
  kink: number,
  play: number,
): StubFit {
  requireLength(overlap, "a sleeve length");
  if (!(radius >= overlap && Number.isFinite(radius))) {
    refuse("out-of-range", "a hoop radius not below the sleeve length", radius, "Check the unit.");
  }
  if (!(kink >= 0 && Number.isFinite(kink))) {
    refuse("out-of-range", "a slope of zero or more", kink, "Measure the hoop again.");
  }
  if (!(leg >= 0 && Number.isFinite(leg))) {
    refuse("out-of-range", "a leg of zero or more", leg, "Measure it again.");
  }
  if (!Number.isFinite(play)) {
    refuse("out-of-range", "a play between the tubes", play, "Measure both tubes again.");
  }
  const curved = Math.max(0, overlap - leg);
  const offset = curveOffset.evaluate(curved, radius, kink);
  const free = Math.min(Math.max(0, play), radius);
  // The length of curve whose offset is just the play.
  const rest = radius - free;
  const square = 1 + kink * kink;
  const root = Math.sqrt((rest * kink) ** 2 + square * (radius * radius - rest * rest));
  const legNeeded = Math.max(0, overlap - (root - rest * kink) / square);
  return { fits: offset <= Math.max(0, play), offset, legNeeded };
}
