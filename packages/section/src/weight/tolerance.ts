import { type Citation, cite, judged } from "@hoopstay/core";
import type { Convention } from "../tube/tube.ts";

/** Ends of a tolerance, as factors on the nominal value. */
export interface Tolerance {
  readonly low: number;
  readonly high: number;
  readonly citation: Citation;
}

const weldedAmerican: Tolerance = {
  low: 0.9,
  high: 1.1,
  citation: cite("astm-a500", "permissible variation of wall thickness, 10 %", "memory"),
};

const european = (citation: Citation): Tolerance => ({ low: 0.9, high: 1.1, citation });

/** Wall tolerance of hollow sections, on the nominal wall. */
export const wallTolerance: Readonly<Record<Convention, Tolerance>> = {
  AISC: weldedAmerican,
  "ASTM A1085": {
    ...weldedAmerican,
    citation: judged("A1085 allows 5 % under; the 10 % of A500 is kept, which errs safe"),
  },
  "ASTM A1065": {
    ...weldedAmerican,
    citation: judged("A1065 follows plate tolerances; the 10 % of A500 is kept, which errs safe"),
  },
  "EN 10219-2": european(cite("en-10219-2", "table 2, wall thickness up to 5 mm, 10 %", "memory")),
  "EN 10210-2": european(cite("en-10210-2", "table 2, wall thickness, 10 % under", "memory")),
  other: {
    low: 0.83,
    high: 1.1,
    citation: cite(
      "astm-a513",
      "hot-rolled wall 0.065 in, diameter 1.313 to 3.75 in: 0.011 in under, 17 %",
      "second-hand",
    ),
  },
};

/** On the weight of an angle: rolling tolerance, and the fillets that are left out. */
export const angleTolerance: Tolerance = {
  low: 0.975,
  high: 1.04,
  citation: judged(
    "A6 allows a shape 2.5 % either way (from memory); 1.5 % more above for the fillets left out",
  ),
};

/** On the weight of flats and round bars. */
export const barTolerance: Tolerance = {
  low: 0.95,
  high: 1.05,
  citation: judged(
    "A6 thickness and width limits of small bars add up to about 5 % (from memory); both sides",
  ),
};
