import type { CaseWords } from "./case-words.ts";
import type { Measured, Words } from "./measured.ts";

/** The links of the load path, in the order in which the wind's force runs through them. */
export const linkIds = [
  "cover",
  "boards",
  "hoop",
  "ties",
  "bolts",
  "stub",
  "weld",
  "face",
  "rail",
  "splices",
  "cross-members",
  "ridge-line",
  "end-wall",
  "anchors",
] as const;
export type LinkId = (typeof linkIds)[number];

/** One way in which a link gives way, with the case that asks most of it. Speeds in m/s. */
export interface LinkCheck {
  readonly link: LinkId;
  /** What gives way: bearing of the bolts in the hoop's wall. */
  readonly part: string;
  /** Which one: windward foot of hoop 3 of 9. */
  readonly place: string;
  /** How it was computed: feet pinned, without ties. */
  readonly run: string;
  readonly demand: Measured;
  readonly resistance: Measured;
  readonly ratio: { readonly ASD: number; readonly LRFD: number };
  readonly codeSpeed: { readonly ASD: number; readonly LRFD: number };
  readonly workingGust: number;
  readonly governs: CaseWords;
}

/** The worst check of a link in one state. */
export interface LinkInState {
  readonly state: string;
  readonly check: LinkCheck;
}

/** One link over all states, weakest check first. */
export interface LinkSummary {
  readonly id: LinkId;
  /** Owner's words: the bolts at the foot of a hoop. */
  readonly words: string;
  readonly worst: LinkInState;
  readonly states: readonly LinkInState[];
  /** The worst check in each direction of the wind. */
  readonly directions: readonly { readonly direction: string; readonly check: LinkCheck }[];
  /** Every way it can give way, the worst case of each, weakest first. */
  readonly parts: readonly LinkInState[];
}

/** A link, or a part of one, for which data are missing: what it would have to carry. */
export interface LinkNotChecked {
  readonly link: LinkId;
  readonly words: string;
  readonly why: string;
  readonly demand: Measured | null;
}

/** A line of values along a member. Places in m, values as `measure` says. */
export interface DrawnLine {
  readonly title: string;
  readonly measure: "moment" | "force" | "length";
  readonly points: readonly { readonly at: number; readonly value: number }[];
}

/** The hoop under its governing case, for the drawing: points of the centre line with forces. */
export interface DrawnHoop {
  readonly title: string;
  readonly points: readonly {
    readonly x: number;
    readonly z: number;
    /** N m, plus where the inner face is pulled. */
    readonly moment: number;
    /** N, tension plus. */
    readonly thrust: number;
    /** Displacement, m. */
    readonly dx: number;
    readonly dz: number;
  }[];
  readonly bars: readonly {
    readonly from: { readonly x: number; readonly z: number };
    readonly to: { readonly x: number; readonly z: number };
    readonly force: number;
  }[];
}

/** What goes first: the load path, ranked. */
export interface ChainReview {
  /** First to go, at a gust, in a state, what and where. */
  readonly answer: Words;
  /** Weakest first. */
  readonly links: readonly LinkSummary[];
  readonly notChecked: readonly LinkNotChecked[];
  readonly findings: readonly Words[];
  /** In every state the first link and its gust. */
  readonly states: readonly {
    readonly id: string;
    readonly words: string;
    readonly now: boolean;
    readonly first: LinkCheck;
    readonly holds: boolean;
  }[];
  readonly holds: boolean;
  readonly hoop: DrawnHoop;
  readonly rail: {
    readonly lines: readonly DrawnLine[];
    readonly hoops: readonly number[];
    readonly anchors: readonly number[];
    readonly crossMembers: readonly number[];
  };
}
