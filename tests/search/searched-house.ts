import { type DesignRange, type PathComplaint, readRange, type Site } from "@hoopstay/house";
import { anchorLayouts } from "../../packages/house/src/design-search/design/anchor-layouts.ts";
import type { Design } from "../../packages/house/src/design-search/design/design.ts";
import { designAt } from "../../packages/house/src/design-search/design/design.ts";
import { designsIn } from "../../packages/house/src/design-search/range/design-range.ts";
import { exampleWith } from "../compare/today.ts";

const today14 = {
  outside: "2.375 in",
  gauge: 14,
  gauge_table: "birmingham",
  standard: "other",
  galvanized: true,
  yield: "50 ksi",
  tensile: "55 ksi",
};

/** Tubes, numbers and anchors far from one another. */
export const wide = {
  hoops: {
    tubes: [today14, { ...today14, gauge: 18 }, { size: "HSS2.375X0.125" }],
    counts: [7, 9, 13],
  },
  rails: { tubes: ["HSS4X3X3/16", "HSS4X3X1/8", "HSS3X3X1/4"] },
  anchors: { kind: "screw", per_rail: [4, 8] },
};

/** The range of a house file with this in it, and what is wrong with it. */
export function rangeOf(search: unknown, changes: Record<string, unknown> = {}) {
  const house = exampleWith({ ...changes, ...(search === undefined ? {} : { search }) });
  const complaints: PathComplaint[] = [];
  return { today: house, range: readRange(house, complaints), complaints };
}

/** Every so many designs of a range. */
export function someDesigns(range: DesignRange, site: Site, every: number): Design[] {
  const { house } = rangeOf(undefined).today;
  const layouts = anchorLayouts(range, house, site);
  const numbers = Array.from({ length: designsIn(range) }, (_, number) => number);
  return numbers
    .filter((number) => number % every === 0)
    .map((number) => designAt(range, layouts, number));
}
