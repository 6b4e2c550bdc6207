import { type Citation, cite, judged } from "@hoopstay/core";

/** Factors on an ultimate capacity, with where they come from. */
export const safetyFactors = {
  theory: {
    factor: 3,
    citation: cite("navfac-dm-7.02", "pile uplift by static formula, 3", "memory"),
  },
  "theory with tests of this anchor type on this field": {
    factor: 2,
    citation: cite("navfac-dm-7.02", "pile uplift by static formula, 2 with load tests", "memory"),
  },
  table: {
    factor: 2,
    citation: judged(
      "holding powers of the manuals taken as ultimate; 2 as DM 7.02 asks of a deadman [memory]",
    ),
  },
} as const satisfies Record<string, { factor: number; citation: Citation }>;

/** The factor on theory and on presumptive capacity, which is theory on presumed soil. */
export const theoryFactor = (testedHere: boolean) =>
  safetyFactors[testedHere ? "theory with tests of this anchor type on this field" : "theory"];
