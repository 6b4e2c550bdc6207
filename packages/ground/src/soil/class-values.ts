import { FOOT, judged, POUND_FORCE, power } from "@hoopstay/core";
import type { Clay, Sand } from "./soil.ts";
import type { SoilClass } from "./soil-class.ts";

/** Newtons per cubic metre in a pound per cubic foot. */
export const POUND_PER_CUBIC_FOOT = POUND_FORCE / power(FOOT, 3);

/**
 * What a class is taken to be, where nothing better is known: friction angle in degrees, unit
 * weight in pcf, undrained strength in kPa. Classes 1 and 5 have no row: rock has no such theory,
 * and class 5 is tested.
 */
export const classValues = {
  citation: judged(
    "class to phi, unit weight and c_u from EM 1110-2-2504 table 3-1, Gunaratne table 2.2 and the " +
      "clay consistency bands, at or below the middle; clay gets the unit weight of the sand row, " +
      "the low end of its own: safe side",
  ),
  rows: {
    "2": { frictionAngle: 38, unitWeight: 120, shearStrength: 150 },
    "3": { frictionAngle: 35, unitWeight: 118, shearStrength: 100 },
    "4A": { frictionAngle: 33, unitWeight: 112, shearStrength: 70 },
    "4B": { frictionAngle: 31, unitWeight: 108, shearStrength: 50 },
  },
} as const;

/** A class for which values may be presumed. */
export type RatedClass = keyof typeof classValues.rows;

export const isRated = (soilClass: SoilClass): soilClass is RatedClass =>
  soilClass in classValues.rows;

/** The presumed sand of a class, SI. */
export function presumedSand(soilClass: RatedClass): Sand {
  const { frictionAngle, unitWeight } = classValues.rows[soilClass];
  return {
    likeness: "sand",
    frictionAngle: (frictionAngle * Math.PI) / 180,
    unitWeight: unitWeight * POUND_PER_CUBIC_FOOT,
  };
}

/** The presumed clay of a class, SI, its strength of the state in which the clues were taken. */
export function presumedClay(soilClass: RatedClass, measured: "wet" | "dry"): Clay {
  const { unitWeight, shearStrength } = classValues.rows[soilClass];
  return {
    likeness: "clay",
    shearStrength: shearStrength * 1000,
    unitWeight: unitWeight * POUND_PER_CUBIC_FOOT,
    measured,
  };
}
