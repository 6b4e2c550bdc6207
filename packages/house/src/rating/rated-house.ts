import type { AnchorKind } from "../model/anchor-kind.ts";
import type { FittedAnchor, House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { type Rating, rateKind } from "./rating.ts";

/** A house whose anchors carry what this ground lets them, and where each pull comes from. */
export interface RatedHouse {
  readonly house: House;
  /** Of every fitted anchor, in the order of the file; null where its pull was given. */
  readonly ratings: readonly (Rating | null)[];
}

/** Beyond five plate breadths a neighbour takes nothing. */
const clearOf = 5;

/**
 * Gives every fitted anchor that names a kind its allowable pull on this ground. An anchor that
 * nothing rates counts nothing, and the review says so.
 */
export function rateHouse(house: House, site: Site): RatedHouse {
  const { anchors, anchorKinds } = house;
  if (!anchors.some(({ kind }) => kind !== null)) {
    return { house, ratings: anchors.map(() => null) };
  }
  const known = new Map<string, Rating>();
  const ratings = anchors.map((anchor) => {
    const kind = anchorKinds.find(({ id }) => id === anchor.kind);
    if (!kind) return null;
    const angle = Math.asin(Math.min(1, -anchor.toward[2]));
    const spacing = nearestNeighbour(anchor, kind, anchors);
    const key = `${kind.id} ${angle} ${spacing}`;
    const rating = known.get(key) ?? rateKind(kind, site, angle, spacing);
    known.set(key, rating);
    return rating;
  });
  const rated = anchors.map((anchor, index): FittedAnchor => {
    const rating = ratings[index];
    return rating ? { ...anchor, pull: rating.allowable ?? 0 } : anchor;
  });
  return { house: { ...house, anchors: rated }, ratings };
}

function nearestNeighbour(
  anchor: FittedAnchor,
  { breadth }: AnchorKind,
  anchors: readonly FittedAnchor[],
): number | undefined {
  if (breadth === null) return undefined;
  const apart = anchors
    .filter((other) => other !== anchor)
    .map((other) => Math.hypot(other.x - anchor.x, other.y - anchor.y));
  const nearest = Math.min(...apart);
  // In one hole they share all they have: half each, as at no distance.
  return nearest < clearOf * breadth ? Math.max(nearest, 1e-6) : undefined;
}
