import { cite, constant, derived, formula } from "@hoopstay/core";

/** How far loads stand below failure: 1.6 with allowable, 1.0 with factored loads. */
export const loadLevel = {
  ASD: constant(
    "load-level-asd",
    "a",
    "load level, ASD",
    1.6,
    "ratio",
    cite("aisc-360-22", "appendix 8, ASD", "memory"),
  ),
  LRFD: constant(
    "load-level-lrfd",
    "a",
    "load level, LRFD",
    1,
    "ratio",
    cite("aisc-360-22", "appendix 8, LRFD", "memory"),
  ),
} as const;

export const eulerLoad = formula({
  id: "euler-load",
  symbol: "N_e",
  name: "elastic buckling load",
  measure: "force",
  arguments: [
    ["E", "modulus of elasticity", "pressure"],
    ["I", "second moment of area", "second-moment"],
    ["L", "effective length", "length"],
  ],
  expression: "3.141592653589793^2 * E * I / L^2",
  citation: derived("Euler's column"),
  evaluate: (E, I, L) => (Math.PI * Math.PI * E * I) / (L * L),
});

export const momentAmplification = formula({
  id: "moment-amplification",
  symbol: "B",
  name: "growth of a moment by the compression beside it",
  measure: "ratio",
  arguments: [
    ["a", "load level", "ratio"],
    ["N_c", "compression", "force"],
    ["N_e", "elastic buckling load", "force"],
  ],
  expression: "1 / (1 - a * N_c / N_e)",
  citation: cite("aisc-360-22", "appendix 8, equation A-8-3 with C_m 1", "memory"),
  range: "a N_c below N_e",
  evaluate: (level, compression, elastic) => 1 / (1 - (level * compression) / elastic),
});

/**
 * Growth of moments by compression, second order. Numbers in, number out, nothing made.
 *
 * @param method whose load level counts: loads of ASD, or factored loads of LRFD
 * @param compression N_c, N, compression positive; in tension nothing grows, and nothing shrinks
 * @param elastic N_e, N, by `eulerLoad`
 * @returns ratio, 1 or more; infinite where a N_c reaches N_e: the member buckles
 * @example momentAmplifier("LRFD", 1, 2) // 2
 */
export function momentAmplifier(
  method: "ASD" | "LRFD",
  compression: number,
  elastic: number,
): number {
  if (compression <= 0) return 1;
  const level = loadLevel[method].value;
  if (level * compression >= elastic) return Number.POSITIVE_INFINITY;
  return momentAmplification.evaluate(level, compression, elastic);
}

/**
 * A moment grown by `momentAmplifier`, N m; infinite where the member buckles, whatever bends it.
 *
 * @example amplifiedMoment(2, 3) // 6
 */
export const amplifiedMoment = (amplifier: number, moment: number): number =>
  amplifier === Number.POSITIVE_INFINITY ? amplifier : amplifier * moment;
