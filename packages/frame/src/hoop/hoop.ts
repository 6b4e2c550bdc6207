import type { HoopLine } from "./hoop-line.ts";
import type { PlanePoint } from "./hoop-piece.ts";

/** Area (m2), second moment of area in the plane (m4) and Young's modulus (Pa) of a member. */
export interface MemberSection {
  readonly A: number;
  readonly I: number;
  readonly E: number;
}

/** Where a bar is joined: at a place on the hoop (s, m), or at a free joint (index in `joints`). */
export type BarJoint = { readonly s: number } | { readonly joint: number };

/** A pinned end carries no moment; a rigid one turns with its joint. */
export type BarEnd = "pinned" | "rigid";

/**
 * A straight bar: a tie, a brace, a part of a truss. It takes tension and compression alike; a bar
 * that cannot is left out by the caller, in a second frame.
 */
export interface HoopBar {
  readonly from: BarJoint;
  readonly to: BarJoint;
  readonly fromEnd: BarEnd;
  readonly toEnd: BarEnd;
  readonly section: MemberSection;
  /** Weight per length, N/m. */
  readonly weight: number;
}

/**
 * A hoop of one section with hinges at given places and bars. Hoop and bars lie in one plane, bend
 * (Euler-Bernoulli) and stretch; shear deformation, loads on the deformed shape and buckling are
 * left out.
 */
export interface Hoop {
  readonly line: HoopLine;
  readonly section: MemberSection;
  /** Places of hinges in the hoop, m; not at its feet, whose hinges are part of how it is held. */
  readonly hinges: readonly number[];
  /** Joints of bars off the hoop. */
  readonly joints: readonly PlanePoint[];
  readonly bars: readonly HoopBar[];
}

/**
 * A unit load:
 *
 * - normal: 1 N/m toward the hoop's surface between two places;
 * - weight: 1 N downward on each metre of the hoop's developed length;
 * - push: 1 N along +x on each metre of the hoop's developed length;
 * - bar-weight: the weight of all bars, as given in them;
 * - point: a force (N) and a counter-clockwise couple (N m) at a place.
 */
export type HoopLoad =
  | { readonly kind: "normal"; readonly from: number; readonly to: number }
  | { readonly kind: "weight" }
  | { readonly kind: "push" }
  | { readonly kind: "bar-weight" }
  | {
      readonly kind: "point";
      readonly s: number;
      readonly x: number;
      readonly z: number;
      readonly couple: number;
    };
