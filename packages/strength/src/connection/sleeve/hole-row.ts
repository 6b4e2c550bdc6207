import { cite, constant } from "@hoopstay/core";
import { INCH } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";
import { refuse, requireCount, requireLength } from "../common/require.ts";
import type { NotCovered } from "../common/strength.ts";

export const leastSpacing = constant(
  "least-bolt-spacing",
  "k_s",
  "least bolt spacing over bolt diameter",
  8 / 3,
  "ratio",
  cite("aisc-360-22", "J3.4, 2 2/3 d", "memory"),
);

/** Play of the largest oversized hole in bolts to 7/8 in, m (table J3.3, from memory). */
const widestPlay = (3 / 16) * INCH;

/** A row of bolts as measured, m; null where unknown. */
export interface HoleRow {
  readonly diameter: number;
  readonly count: number;
  readonly spacing: number | null;
  readonly holeDiameter: number | null;
}

/** Refuses a row of bolts that cannot exist. */
export function requireHoleRow({ count, diameter, spacing, holeDiameter }: HoleRow): void {
  requireCount(count, "a count of bolts");
  if (spacing !== null) requireLength(spacing, "a bolt spacing");
  if (holeDiameter === null) return;
  requireLength(holeDiameter, "a hole diameter");
  if (holeDiameter >= diameter) return;
  const mend = "The hole and the bolt may have been exchanged.";
  refuse("sizes-disagree", "a hole not smaller than its bolt", holeDiameter, mend);
}

/** Why a row of bolts lies outside the rules; null where it does not. */
export function outsideHoleRules(row: HoleRow): NotCovered | null {
  const { count, diameter, holeDiameter, spacing } = row;
  if (exceeds(holeDiameter ?? diameter, diameter + widestPlay)) {
    const reason = "the holes are more than 3/16 in wider than the bolt, wider than oversized ones";
    return {
      covered: false,
      id: "hole-oversized",
      reason,
      mend: "Use the bolt that fits the hole.",
    };
  }
  if (count === 1 || spacing === null) return null;
  if (!exceeds(leastSpacing.value * diameter, spacing)) return null;
  const reason = "the bolts are closer than 2 2/3 diameters, nearer than the rules allow";
  return { covered: false, id: "bolt-spacing", reason, mend: "Set the bolts farther apart." };
}
