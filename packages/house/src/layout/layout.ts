import { judged } from "@hoopstay/core";
import { illinoisSpacing } from "@hoopstay/ground";
import type { FittedAnchor, House, Rail } from "../model/house-model.ts";
import { type RailSide, railSides, sideSign } from "../rail-pull/case-on-rails.ts";

/** Where a tether leads, seen from its rail. */
export type TetherLead = "upright" | "out" | "in" | "front" | "back";

/** A kind of anchor to be counted and placed. */
export interface HoldDownKind {
  readonly id: string;
  readonly words: string;
  /** Allowable pull along the tether, ASD, N. */
  readonly allowable: number;
  /** Tether's angle above the ground, rad; pi/2 where it leads upright. */
  readonly angle: number;
  readonly lead: TetherLead;
  /** Stiffness along the tether, N/m. */
  readonly stiffness: number;
  /** Least spacing, m: five plate diameters. */
  readonly leastSpacing: number;
}

/** One anchor on a rail. */
export interface RailAnchor {
  readonly name: string;
  readonly side: RailSide;
  /** Place from the middle of the house, toward the front, m. */
  readonly along: number;
  readonly allowable: number;
  readonly stiffness: number;
  /** Unit vector from the rail toward the anchor; the third part is negative (down). */
  readonly toward: readonly [number, number, number];
}

/** Distances of the outermost anchors from the ends of the rail's bearing, m. */
export const endInsets = [0, 0.3, 0.6] as const;
export const endInsetsCitation = judged(
  "three insets are tried; none beyond the 2 ft of Illinois 77-870.220",
);

/** Fewest and most anchors on a rail at an inset of the end ones; none where it has no room. */
export function countsAt(
  { front, back }: Rail,
  inset: number,
  leastSpacing: number,
): { readonly fewest: number; readonly most: number } {
  const between = front + back - 2 * inset;
  // A rounding of a nanometre does not cost an anchor.
  const gaps = Math.ceil(between / illinoisSpacing.between - 1e-9);
  return {
    fewest: Math.max(2, gaps + 1),
    most: between > 0 ? Math.floor(between / leastSpacing + 1e-9) + 1 : 0,
  };
}

/** Places of equally spaced anchors along a rail, back to front, from the middle, m. */
export const equalPlaces = ({ front, back }: Rail, count: number, inset: number): number[] =>
  Array.from(
    { length: count },
    (_, at) => -back + inset + ((front + back - 2 * inset) * at) / (count - 1),
  );

/** Unit vector of a tether. */
export function towardOf(
  { lead, angle }: Pick<HoldDownKind, "lead" | "angle">,
  side: RailSide,
): RailAnchor["toward"] {
  if (lead === "upright") return [0, 0, -1];
  const level = Math.cos(angle);
  const out = sideSign[side];
  const [x, y] = { out: [out, 0], in: [-out, 0], front: [0, 1], back: [0, -1] }[lead] as [
    number,
    number,
  ];
  return [level * x, level * y, -Math.sin(angle)];
}

/** Both rails with anchors of one kind at the same places. */
export function anchorsAt(kind: HoldDownKind, places: readonly number[]): RailAnchor[] {
  return railSides.flatMap((side) =>
    places.map((along, at) => ({
      name: `${side === "left" ? "L" : "R"}${places.length - at}`,
      side,
      along,
      allowable: kind.allowable,
      stiffness: kind.stiffness,
      toward: towardOf(kind, side),
    })),
  );
}

/** Anchors as a house carries them: for all checks of a review. */
export const fittedAnchors = (anchors: readonly RailAnchor[], house: House): FittedAnchor[] =>
  anchors.map(({ name, side, along, allowable, toward }) => ({
    name,
    side,
    x: (sideSign[side] * house.lines.span) / 2,
    y: along,
    kind: null,
    pull: allowable,
    toward,
  }));

/**
 * The anchors of a house that stand on a rail. Those in the middle pull on no rail: they are left
 * out here, which loads the others more.
 *
 * @param stiffness along the tether, N/m, by anchor
 */
export const anchorsOnRails = (
  { anchors }: House,
  stiffness: (anchor: FittedAnchor) => number,
): RailAnchor[] =>
  anchors.flatMap((anchor) => {
    const { name, side, y, pull, toward } = anchor;
    if (side === "middle") return [];
    return [{ name, side, along: y, allowable: pull, stiffness: stiffness(anchor), toward }];
  });
