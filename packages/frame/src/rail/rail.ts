/** A straight rail of one section. Places on it are measured from its left end. */
export interface Rail {
  /** Length, m. */
  readonly length: number;
  /** Bending stiffness E I, N m2. */
  readonly stiffness: number;
}

/** A force on the rail, N, up positive. */
export interface PointForce {
  readonly x: number;
  readonly force: number;
}

/** A couple on the rail, N m, counter-clockwise positive with x to the right and up as up. */
export interface PointCouple {
  readonly x: number;
  readonly couple: number;
}

/** Everything that loads a rail except its supports. */
export interface RailLoads {
  /** Uniform load over the whole length, N/m, up positive: the rail's own weight is negative. */
  readonly uniform: number;
  readonly forces: readonly PointForce[];
  readonly couples: readonly PointCouple[];
}

/** A two-way support holds up and down, an anchor only pulls down, ground only pushes up. */
export type SupportKind = "two-way" | "anchor" | "ground";

/** One support of a rail. It is without force where the rail lies undeflected. */
export interface RailSupport {
  readonly kind: SupportKind;
  readonly x: number;
  /** Spring stiffness, N/m, or a support that does not give. */
  readonly stiffness: number | "rigid";
  /** Force beyond which an anchor or the ground gives at constant force, N. */
  readonly cap?: number;
}

/** What a one-way support does: nothing, holds, or gives at its cap. */
export type SupportPart = "idle" | "holding" | "giving";

/**
 * Whether the rail is held. Not held: no forces of the supports, each within what it can do,
 * balance the loads, so the rail moves off. Unsettled: the search for the set of supports at work
 * ended without a result that passes its own checks; no forces are given.
 */
export type RailOutcome = "held" | "not-held" | "unsettled";
