import { cite } from "@hoopstay/core";
import { INCH } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";
import { type ConnectionNote, note } from "../common/strength.ts";
import type { Wall } from "../common/wall.ts";

/** Least leg by the thickness of the thinner part, in: `thinner` is the greatest of its row. */
export const leastLegs = {
  citation: cite("aisc-360-22", "table J2.4; first row read, the others", "memory"),
  rows: [
    { thinner: 1 / 4, leg: 1 / 8 },
    { thinner: 1 / 2, leg: 3 / 16 },
    { thinner: 3 / 4, leg: 1 / 4 },
    { thinner: Number.POSITIVE_INFINITY, leg: 5 / 16 },
  ],
} as const;

/** Material under 1/4 in: the leg along its edge is at most its thickness (J2.2b, read). */
const edgeRuleBelow = INCH / 4;

/** A fillet is at least four legs long (J2.2b, read). */
const leastLegsLong = 4;

/** Least leg of a fillet weld for the thinner part joined, m. */
export function leastLeg(thinner: number): number {
  const row = leastLegs.rows.find((one) => !exceeds(thinner, one.thinner * INCH));
  return (row ?? leastLegs.rows[3]).leg * INCH;
}

/**
 * Rules of J2.2b that a weld breaks. They lower nothing: what a leg too large or too small can take is
 * in the strengths of weld and walls.
 */
export function weldFindings(
  { leg, length }: { readonly leg: number; readonly length: number },
  walls: readonly Wall[],
): readonly ConnectionNote[] {
  const findings: ConnectionNote[] = [];
  const thinner = Math.min(...walls.map((part) => part.wall));
  const least = leastLeg(thinner);
  if (exceeds(least, leg)) {
    const words = "weld leg under the least of table J2.4 for the thinner part";
    findings.push(note("weld-leg-small", words, least, "length"));
  }
  if (exceeds(edgeRuleBelow, thinner) && exceeds(leg, thinner)) {
    const words =
      "weld leg larger than the thinner wall: the wall gives way first, and it may burn through";
    findings.push(note("weld-leg-large", words, thinner, "length"));
  }
  if (exceeds(leastLegsLong * leg, length)) {
    const words = "weld shorter than four legs";
    findings.push(note("weld-short", words, leastLegsLong * leg, "length"));
  }
  return findings;
}
