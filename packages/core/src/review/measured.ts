import type { Measure } from "../formula/formula.ts";
import type { System } from "../quantity/dimension.ts";
import { show, unitOf } from "../quantity/show.ts";

/** A number in a sentence or a table, in SI, shown in the reader's units. */
export interface Measured {
  readonly value: number;
  readonly measure: Measure;
  /** Significant figures; three where absent. Whole numbers for speeds in sentences. */
  readonly digits?: number;
  /** A speed that something stands: whole units, rounded down, so that no more is promised. */
  readonly atMost?: true;
}

/** A sentence with numbers in it. */
export type Words = readonly (string | Measured)[];

export const measured = (value: number, measure: Measure, digits?: number): Measured =>
  digits === undefined ? { value, measure } : { value, measure, digits };

/** A gust or map speed, m/s, that something stands. */
export const speedLimit = (value: number): Measured => ({ value, measure: "speed", atMost: true });

/** The figures of a speed limit in whole units, below 10 in tenths, rounded down. */
export function limitFigure(speed: number, system: System): string {
  const inUnit = speed / unitOf("speed", system).factor + 1e-9;
  return inUnit < 10 ? (Math.floor(10 * inUnit) / 10).toFixed(1) : String(Math.floor(inUnit));
}

/** The measured value in the reader's units, without a unit for plain ratios. */
export function showMeasured(
  { value, measure, digits = 3, atMost }: Measured,
  system: System,
): string {
  if (value === Number.POSITIVE_INFINITY) return "no limit";
  if (!Number.isFinite(value)) return "none";
  if (atMost) return `${limitFigure(value, system)} ${unitOf("speed", system).symbol}`;
  switch (measure) {
    case "ratio":
    case "first-moment":
    case "section-modulus":
    case "second-moment":
      return plain(value, digits);
    default:
      return show(value, measure, system, digits);
  }
}

/** A bare number to some significant figures, without exponent for everyday sizes. */
export function plain(value: number, digits: number): string {
  if (value === 0) return "0";
  const size = Math.floor(Math.log10(Math.abs(value)));
  if (size < -4 || size > 6) return value.toExponential(digits - 1);
  return value.toFixed(Math.min(12, Math.max(0, digits - 1 - size)));
}

/** Demand over resistance, three figures. */
export const showRatio = (ratio: number): string =>
  Number.isFinite(ratio) ? (ratio >= 100 ? ">100" : plain(ratio, 3)) : "no hold";

export const showWords = (words: Words, system: System): string =>
  words.map((word) => (typeof word === "string" ? word : showMeasured(word, system))).join("");
