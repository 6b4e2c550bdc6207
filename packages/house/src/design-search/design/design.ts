import type { Anchor } from "@hoopstay/stability";
import type { FittedAnchor } from "../../model/house-model.ts";
import { type DesignRange, designsIn, type TubeChoice } from "../range/design-range.ts";

/** Anchors of a design as this ground rates them; the same list for every design of a layout. */
export interface AnchorLayout {
  /** Null where they stay as they are fitted. */
  readonly perRail: number | null;
  readonly anchors: readonly FittedAnchor[];
  readonly rated: readonly Anchor[];
}

/** One design of a range. */
export interface Design {
  readonly hoop: TubeChoice;
  readonly count: number;
  readonly rail: TubeChoice;
  readonly layout: AnchorLayout;
}

/** The design of a number, from nought to `designsIn`. */
export function designAt(
  { hoops, counts, rails }: DesignRange,
  layouts: readonly AnchorLayout[],
  number: number,
): Design {
  let rest = number;
  const next = <Value>(values: readonly Value[]): Value => {
    const place = rest % values.length;
    rest = (rest - place) / values.length;
    return values[place] as Value;
  };
  return { layout: next(layouts), hoop: next(hoops), rail: next(rails), count: next(counts) };
}

const golden = (Math.sqrt(5) - 1) / 2;

const commonFactor = (one: number, other: number): number =>
  other === 0 ? one : commonFactor(other, one % other);

/**
 * Step from one design looked at to the next: it meets every design once, and the first ones lie all
 * over the range, so that a search that is stopped has seen something of all of it.
 */
export function stepThrough(range: DesignRange): number {
  const all = designsIn(range);
  let step = Math.max(1, Math.round(golden * all));
  while (commonFactor(all, step) !== 1) step += 1;
  return step;
}
