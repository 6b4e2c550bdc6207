import { power } from "./power.ts";

/**
 * Exact definitions of the customary units, in SI. Everything else is derived from these.
 * International yard and pound agreement, 1959; standard gravity, CGPM 1901; the US gallon is
 * 231 cubic inches; the international nautical mile is 1852 m.
 */

// One division of two whole numbers rounds once; 12 * 0.0254 would be one bit off 0.3048.
const inches = (count: number): number => (count * 254) / 10_000;

/** Metres in an inch, a foot, a yard, a mile, a nautical mile. */
export const INCH = inches(1);
export const FOOT = inches(12);
export const YARD = inches(36);
export const MILE = inches(12 * 5280);
export const NAUTICAL_MILE = 1852;

/** Kilograms in a pound and in an ounce. */
export const POUND = 0.45359237;
export const OUNCE = POUND / 16;

/** Standard gravity, m/s2: turns a mass on a scale into a weight. */
const GRAVITY = 9.80665;

/** Newtons in a pound-force, a kip, and the weight of a kilogram (standard gravity). */
export const POUND_FORCE = POUND * GRAVITY;
/** Pascals in a pound per square foot. */
export const POUND_PER_SQUARE_FOOT = POUND_FORCE / FOOT ** 2;
export const KIP = 1000 * POUND_FORCE;
export const KILOGRAM_FORCE = GRAVITY;

/** Seconds in an hour. */
export const HOUR = 3600;

/** Cubic metres in a US gallon and in a litre. */
export const GALLON = 231 * power(INCH, 3);
export const LITRE = 1 / 1000;

/** Radians in a degree. */
export const DEGREE = Math.PI / 180;
