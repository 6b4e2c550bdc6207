import { type Measured, measured } from "@hoopstay/core";

/** Rounding to three figures moves a number by no more than this share of it. */
const roundingToThree = 0.005;

/**
 * A gust limit in a sentence, taken so much lower that rounding to three figures never shows it
 * above what it is, in whatever unit the reader has. Records beside it keep the value itself.
 */
export const atMost = (speed: number): Measured =>
  measured(speed * (1 - roundingToThree), "speed", 3);
