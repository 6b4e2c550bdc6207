import { type Citation, cite, constant, judged } from "@hoopstay/core";

const factorOf = (id: string, on: string, value: number, citation: Citation) =>
  constant(`${id}-factor`, "FS", `safety factor on ${on}`, value, "ratio", citation);

/** Factors on an ultimate capacity, with where they come from. */
export const safetyFactors = {
  theory: factorOf(
    "theory",
    "theory",
    3,
    cite("navfac-dm-7.02", "pile uplift by static formula, 3", "memory"),
  ),
  "theory with tests of this anchor type on this field": factorOf(
    "tested-theory",
    "theory, with tests",
    2,
    cite("navfac-dm-7.02", "pile uplift by static formula, 2 with load tests", "memory"),
  ),
  table: factorOf(
    "military-table",
    "a military table",
    2,
    judged(
      "holding powers of the manuals taken as ultimate; 2 as DM 7.02 asks of a deadman [memory]",
    ),
  ),
} as const;

/** The factor on theory and on presumptive capacity, which is theory on presumed soil. */
export const theoryFactor = (testedHere: boolean) =>
  safetyFactors[testedHere ? "theory with tests of this anchor type on this field" : "theory"];
