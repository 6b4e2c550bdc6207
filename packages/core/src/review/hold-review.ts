import type { Citation } from "../source/citation.ts";
import type { Words } from "./measured.ts";

/** Something the owner told of the ground, and what it was taken to mean. */
export interface GroundClue {
  readonly told: Words;
  readonly means: string;
}

/** The ground as the anchors are rated in it. */
export interface GroundSummary {
  /** One sentence: class or engineer's values, wet or dry. */
  readonly words: Words;
  readonly clues: readonly GroundClue[];
  /** What is not known, and how to find it out; most useful first. */
  readonly findOut: readonly Words[];
}

/** One anchor of a layout with its worst pull over all states and directions. N, m, rad. */
export interface AnchorRow {
  readonly name: string;
  readonly side: "left" | "right" | "middle";
  /** From the middle of the house, front plus. */
  readonly along: number;
  readonly across: number;
  readonly angle: number;
  /** Where the tether leads, in words: straight down, out, in, to the front, to the back. */
  readonly lead: string;
  readonly toward: readonly [number, number];
  /** Worst pull along the tether, and its upright and level parts. */
  readonly pull: number;
  readonly upright: number;
  readonly level: number;
  readonly allowable: number;
  readonly ratio: number;
  /** Pull to reach when the anchor is proved. */
  readonly proof: number;
  readonly state: string;
  readonly direction: string;
}

/** All tethers, ground pushes and friction at once: the largest share of the design wind in balance. */
export interface JointSummary {
  readonly factor: number;
  readonly holds: boolean;
  /** Working gust that the factor stands for, m/s. */
  readonly gust: number;
  readonly state: string;
  readonly direction: string;
  readonly loadCase: number;
  readonly weight: string;
  /** Load factors of wind and weight that the forces carry. */
  readonly combination: string;
  readonly certificate: JointCertificate | null;
}

/**
 * Forces in balance at the factor, N, in house axes. Six sums are F_x, F_y, F_z, M_x, M_y, M_z about
 * the middle of the house on the ground; those of all rows add up to what is left.
 */
export interface JointCertificate {
  readonly wind: readonly number[];
  readonly weight: readonly number[];
  readonly tethers: readonly {
    readonly name: string;
    readonly x: number;
    readonly y: number;
    readonly tension: number;
    readonly force: readonly [number, number, number];
    /** Its part of the six sums. */
    readonly sums: readonly number[];
  }[];
  readonly corners: readonly {
    readonly name: string;
    readonly x: number;
    readonly y: number;
    readonly push: number;
    readonly friction: readonly [number, number];
    readonly sums: readonly number[];
  }[];
  /** What is left over of the six sums, N and N m: rounding only. */
  readonly left: readonly number[];
}

/** A layout: what was set, or the fewest that hold. */
export interface LayoutReview {
  readonly perRail: number;
  /** Whether the anchors' pulls could be worked out: both rails are held. */
  readonly held: boolean;
  /** The standard's least wind load, a check of its own. */
  readonly carriesLeast: boolean;
  readonly anchors: readonly AnchorRow[];
  readonly holds: boolean;
  /** Worst anchor ratio with any one anchor missing, and which; information. */
  readonly oneMissing: { readonly ratio: number; readonly name: string } | null;
  readonly joint: JointSummary;
  /** What is said of it: why one fewer fails, what mends sliding, prying, doubled ends. */
  readonly remarks: readonly Words[];
}

/** One kind of anchor on this ground. */
export interface KindReview {
  readonly id: string;
  readonly words: string;
  /** Where its pull comes from: pull tests, theory, presumptive class, table, as given. */
  readonly basis: string;
  /** Allowable pull along its tether, N; null where nothing may be counted. */
  readonly allowable: number | null;
  /** Which link of the chain gives it. */
  readonly governs: string | null;
  /** Why there is no number, and what to do. */
  readonly reason: string | null;
  readonly notChecked: readonly string[];
  readonly findings: readonly string[];
  readonly angle: number;
  readonly lead: string;
  /** Fewest per rail that hold in every state; null where none do or nothing is rated. */
  readonly every: LayoutReview | null;
  /** The same while the house is kept shut. */
  readonly shut: LayoutReview | null;
  /** Where none holds: how far the most that fit fall short. */
  readonly short: Words | null;
}

/** Ballast in place of anchors, or beside those fitted. */
export interface BallastReview {
  /** Beside the anchors fitted, against lifting and tipping only; else in their place. */
  readonly beside: boolean;
  readonly words: Words;
  readonly pieces: readonly { readonly what: string; readonly perRail: number }[];
  readonly where: Words;
  readonly holds: boolean;
}

/** Pull to move. N and rad. */
export interface TowSummary {
  readonly vehicle: string | null;
  readonly slope: number;
  /** Null where the house file has no tractor. */
  readonly available: { readonly low: number; readonly high: number } | null;
  readonly loads: readonly {
    readonly words: string;
    readonly running: { readonly low: number; readonly high: number };
    readonly starting: { readonly low: number; readonly high: number };
    readonly skids: { readonly left: number; readonly right: number };
    readonly verdict: "go" | "doubtful" | "no" | null;
  }[];
  readonly runsByItself: boolean;
  readonly remarks: readonly string[];
}

/** The pull log of the site file, kind by kind. */
export interface PullLog {
  readonly kinds: readonly {
    readonly kind: string;
    readonly words: string;
    readonly tests: readonly {
      readonly date: string;
      readonly place: string;
      readonly pull: number;
      readonly ended: string;
      readonly ground: string;
      /** What it counts after the reductions, N; null where it is left out. */
      readonly counts: number | null;
      readonly why: string;
    }[];
    readonly rated: {
      readonly route: string;
      readonly characteristic: number;
      readonly factor: number;
      readonly allowable: number;
      /** Allowable pull if one more test came out at the mean, and at the lowest so far. */
      readonly atMean: number;
      readonly atLowest: number;
    } | null;
  }[];
  /** What to do next. */
  readonly next: readonly Words[];
}

/** Everything about holding this house on this ground. */
export interface HoldReview {
  /** Whether what is fitted, or the weight alone where nothing is, holds in every state. */
  readonly holds: boolean;
  readonly ground: GroundSummary;
  readonly headline: Words;
  readonly fitted: LayoutReview | null;
  readonly kinds: readonly KindReview[];
  readonly ballast: readonly BallastReview[];
  readonly tow: TowSummary | null;
  readonly pulls: PullLog;
}

/** The move card: one page for the person on the ground. Speeds in m/s. */
export interface MoveCard {
  readonly house: string;
  readonly site: string;
  readonly date: string | null;
  readonly digest: string;
  readonly version: string;
  readonly go: boolean;
  readonly headline: Words;
  readonly questions: readonly { readonly ask: string; readonly answer: Words }[];
  /** What the anchors are: those fitted, or a kind still to be set; null where none is rated. */
  readonly plan: string | null;
  /** Anchors in the order in which they are set, and why in this order. */
  readonly anchors: readonly AnchorRow[];
  readonly order: string;
  readonly close: readonly string[];
  readonly doNotUnhook: readonly Words[];
  /** Working gust on its weight alone in its worst state with the film on, and that state. */
  readonly gustLoose: number;
  readonly looseState: string;
  /** Working gust on its weight alone, shut. */
  readonly gustShutLoose: number;
  /** Working gust shut, with every anchor of this card. Infinite where the checks found no limit. */
  readonly gustDone: number;
  readonly shopping: readonly {
    readonly what: string;
    readonly count: number;
    /** Least working load limit it must be marked with, N; null where that is no question. */
    readonly atLeast: number | null;
    readonly why: string;
  }[];
  readonly cautions: readonly string[];
}

export type RungId =
  | "end-walls"
  | "close"
  | "tighten"
  | "add"
  | "people"
  | "animals"
  | "strip"
  | "leave";

/** A word of the weather service on the same scale: from a gust, to a gust or upward. m/s */
export interface GustLandmark {
  readonly words: string;
  readonly from: number;
  readonly to: number | null;
  readonly citation: Citation;
}

/** One rung: at this forecast gust or above, do this. m/s and hours. */
export interface LadderRung {
  readonly id: RungId;
  readonly gust: number;
  readonly does: string;
  readonly because: Words;
  readonly hours: { readonly low: number; readonly high: number };
  /** Whether the forecast reaches it. */
  readonly reached: boolean;
}

/** The storm ladder: from calm upward. */
export interface StormLadder {
  readonly house: string;
  readonly site: string;
  readonly forecast: number | null;
  readonly rungs: readonly LadderRung[];
  readonly landmarks: readonly GustLandmark[];
  /** Where the hours of the rungs are from. */
  readonly hoursCitation: Citation;
  readonly advice: Words;
  readonly cautions: readonly string[];
}
