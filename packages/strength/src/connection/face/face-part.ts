import type { Measure } from "@hoopstay/core";
import { limitState, type ResistanceFactors } from "../common/resistance-factors.ts";
import type { LimitState } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import type { StubOnFace } from "./stub-on-face.ts";
import { halvedAtOpenEnd } from "./wall-failure-formulas.ts";

/** What a stub does to the face: pulled up, pushed down, bent along the rail, bent across it. */
export type FaceAction = "uplift" | "push" | "inPlane" | "outOfPlane";

/** A limit state, and by which factor the rail's own stress lowers it. */
export interface FacePart extends LimitState {
  readonly lowered: "Q_f" | "k_n" | "not";
}

export type FaceParts = Readonly<Record<FaceAction, readonly FacePart[]>>;

/** Sizes and factors that all parts share. */
export interface FaceSetting {
  readonly stub: StubOnFace;
  /** Side of the equivalent square, m. */
  readonly square: number;
  readonly qf: number;
  readonly kn: number;
  /** Near an open end. */
  readonly halved: boolean;
  readonly sheet: Worksheet;
}

/** What a part is for: its id, what gives way in words, N or N m. */
export type PartName = readonly [id: string, name: string, measure: Measure];

export function facePart(
  { halved, sheet }: FaceSetting,
  [id, name, measure]: PartName,
  lowered: FacePart["lowered"],
  nominal: number,
  factors: ResistanceFactors,
): FacePart {
  const left = halved ? sheet.work(halvedAtOpenEnd(measure), [nominal]) : nominal;
  return { ...limitState(sheet, [id, name], measure, left, factors), lowered };
}
