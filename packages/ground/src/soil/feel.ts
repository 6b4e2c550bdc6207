import { type Citation, judged } from "@hoopstay/core";
import type { SoilClass } from "./soil-class.ts";

interface FeelRow {
  readonly likeness: "sand" | "clay";
  /** What the owner does and sees. */
  readonly words: string;
  readonly soilClass: SoilClass;
  readonly citation: Citation;
}

const clayReason = (state: string, low: number, given: SoilClass): Citation =>
  judged(
    `thumb tests and c_u bands of Terzaghi and Peck [memory]: ${state}, c_u from ${low} kPa; the ` +
      `best class whose c_u is not above that: ${given}; safe side`,
  );
const sandReason = (state: string, low: number, given: SoilClass): Citation =>
  judged(
    `rod tests of common practice for the states of EM 1110-2-2504 table 3-1: ${state}, phi from ` +
      `${low} deg; the best class whose phi is not above that: ${given}; safe side`,
  );

/**
 * Tests with hand, heel and a 1/2 in steel rod. Each stands for a band of strength, and gives the
 * best class whose presumed strength does not exceed the low end of that band.
 */
export const feelRows = {
  "fist sinks in": {
    likeness: "clay",
    words: "a fist sinks in, or the soil squeezes out between the fingers",
    soilClass: "5",
    citation: clayReason("very soft", 0, "5"),
  },
  "thumb pushes in easily": {
    likeness: "clay",
    words: "the thumb pushes in easily, several centimetres",
    soilClass: "5",
    citation: clayReason("soft", 12, "5"),
  },
  "thumb pushes in with effort": {
    likeness: "clay",
    words: "the thumb pushes in with some effort; a boot heel leaves a clear print",
    soilClass: "5",
    citation: clayReason("firm", 25, "5"),
  },
  "thumb only dents": {
    likeness: "clay",
    words: "the thumb leaves a dent only with great effort; a boot heel barely dents it",
    soilClass: "4B",
    citation: clayReason("stiff", 50, "4B"),
  },
  "thumbnail dents": {
    likeness: "clay",
    words: "the thumb leaves nothing, the thumbnail dents it",
    soilClass: "3",
    citation: clayReason("very stiff", 100, "3"),
  },
  "thumbnail hardly dents": {
    likeness: "clay",
    words: "even the thumbnail hardly marks it",
    soilClass: "2",
    citation: clayReason("hard", 200, "2"),
  },
  "sand runs": {
    likeness: "sand",
    words: "a hole will not stand, the sand runs; a rod pushes in deep by hand",
    soilClass: "5",
    citation: sandReason("very loose to loose", 28, "5"),
  },
  "rod driven easily": {
    likeness: "sand",
    words: "the rod goes in easily with a 5 lb hammer",
    soilClass: "4B",
    citation: sandReason("medium", 31, "4B"),
  },
  "rod driven hard": {
    likeness: "sand",
    words: "the rod goes in a foot with hard blows of a 5 lb hammer",
    soilClass: "3",
    citation: sandReason("dense", 37, "3"),
  },
  "rod stops": {
    likeness: "sand",
    words: "the rod stops after a few inches, and not on a stone",
    soilClass: "2",
    citation: sandReason("very dense", 41, "2"),
  },
} as const satisfies Record<string, FeelRow>;

export type Feel = keyof typeof feelRows;
