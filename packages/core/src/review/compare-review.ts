import type { LinkCheck } from "./chain-review.ts";
import type { Measured, Words } from "./measured.ts";
import type { Drawings } from "./review.ts";

/** One stick bought, what is cut from it and what is left of it, saw cuts among it. m */
export interface CutStick {
  readonly pieces: readonly { readonly what: string; readonly length: number }[];
  readonly waste: number;
}

/** What is cut from one tube at one stock length. */
export interface CutList {
  readonly tube: string;
  readonly stock: number;
  readonly sticks: readonly CutStick[];
  /** Length bought that is not used, as a part of what is bought. */
  readonly waste: number;
  /** In the file's currency; null where no price is given. */
  readonly price: number | null;
  /** Whether no plan for these pieces has fewer sticks. */
  readonly fewest: boolean;
  readonly findings: readonly Words[];
}

/** What the steel costs: only what a price is given for, and what is missing. */
export interface Cost {
  readonly currency: string;
  readonly total: number;
  readonly unpriced: readonly string[];
}

/** One house of the comparison: today's, or a variant of it. */
export interface VariantReview {
  readonly name: string;
  /** What was changed, by key, as typed. */
  readonly changes: readonly {
    readonly key: string;
    readonly from: string;
    readonly to: string;
  }[];
  /** N, whole house, and the steel alone. */
  readonly weight: { readonly low: number; readonly high: number };
  readonly steel: { readonly low: number; readonly high: number };
  readonly cuts: readonly CutList[];
  readonly cost: Cost | null;
  /** Pull to move on the level, running, N, and what the tractor makes of it. */
  readonly pull: { readonly low: number; readonly high: number; readonly says: string };
  /** Fewest anchors of a kind that hold it here in every state; null where none does. */
  readonly anchors: readonly { readonly kind: string; readonly perRail: number | null }[];
  /** The first link to go, in which state. */
  readonly first: { readonly state: string; readonly words: string; readonly check: LinkCheck };
  /** By state: as a whole (lift, tip, slide, shift), and the first link. Working gusts, m/s. */
  readonly states: readonly {
    readonly id: string;
    readonly words: string;
    readonly whole: { readonly gust: number; readonly words: string };
    readonly link: { readonly gust: number; readonly words: string };
  }[];
  readonly holds: boolean;
  readonly drawings: Drawings;
  readonly findings: readonly Words[];
}

/** Today's house beside its variants. */
export interface CompareReview {
  readonly today: VariantReview;
  readonly variants: readonly VariantReview[];
  /** What changes, in plain words; also where a lighter tube fails at a link though it stands. */
  readonly sentences: readonly Words[];
}

/** The lowest working gust of any state, m/s, and what happens beyond it. */
export interface FoundGust {
  readonly gust: number;
  readonly words: string;
}

/** One design of a search. */
export interface FoundDesign {
  readonly words: string;
  readonly changes: readonly { readonly key: string; readonly to: string }[];
  /** Steel at the middle of its tolerance, N; cost in the file's currency or null. */
  readonly steel: Measured;
  readonly cost: number | null;
  /** Lowest working gust, m/s: that of the house as a whole or that of its first link. */
  readonly gust: number;
  readonly whole: FoundGust;
  readonly link: FoundGust;
}

/** Designs that no other beats on cost, weight and gust. */
export interface SearchReview {
  /** What was looked through: the range asked for, or one assumed round today's design. */
  readonly range: {
    readonly assumed: boolean;
    readonly rows: readonly { readonly what: string; readonly values: readonly string[] }[];
  };
  readonly looked: number;
  readonly asked: number;
  /** How many were worked in full: only of these is told which are unbeaten. */
  readonly worked: number;
  /** False where it was stopped before all were looked at. */
  readonly complete: boolean;
  readonly currency: string | null;
  readonly today: FoundDesign;
  readonly unbeaten: readonly FoundDesign[];
  /** Places in `unbeaten` worth a look, with why. */
  readonly worthALook: readonly { readonly place: number; readonly why: string }[];
  /** All designs looked at, thinned for the plot: steel N, gust m/s. */
  readonly cloud: readonly (readonly [steel: number, gust: number])[];
  /** What was left out, what is not compared. */
  readonly findings: readonly Words[];
}
