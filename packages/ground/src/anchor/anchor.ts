/** One plate of a screw anchor: diameter and vertical depth of its centre, m. */
export interface Helix {
  readonly diameter: number;
  readonly depth: number;
}

/** What bends under a sideways pull. */
export interface Shaft {
  /** Breadth facing the pull, m: the diameter of a rod or a tube. */
  readonly diameter: number;
  /** Plastic section modulus, m3. */
  readonly plasticModulus: number;
  /** Yield stress, Pa; 36 ksi where unknown. */
  readonly yieldStress?: number;
  /** Height of the pull above ground, m. */
  readonly pullHeight: number;
}

/** A plate set against the shaft near the surface; top and height of the plate itself, m. */
export interface Stabiliser {
  readonly breadth: number;
  readonly top: number;
  readonly height: number;
}

export interface ScrewAnchor {
  readonly kind: "screw";
  readonly helices: readonly Helix[];
  readonly shaft: Shaft;
  readonly stabiliser?: Stabiliser;
}

/** A plate driven down and turned flat by its cable. Depth is that of its centre once turned, m. */
export interface DrivenPlate {
  readonly kind: "driven plate";
  readonly area: number;
  readonly depth: number;
}

export interface Stake {
  readonly kind: "stake";
  readonly shaft: Shaft;
  /** Vertical depth of the point, m. */
  readonly depth: number;
}

/** Wooden pickets in a row, lashed to each other; the first number is the nearest to the load. */
export const picketSets = ["1", "1-1", "2-1", "1-1-1", "3-2-1"] as const;

export interface PicketHoldfast {
  readonly kind: "picket set";
  readonly set: (typeof picketSets)[number];
}

/** A buried timber or log, across the pull. */
export interface Deadman {
  readonly kind: "deadman";
  readonly body: "timber" | "log";
  /** Height of the face, m: thickness of a timber, diameter of a log. */
  readonly face: number;
  readonly length: number;
  /** Mean depth of the face, m. */
  readonly depth: number;
}

export type Anchor = ScrewAnchor | DrivenPlate | Stake | PicketHoldfast | Deadman;

/** Which way each kind may be pulled here. */
export const pullWays: Readonly<Record<Anchor["kind"], string>> = {
  screw: "along the shaft; slanted where the ground and a stabiliser allow it to be rated",
  "driven plate": "along its cable, as it was set; any other way needs a test in that direction",
  stake: "sideways only, square to the stake; straight up it counts nothing",
  "picket set": "along the ground, in the line of the row",
  deadman: "by a cable that rises from 14 to 45 degrees out of the ground",
};

/** A pull: angles in rad, 0 to pi/2. */
export interface Pull {
  /** Between tether and shaft (or cable) of the anchor. */
  readonly fromShaft: number;
  /** Between tether and ground. */
  readonly aboveGround: number;
}

/** Depth of the deepest point that counts, m; 4 ft for a picket set (NAVEDTRA 14251). */
export function deepestOf(anchor: Anchor): number {
  if (anchor.kind === "screw") return Math.max(...anchor.helices.map((helix) => helix.depth));
  return anchor.kind === "picket set" ? 4 * 0.3048 : anchor.depth;
}
