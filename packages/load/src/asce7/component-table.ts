import { judged } from "@hoopstay/core";
import type { Shell } from "../shell/shell.ts";
import type { QuarterReading } from "../shell/zones.ts";
import {
  type ArchField,
  archField,
  archPartsAt,
  type ComponentCoefficients,
  componentEdgeFactor,
} from "./component-arch.ts";
import { gablePerimeter } from "./component-gable.ts";
import { cornerOutward, cornerWidth, wallInward, wallOutward } from "./component-walls.ts";
import { freeWallDrag } from "./constants.ts";
import type { Covering } from "./wind-surfaces.ts";

/** What components feel of one covering, before inside pressure. */
export interface ComponentTable {
  readonly shell: Shell;
  readonly covering: Covering;
  readonly reading: QuarterReading | undefined;
  /** m */
  readonly cornerWidth: number;
  /** Slope of the arch where it springs, rad from level. */
  readonly springSlope: number;
  /** Null with the film off: nothing is left on the arch that wind could press on. */
  readonly arch: ArchField | null;
}

export const openComponentCitation = judged(
  "an open house's components take the worse of the free-roof sets and of the covered ones",
);
export const bareWallCitation = judged(
  "an end wall left standing is a free wall for its studs too, 1.5 times that near its corners",
);

/** `reading` where a reviewer has fixed one; else a place near a quarter's border feels both. */
export const componentTable = (
  shell: Shell,
  covering: Covering,
  reading?: QuarterReading,
): ComponentTable => ({
  shell,
  covering,
  reading,
  cornerWidth: cornerWidth.evaluate(shell.b, shell.h),
  springSlope: Math.PI / 2 - shell.arc.springAngle,
  arch: archField(shell, covering),
});

/**
 * GC_p of a component of an end wall or of a side wall's strip.
 *
 * @param corner within the corner width of an upright edge of the wall
 * @param area effective wind area, m2
 */
export function wallComponent(
  { covering }: ComponentTable,
  corner: boolean,
  area: number,
): ComponentCoefficients {
  if (covering === "bare") {
    const push = freeWallDrag.value * (corner ? componentEdgeFactor.value : 1);
    return { inward: push, outward: -push };
  }
  const outward = corner ? cornerOutward : wallOutward;
  return { inward: wallInward.evaluate(area), outward: outward.evaluate(area) };
}

/**
 * GC_p of a component on the arch, or null with the film off.
 *
 * @param archShare its place, share of the developed arch from the left springing to the right
 * @param edge within the corner width of an end of the house or of a springing
 * @param area effective wind area, m2; counts at edges only
 */
export function archComponent(
  { shell, reading, arch, springSlope }: ComponentTable,
  archShare: number,
  edge: boolean,
  area: number,
): ComponentCoefficients | null {
  if (!arch) return null;
  const parts = archPartsAt(shell, archShare, reading);
  let inward = Number.NEGATIVE_INFINITY;
  let outward = Number.POSITIVE_INFINITY;
  if (parts.quarter) ({ inward, outward } = arch.quarter);
  if (parts.centre) {
    inward = Math.max(inward, arch.centre.inward);
    outward = Math.min(outward, arch.centre.outward);
  }
  if (!edge) return { inward, outward };
  const perimeter = gablePerimeter(springSlope);
  const factor = componentEdgeFactor.value;
  return {
    inward: Math.max(inward, factor * inward, perimeter.inward.evaluate(area)),
    outward: Math.min(outward, factor * outward, perimeter.outward.evaluate(area)),
  };
}
