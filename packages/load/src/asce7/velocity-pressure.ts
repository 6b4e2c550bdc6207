import { cite, FOOT, formula } from "@hoopstay/core";
import { directionality } from "./constants.ts";
import type { Edition, Exposure } from "./edition/edition.ts";
import { type Hill, hillFactorOf } from "./topography.ts";

/** What the place makes of a wind speed. Speeds m/s, lengths m. */
export interface WindPlace {
  readonly edition: Edition;
  readonly exposure: Exposure;
  /** Ground elevation above sea level; the factor is 1 where none is entered. */
  readonly elevation?: number;
  readonly hill?: Hill;
}

/** Factors on 0.613 V^2 at mean roof height. */
export interface PressureFactors {
  /** Height used in the profile: mean roof height, not below 15 ft. */
  readonly z: number;
  readonly gradientHeight: number;
  readonly alpha: number;
  readonly kz: number;
  readonly kzt: number;
  readonly kd: number;
  readonly ke: number;
  /** K_d q_h at 1 m/s, Pa: the one number that multiplies every bracket of coefficients. */
  readonly perSpeedSquared: number;
}

/** The profile is not used below 15 ft. */
export const lowestHeight = 15 * FOOT;

export const elevationFactor = formula({
  id: "elevation-factor",
  symbol: "K_e",
  name: "ground elevation factor",
  measure: "ratio",
  arguments: [["z_e", "ground elevation above sea level", "length"]],
  expression: "exp(-0.0000362 * z_e / 0.3048)",
  citation: cite("asce-7-16", "table 26.9-1, note 2", "memory"),
  evaluate: (elevation) => Math.exp((-0.0000362 * elevation) / FOOT),
});

/**
 * Velocity pressure factors at mean roof height `h`.
 *
 * @param h mean roof height, m
 * @returns the factors; both editions give the same `perSpeedSquared` but for K_z
 */
export function pressureFactors(place: WindPlace, h: number): PressureFactors {
  const { edition, exposure } = place;
  const { alpha, gradientFeet } = edition.exposures[exposure];
  const z = Math.max(h, lowestHeight);
  const gradientHeight = gradientFeet * FOOT;
  const kz = edition.exposureCoefficient.evaluate(z, gradientHeight, alpha);
  const kzt = place.hill ? hillFactorOf(place.hill, exposure, h).kzt : 1;
  const ke = place.elevation === undefined ? 1 : elevationFactor.evaluate(place.elevation);
  const kd = directionality.value;
  const velocity = edition.velocityPressure.evaluate(kz, kzt, kd, ke, 1);
  const perSpeedSquared = edition.pressure.evaluate(velocity, kd, 1, 0);
  return { z, gradientHeight, alpha, kz, kzt, kd, ke, perSpeedSquared };
}
