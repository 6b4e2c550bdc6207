import type {
  ChainReview,
  Complaint,
  FromSide,
  HoldReview,
  Question,
  Review,
  StateSummary,
  System,
} from "@hoopstay/core";
import type { Path, Value } from "@hoopstay/file/value";

/** Both files as text: all that is kept of the work. */
export interface Texts {
  readonly house: string;
  readonly site: string;
}
export type FileName = keyof Texts;

/** A change of one value of a file; undefined takes it out. */
export interface Change {
  readonly file: FileName;
  readonly path: Path;
  readonly value: Value | undefined;
}

/** What the screen asks of an engine. `turn` counts the states of the work. */
export type Asked =
  | { readonly kind: "start" }
  | { readonly kind: "read"; readonly turn: number; readonly texts: Texts }
  | {
      readonly kind: "change";
      readonly turn: number;
      readonly texts: Texts;
      readonly changes: readonly Change[];
    }
  | { readonly kind: "look"; readonly ask: number; readonly file: FileName; readonly text: string }
  | ({
      readonly kind: "study" | "forecast";
      readonly turn: number;
      readonly texts: Texts;
    } & ShownIn)
  | {
      readonly kind: "paper";
      readonly ask: number;
      readonly texts: Texts;
      readonly paper: Paper;
      readonly system: System;
    };

/** How what is drawn and tabled is shown. */
export interface ShownIn {
  readonly forecast: number | null;
  readonly system: System;
}

/** A layout of anchors drawn to scale. */
export interface DrawnLayout {
  readonly title: string;
  readonly html: string;
}

/** What holds it, and the pieces of it that the report draws and tables. HTML. */
export interface Holding {
  readonly turn: number;
  readonly hold: HoldReview;
  readonly layouts: readonly DrawnLayout[];
  readonly tow: string;
}

/** What is made on request only. */
export type Paper =
  | { readonly name: "report" | "first" | "card" }
  | { readonly name: "ladder"; readonly forecast: number | null }
  | { readonly name: "working"; readonly of: WorkingOf }
  | { readonly name: "cautions" | "hold-sheet" | "chain-sheet" }
  /** Beside a house with these keys changed; beside the variants of the file where none are. */
  | { readonly name: "compare"; readonly change: Readonly<Record<string, unknown>> | null };

/** Which part of the working: that of one load case, of the anchors, of the links. */
export type WorkingOf = "anchors" | "links" | { readonly caseId: string };

/** Both files as they stand now, and what they give. */
export interface Reading {
  readonly turn: number;
  readonly texts: Texts;
  /** Plain values of each file, by which the questions are filled in. */
  readonly values: { readonly [file in FileName]: unknown };
  readonly complaints: readonly Complaint[];
  /** Null where something is complained of. */
  readonly answer: Answer | null;
}

/** A state without its single checks. */
export type ShownState = Omit<StateSummary, "checks">;

/** What of the review stands on the screen: it is sent at every keystroke. */
export interface ShownReview
  extends Pick<
    Review,
    | "holds"
    | "combination"
    | "headline"
    | "answers"
    | "governing"
    | "inputs"
    | "cautions"
    | "notChecked"
    | "drawings"
  > {
  readonly states: readonly ShownState[];
}

/** Lift, tip and slide. */
export interface Answer {
  readonly review: ShownReview;
  /** The state it stands in now, from every side. */
  readonly sides: readonly FromSide[];
}

/** What an engine tells the screen. */
export type Told =
  | { readonly kind: "ready"; readonly questions: { readonly [file in FileName]: Question } }
  | ({ readonly kind: "reading" } & Reading)
  /** Working gust at which some link has given way at the latest, m/s: a quick look. */
  | { readonly kind: "links-at-most"; readonly turn: number; readonly gust: number }
  | ({ readonly kind: "holding" } & Holding)
  | { readonly kind: "ladder"; readonly turn: number; readonly html: string }
  | { readonly kind: "chain"; readonly turn: number; readonly chain: ChainReview }
  | { readonly kind: "paper"; readonly ask: number; readonly html: string }
  | { readonly kind: "sound"; readonly ask: number }
  | { readonly kind: "refused"; readonly ask: number; readonly complaints: readonly Complaint[] }
  | {
      readonly kind: "failed";
      readonly turn: number | null;
      readonly ask: number | null;
      readonly message: string;
    };
