import { constant, judged } from "@hoopstay/core";
import { INCH } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";
import { refuse } from "../common/require.ts";
import { type ConnectionNote, note } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import { endClearDistance, holeClearDistance } from "./bearing-formulas.ts";
import { type HoleRow, leastSpacing } from "./hole-row.ts";

export const assumedEndDistance = constant(
  "assumed-end-distance",
  "k_e",
  "end distance over bolt diameter, where it is unknown",
  1.5,
  "ratio",
  judged("about the least of table J3.4 of AISC 360-22 for cut ends; a real one is seldom less"),
);

/** Holes and distances of a row, m, known or assumed. */
export interface HoleLayout {
  readonly hole: number;
  readonly spacing: number | null;
  /** Least clear distance in the first and in the second part. */
  readonly clear: readonly [first: number, second: number];
  readonly assumed: readonly ConnectionNote[];
  readonly findings: readonly ConnectionNote[];
}

/** Diameter of a standard hole: 1/16 in more than the bolt, 1/8 in from 1 in up (table J3.3). */
export const standardHole = (diameter: number): number =>
  diameter + (exceeds(INCH, diameter) ? INCH / 16 : INCH / 8);

/** End of a part to the middle of the nearest hole, m, and what the part is called. */
export type PartEnd = readonly [name: string, endDistance: number | null];

/**
 * Hole, spacing and clear distances of a row of bolts through two parts.
 *
 * @throws Refusal `out-of-range` where a hole breaks the end of a part
 */
export function holeLayout(
  row: HoleRow,
  [first, second]: readonly [PartEnd, PartEnd],
  sheet: Worksheet,
): HoleLayout {
  const { diameter } = row;
  const assumed: ConnectionNote[] = [];
  const findings: ConnectionNote[] = [];
  const hole = row.holeDiameter ?? standardHole(diameter);
  if (row.holeDiameter === null) {
    assumed.push(note("hole-diameter", "standard hole for this bolt", hole, "length"));
  } else if (exceeds(hole, standardHole(diameter))) {
    const words = "hole wider than standard: the bearing rules are for standard holes";
    findings.push(note("hole-wide", words, hole, "length"));
  }
  const least = leastSpacing.value * diameter;
  const spacing = row.count === 1 ? null : (row.spacing ?? least);
  if (spacing !== null && row.spacing === null) {
    const words = "bolt spacing unknown: the least allowed, 2 2/3 diameters; safe side";
    assumed.push(note("bolt-spacing", words, spacing, "length"));
  }
  const between = spacing === null ? null : sheet.work(holeClearDistance, [spacing, hole]);
  if (between !== null && !(between > 0)) {
    const mend = "Measure from the middle of one hole to the middle of the next.";
    refuse("out-of-range", "holes that do not run into each other", spacing, mend);
  }
  const clearOf = ([name, given]: PartEnd): number => {
    const end = given ?? assumedEndDistance.value * diameter;
    if (given === null) {
      const words = `end distance in ${name} unknown: 1.5 bolt diameters; measure it`;
      assumed.push(note("end-distance", words, end, "length"));
    }
    const toEnd = sheet.work(endClearDistance, [end, hole], { note: `in ${name}` });
    if (!(toEnd > 0)) {
      const expected = `an end distance in ${name} of more than half the hole`;
      refuse(
        "out-of-range",
        expected,
        end,
        "Measure from the middle of the hole to the tube's end.",
      );
    }
    return between === null ? toEnd : Math.min(toEnd, between);
  };
  return { hole, spacing, clear: [clearOf(first), clearOf(second)], assumed, findings };
}
