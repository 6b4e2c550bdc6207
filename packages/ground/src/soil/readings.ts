import { isRated, presumedClay, presumedSand } from "./class-values.ts";
import type { Clay, Sand, Soil } from "./soil.ts";

/** The soils to be run, the lower kept; or why none may be presumed. */
export type Readings =
  | { readonly soils: readonly (Sand | Clay)[] }
  | { readonly needs: "pull test" | "engineer"; readonly reason: string };

/**
 * What the ground is taken to be: the engineer's values, or those of its class, as sand and as clay
 * where the owner cannot tell. Class 5 and unknown ground are tested; rock is not covered.
 */
export function readingsOf(soil: Soil): Readings {
  if (soil.basis === "theory") return { soils: [soil.values] };
  const { soilClass, likeness, measured } = soil;
  if (soilClass === null) {
    return {
      needs: "pull test",
      reason: "The ground is unknown: nothing may be presumed of it (24 CFR 3285.202).",
    };
  }
  if (soilClass === "1") {
    return {
      needs: "engineer",
      reason: "Rock is not covered: it takes a drilled anchor and someone who rates it.",
    };
  }
  if (!isRated(soilClass)) {
    return {
      needs: "pull test",
      reason: "Class 5 ground (loose fill, peat, organic or soft clay) holds what a test shows.",
    };
  }
  const both = { sand: presumedSand(soilClass), clay: presumedClay(soilClass, measured) };
  return { soils: likeness === "unknown" ? [both.sand, both.clay] : [both[likeness]] };
}
