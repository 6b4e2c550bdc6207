/**
 * The base of a house in plan: two straight rails along y, a span apart, with what ties them. Places
 * y run from the rails' front ends. Ways u and forces H are positive toward +x; turns theta about y
 * and moments M of the feet may have either sense, the same everywhere.
 */
export interface Base {
  /** Length of both rails, m. */
  readonly length: number;
  /** Distance between the rails' axes, m. */
  readonly span: number;
  /** The rail at lower x. */
  readonly left: RailInPlan;
  readonly right: RailInPlan;
  readonly hoops: readonly HoopOnRails[];
  readonly crossMembers: readonly CrossMember[];
  readonly sideHold: SideHold;
}

export type RailSide = "left" | "right";

export interface RailInPlan {
  /** Bending stiffness E I about the vertical axis, N m2. */
  readonly bending: number;
  /** Twist stiffness G J, N m2. */
  readonly twist: number;
}

/** A hoop as the rails feel it. */
export interface HoopOnRails {
  readonly y: number;
  /**
   * Stiffness of its feet against u and theta of the left and u and theta of the right foot, four
   * rows of four, N/m, N and N m, at the axes of the rails: vertical movement is held or condensed
   * out. A foot a height e above the axis has u + e theta (theta right-handed): its caller moves
   * stiffness and forces to the axis. A hoop swaying whole asks for no force.
   */
  readonly stiffness: ArrayLike<number>;
}

/** A beam from rail to rail; its ends turn with the rails and do not move up. */
export interface CrossMember {
  readonly y: number;
  /** E A, N. */
  readonly axial: number;
  /** E I for bending in the vertical plane, N m2; zero where its ends are hinged. */
  readonly bending: number;
}

/** A spring that holds a rail sideways. */
export interface LateralAnchor {
  readonly rail: RailSide;
  readonly y: number;
  /** N/m. */
  readonly stiffness: number;
}

/**
 * What takes the net side force: springs, or a line load on both rails alike that varies linearly
 * along them so that it balances force and turning.
 */
export type SideHold = "evenly" | readonly LateralAnchor[];

/**
 * Ways in which the stiff rails can still move without bending anything: both alike (sway, turn),
 * against each other (spread, spread-turn), each about its own axis. One name for each way left.
 */
export const looseMotions = [
  "sway",
  "turn",
  "spread",
  "spread-turn",
  "twist-left",
  "twist-right",
] as const;
export type LooseMotion = (typeof looseMotions)[number];

/** Not held: a motion is loose. Unsettled: the result failed its own checks, none is given. */
export type PlanOutcome = "held" | "not-held" | "unsettled";
