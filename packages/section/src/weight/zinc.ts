import { cite } from "@hoopstay/core";

/** Least coating grade of hot-dipped tube on one face, m, by nominal wall. */
export const zincThickness = {
  thin: 45e-6,
  thick: 75e-6,
  fromWall: 0.125 * 0.0254,
  citation: cite("astm-a123", "table 1, pipe and tubing", "second-hand"),
} as const;

/** Slack, m, by which a wall read from text may miss 1/8 in through rounding. */
const edge = 1e-9;

/**
 * Zinc on one face of hot-dipped tube.
 *
 * Left out: pre-galvanized strip (about 20 um), thicker local coating, drainage runs.
 *
 * Source: ASTM A123/A123M-24, table 1, as quoted by the American Galvanizers Association.
 *
 * @param nominalWall m
 * @returns m: 45 um under a wall of 1/8 in, 75 um from 1/8 in up
 * @example zincOnOneFace(0.065 * 0.0254) // 45e-6
 */
export function zincOnOneFace(nominalWall: number): number {
  return nominalWall < zincThickness.fromWall - edge ? zincThickness.thin : zincThickness.thick;
}
