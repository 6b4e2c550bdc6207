import {
  type Anchor,
  type BaseLine,
  partsAlong,
  type SlidingWind,
  slidingWindOf,
  type TetherParts,
} from "@hoopstay/stability";
import type { HeldRows } from "./held-rows.ts";

/** A row of sliding: the wind, its horizontal size per unit of K_d q_h, and the tethers along it. */
export interface SlidingRow {
  readonly wind: SlidingWind;
  readonly h: number;
  readonly parts: TetherParts;
}

/** The two rail lines, and the anchors that hold. */
export interface SlidingHold {
  readonly right: BaseLine;
  readonly left: BaseLine;
  readonly anchors: readonly Anchor[];
}

/** One row of a table, with or without the arch's horizontal part. */
export function slidingRow(
  rows: HeldRows,
  row: number,
  withoutArch: boolean,
  { right, left, anchors }: SlidingHold,
): SlidingRow {
  const wind = slidingWindOf(rows, row, withoutArch, right, left);
  const h = Math.sqrt(wind.fx * wind.fx + wind.fy * wind.fy);
  const size = h > 0 ? h : 1;
  return { wind, h, parts: partsAlong(anchors, 1, wind.fx / size, wind.fy / size) };
}

/** Every row: where a slope turns the slide, none is outdone by another. */
export function allSlidingRows(rows: HeldRows, hold: SlidingHold): SlidingRow[] {
  return Array.from({ length: 2 * rows.count }, (_, at) =>
    slidingRow(rows, at >> 1, at % 2 === 1, hold),
  );
}

/** What makes sliding worse: the more of each, the worse. */
const harms = ({ wind, h, parts }: SlidingRow): readonly number[] => [
  h,
  wind.fz,
  wind.turnRight,
  wind.turnLeft,
  -parts.against,
  parts.left,
  parts.right,
  parts.middle,
];

const outdoes = (one: readonly number[], other: readonly number[]): boolean =>
  one.every((value, place) => value >= (other[place] as number));

/**
 * The rows that can govern sliding straight along the wind with these anchors, whatever the weight:
 * none of them is outdone by another in horizontal wind, uplift, turning and tethers at once.
 */
export function worstSlidingRows(rows: HeldRows, hold: SlidingHold): SlidingRow[] {
  let kept: { readonly row: SlidingRow; readonly harm: readonly number[] }[] = [];
  for (const row of allSlidingRows(rows, hold)) {
    const harm = harms(row);
    if (kept.some((known) => outdoes(known.harm, harm))) continue;
    kept = kept.filter((known) => !outdoes(harm, known.harm));
    kept.push({ row, harm });
  }
  // The strongest wind first: what it leaves of the limit is soon too low for the others.
  return kept.map(({ row }) => row).sort((one, other) => other.h - one.h);
}
