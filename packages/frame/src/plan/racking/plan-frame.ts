/** A joint of a plane frame, in the plan of the base. */
export interface FrameNode {
  readonly x: number;
  readonly y: number;
  /** What is held rigidly there. */
  readonly held?: { readonly x?: boolean; readonly y?: boolean; readonly turn?: boolean };
}

/**
 * A straight member from node to node, of the lengths along and of the ways across it: its own axes
 * run from its first node to its second and to the left of that.
 */
export interface FrameMember {
  readonly from: number;
  readonly to: number;
  /** E A, N. */
  readonly axial: number;
  /** E I in the plane, N m2: a beam, rigidly joined. Zero: a bar, pinned at both ends. */
  readonly bending: number;
}

/** A load on a node, N and N m, counter-clockwise seen with x to the right and y up. */
export interface NodeLoad {
  readonly node: number;
  readonly x: number;
  readonly y: number;
  readonly couple: number;
}

/** A line load on a beam, N/m: along it and, linear from its first node to its second, across it. */
export interface MemberLoad {
  readonly member: number;
  readonly along: number;
  readonly acrossFrom: number;
  readonly acrossTo: number;
}

export interface FrameLoads {
  readonly nodes: readonly NodeLoad[];
  readonly members: readonly MemberLoad[];
}

/** What one cross-section of a member carries. */
export interface FrameSection {
  /** Place from the member's first node, m. */
  readonly at: number;
  /** Axial force, N, tension positive. */
  readonly axial: number;
  /** Shear, N: what acts across the member up to there, to its left positive. */
  readonly shear: number;
  /** Moment, N m, E I times the second derivative of the way to the left. */
  readonly moment: number;
}

/** A frame in equilibrium. */
export interface HeldFrame {
  readonly outcome: "held";
  /** x, y, turn of each node. */
  readonly displacements: Float64Array;
  /** Force x, y and couple of what holds each node, on the node; zero where nothing does. */
  readonly reactions: Float64Array;
  /** Of each member: its first end, its last, and between them where its moment peaks. */
  readonly sections: readonly (readonly FrameSection[])[];
}

/** Not held: a mechanism. Unsettled: the result failed its own checks, none is given. */
export type FrameResult = HeldFrame | { readonly outcome: "not-held" | "unsettled" };
