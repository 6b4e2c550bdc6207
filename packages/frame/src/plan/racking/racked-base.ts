import type { RailSide } from "../base.ts";
import type { FrameSection } from "./plan-frame.ts";

/** The base of a house as a frame in plan; places y run from the end where it is pulled. */
export interface RackedBase {
  /** Length of both rails, m. */
  readonly length: number;
  /** Distance between the rails' axes, m. */
  readonly span: number;
  /** The rail at lower x. */
  readonly left: RackedBeam;
  readonly right: RackedBeam;
  /** Cross members, welded to both rails. */
  readonly crossMembers: readonly (RackedBeam & { readonly y: number })[];
  readonly braces: readonly CornerBrace[];
}

export interface RackedBeam {
  /** E A, N. */
  readonly axial: number;
  /** E I for bending in plan, about the vertical axis, N m2. */
  readonly bending: number;
}

/** A bar in plan, pinned to a rail and to a cross member near the corner that these make. */
export interface CornerBrace {
  /** Which cross member, counted from zero. */
  readonly crossMember: number;
  readonly rail: RailSide;
  /** Its end on the rail: m from the cross member, negative toward the pulled end. */
  readonly alongRail: number;
  /** Its end on the cross member: m from the rail; the span for a bar to the other rail. */
  readonly alongCross: number;
  /** E A, N. */
  readonly axial: number;
}

/** How a base is dragged, with one rear corner held by something in the ground. */
export interface Drag {
  /** Pull on the front end of each rail, N. */
  readonly pull: { readonly left: number; readonly right: number };
  /** Friction of the whole base along the rails, N, alike along both. */
  readonly friction: number;
  /** The rail whose rear end is held. */
  readonly held: RailSide;
}

/** What racks the base as a whole. */
export interface DragBalance {
  /** Force of what holds the corner, N, against the pull. */
  readonly heldForce: number;
  /** Turning of pull, friction and held corner about the left rail's front end, N m. */
  readonly turning: number;
}

/**
 * How the ground keeps the base from turning: at the held corner and at the front corner across
 * from it, or along both rails in a line load that rises linearly.
 */
export type RackingHold = "corners" | "along";

/** The frame under one way of holding. Senses of a rail: moment E I d2u/dy2, u toward +x. */
export interface Racked {
  readonly hold: RackingHold;
  /** Sections of each rail from the front end on, `at` its place y; two where something joins it. */
  readonly left: readonly FrameSection[];
  readonly right: readonly FrameSection[];
  /** Sections of each cross member from the left rail on, `at` from there: the joints are the ends. */
  readonly crossMembers: readonly (readonly FrameSection[])[];
  /** Axial force of each brace, N, tension positive. */
  readonly braces: readonly number[];
}

/** Both ways of holding, for the worse to be kept part by part; or why there is none. */
export type RackingResult =
  | ({ readonly outcome: "held"; readonly ways: readonly Racked[] } & DragBalance)
  | { readonly outcome: "not-held" | "unsettled" };
