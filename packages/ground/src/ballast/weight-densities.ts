import { type Citation, cite, FOOT, POUND_FORCE, power } from "@hoopstay/core";

/** A weight density, N/m3, from the source's pounds per cubic foot. */
export interface WeightDensity {
  readonly poundsPerCubicFoot: number;
  readonly value: number;
  readonly citation: Citation;
}

const density = (poundsPerCubicFoot: number, citation: Citation): WeightDensity => ({
  poundsPerCubicFoot,
  value: (poundsPerCubicFoot * POUND_FORCE) / power(FOOT, 3),
  citation,
});

/** What ballast is made of, at the low weight that may be counted for holding down. */
export const ballastDensities = {
  water: density(62.4, cite("common-practice", "fresh water, 62.4 pcf", "memory")),
  concrete: density(
    145,
    cite("cpuc-go-95", "rule 48.5, concrete counted at no more than 145 pcf", "read"),
  ),
  sand: density(100, cite("common-practice", "dry sand, about 100 pcf; wet about 120", "memory")),
} as const;

export type BallastMaterial = keyof typeof ballastDensities;
