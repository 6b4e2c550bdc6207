import { cite } from "@hoopstay/core";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

/** Angles: upright leg, lying leg, thickness, inches. */
const rows = [
  ["2", "2", "1/8"],
  ["2", "2", "3/16"],
  ["2", "2", "1/4"],
  ["3", "2", "1/4"],
  ["3", "3", "1/4"],
] as const;

/** Rolled angles. */
export const angles: readonly CatalogueSize[] = rows.map(([upright, lying, thickness]) => ({
  name: `L${upright}X${lying}X${thickness}`,
  aliases: [],
  shape: {
    kind: "angle",
    legs: [tradeInches(upright), tradeInches(lying)],
    thickness: tradeInches(thickness),
  },
  citation: cite("aisc-shapes-15", "angles, dimensions", "read"),
}));
