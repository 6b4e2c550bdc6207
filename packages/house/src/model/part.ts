import type { Tube } from "@hoopstay/section";

/** Where something is, from the middle of the house on the ground, m. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Steel tube, bar or plate by length. `frame` parts catch wind once the film is off. */
export interface BarPart extends Place {
  readonly kind: "bar";
  readonly what: string;
  readonly tube: Tube;
  readonly count: number;
  readonly length: number;
  readonly frame: boolean;
}

/** What goes with an end wall that is missing, or with the film: it holds nothing down then. */
export type Belongs = "front" | "back" | "film";

/** Something known by a weight per unit: boards by length, film and cladding by area. N, low high. */
interface UnitPart extends Place {
  readonly kind: "unit";
  readonly what: string;
  readonly count: number;
  /** m or m2, as `unit` says. */
  readonly amount: number;
  readonly unit: "length" | "area";
  readonly low: number;
  readonly high: number;
  readonly belongs?: Belongs;
}

/** Something known by its whole weight, N. */
interface LumpPart extends Place {
  readonly kind: "lump";
  readonly what: string;
  readonly belongs?: Belongs;
  readonly low: number;
  readonly high: number;
}

/** A share of all bars before it, for bolts, clamps and weld metal. */
interface SharePart {
  readonly kind: "share";
  readonly what: string;
  readonly low: number;
  readonly high: number;
}

export type Part = BarPart | UnitPart | LumpPart | SharePart;

export const at = (x: number, y: number, z: number): Place => ({ x, y, z });
