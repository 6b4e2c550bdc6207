import type { Chapter } from "../formula/step.ts";
import type { Citation } from "../source/citation.ts";
import type { CaseWords } from "./case-words.ts";
import type { ChainReview } from "./chain-review.ts";
import type { HoldReview, StormLadder } from "./hold-review.ts";
import type { Measured, Words } from "./measured.ts";

/** What stands behind each printed number of a check, which may be another case for each. */
export interface ByColumn<One> {
  readonly ratio: { readonly ASD: One; readonly LRFD: One };
  readonly codeSpeed: { readonly ASD: One; readonly LRFD: One };
}

/** One check of one state, as owner and reviewer read it. Speeds in m/s, infinite where no limit. */
export interface CheckSummary {
  readonly check: string;
  /** Owner's words: lifts off, tips to the right, slides. */
  readonly words: string;
  readonly ratio: { readonly ASD: number; readonly LRFD: number };
  readonly codeSpeed: { readonly ASD: number; readonly LRFD: number };
  readonly workingGust: number;
  readonly demand: Measured;
  readonly resistance: Measured;
  /** The case of the ratio in the combination of the verdict. */
  readonly governs: CaseWords;
  /** The case of each number; the working gust comes of the code speed ASD. */
  readonly cases: ByColumn<string>;
}

/** The worst of all states for one check; its numbers may come from several of them. */
export interface GoverningCheck extends CheckSummary {
  readonly state: string;
  readonly from: ByColumn<{ readonly id: string; readonly state: string }>;
}

/** One state of the house, held in one way. */
export interface StateSummary {
  readonly id: string;
  readonly words: string;
  readonly hold: "bare" | "fitted";
  readonly holdWords: string;
  readonly enclosure: string;
  readonly insideCoefficients: readonly number[];
  readonly now: boolean;
  /** States that the wind cannot tell apart carry the same letter. */
  readonly set: string;
  readonly checks: readonly CheckSummary[];
  /** The check that gives way first, and its working gust. */
  readonly first: CheckSummary;
  readonly holds: boolean;
  readonly least: { readonly ratio: number; readonly check: string; readonly load: string };
}

export interface InputRow {
  readonly file: "house" | "site";
  readonly key: string;
  readonly typed: string;
  readonly used: string | Measured;
  readonly assumed: boolean;
  readonly why: string;
}

export interface TakeOffRow {
  readonly what: string;
  readonly count: number;
  readonly amount: Measured | null;
  readonly unitLow: Measured | null;
  readonly unitHigh: Measured | null;
  readonly per: "length" | "area" | null;
  readonly low: number;
  readonly high: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** One load case at the design speed: six components in N and N m, and the ratio of every check. */
export interface CaseRow extends CaseWords {
  readonly set: string;
  readonly loadSet: string;
  readonly components: readonly number[];
  readonly ratios: readonly number[];
}

export interface DrawingPoint {
  readonly x: number;
  readonly z: number;
}

/** Pressure on one zone of the cross section in the case drawn, Pa toward the surface. */
export interface ZonePressure {
  readonly name: string;
  readonly line: readonly DrawingPoint[];
  readonly pressure: number;
}

export interface PlanMark {
  readonly kind: "anchor" | "ballast" | "weight";
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** Horizontal direction of a slanted tether; zero where upright. */
  readonly toward: readonly [number, number];
  readonly value: Measured;
}

/** Everything the drawings need, in m, x to the right, y to the front, z up. */
export interface Drawings {
  readonly sectionLine: readonly DrawingPoint[];
  readonly span: number;
  readonly rise: number;
  readonly length: number;
  readonly springing: number;
  readonly railDepth: number;
  readonly railWidth: number;
  readonly railFront: number;
  readonly railBack: number;
  readonly noseFront: number;
  readonly noseBack: number;
  readonly hoopStations: readonly number[];
  readonly pressures: { readonly title: string; readonly zones: readonly ZonePressure[] };
  readonly marks: readonly PlanMark[];
  /** Compass bearing of the front, rad clockwise from north; null where unknown. */
  readonly frontBearing: number | null;
}

/** A source used, with its number in the bibliography. */
export interface UsedSource {
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly publisher: string;
  readonly grades: readonly string[];
}

/** The whole review: every reader's view is made from this record and from nothing else. */
export interface Review {
  readonly program: string;
  readonly version: string;
  readonly digest: string;
  /** Both files word for word, so that the record can be made again from its report. */
  readonly files: { readonly house: string; readonly site: string };
  readonly house: string;
  readonly site: string;
  readonly date: string | null;
  readonly holds: boolean;
  readonly combination: "ASD" | "LRFD";
  readonly headline: Words;
  readonly answers: readonly Words[];
  readonly criteria: readonly { readonly what: string; readonly value: string | Measured }[];
  readonly states: readonly StateSummary[];
  /** The worst of all states for every check, as fitted. */
  readonly governing: readonly GoverningCheck[];
  readonly insideLine: Words;
  readonly inputs: readonly InputRow[];
  readonly takeOff: {
    readonly rows: readonly TakeOffRow[];
    readonly measured: boolean;
    readonly totals: readonly {
      readonly words: string;
      readonly weight: number;
      readonly place: readonly [number, number, number];
    }[];
  };
  readonly findings: readonly string[];
  readonly cautions: readonly string[];
  readonly notChecked: readonly string[];
  readonly chapters: readonly Chapter[];
  readonly caseColumns: readonly string[];
  readonly cases: readonly CaseRow[];
  readonly drawings: Drawings;
  /** What holds the house here; null where it was not asked for. */
  readonly hold: HoldReview | null;
  /** What to do at which forecast gust; null where it was not asked for. */
  readonly ladder: StormLadder | null;
  /** What goes first, link by link; null where it was not asked for. */
  readonly chain: ChainReview | null;
  readonly citations: readonly Citation[];
}
