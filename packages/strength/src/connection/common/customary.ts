import { FOOT, POUND_FORCE } from "@hoopstay/core";

/** Metres in an inch, pascals in a kip per square inch: the units of the American tables. */
export const INCH = FOOT / 12;
export const KSI = (1000 * POUND_FORCE) / INCH ** 2;
