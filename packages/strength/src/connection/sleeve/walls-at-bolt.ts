import { INCH } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import type { LimitState } from "../common/strength.ts";
import type { Wall } from "../common/wall.ts";
import type { Worksheet } from "../common/worksheet.ts";
import {
  connectionTypeFactor,
  pinBearing,
  sheetBearing,
  sheetBearingFactor,
  sheetDeformationBearing,
  tearOut,
} from "./bearing-formulas.ts";

/** Walls under this are sheet: AISI S100 runs beside AISC 360-22 and the lower counts. */
export const sheetWall = INCH / 8;

/** Thinnest wall of the AISI bearing table. */
export const thinnestSheet = 0.024 * INCH;

/** Walls of one tube at one bolt. m. */
export interface WallsAtBolt {
  readonly id: string;
  /** What the tube is called: "the hoop". */
  readonly name: string;
  readonly wall: Wall;
  /** How many of its walls bear: two where the bolt passes right through and nothing else is there. */
  readonly count: 1 | 2;
  readonly diameter: number;
  /** Least clear distance of any bolt, to the end or to the next hole. */
  readonly clear: number;
  /** Washers bear on these walls. */
  readonly washers: boolean;
}

/** What the walls of one tube, not gripped between plies, can take at one bolt, N. */
export function wallsAtBolt(at: WallsAtBolt, sheet: Worksheet): readonly LimitState[] {
  const { id, name, count, diameter: d } = at;
  const { wall: t, yieldStrength: Fy, tensileStrength: Fu } = at.wall;
  const { bearing, sheetBearing: thin, sheetDeformation } = connectionFactors;
  const states = [
    limitState(
      sheet,
      [`bearing-${id}`, `bearing of the bolt on the walls of ${name}`],
      "force",
      sheet.work(pinBearing, [count, Fy, d, t]),
      bearing,
    ),
    limitState(
      sheet,
      [`tear-out-${id}`, `tear-out of the bolt through the end of ${name}`],
      "force",
      sheet.work(tearOut, [count, at.clear, t, Fu]),
      bearing,
    ),
  ];
  if (!exceeds(sheetWall, t)) return states;
  const factor = sheet.work(sheetBearingFactor, [d, t]);
  const type = sheet.work(connectionTypeFactor[at.washers ? "washers" : "plain"], []);
  states.push(
    limitState(
      sheet,
      [`sheet-bearing-${id}`, `bearing of the bolt on the thin walls of ${name}`],
      "force",
      sheet.work(sheetBearing, [count, factor, type, d, t, Fu]),
      thin,
    ),
    limitState(
      sheet,
      [`sheet-deformation-${id}`, `stretching of the holes in the thin walls of ${name}`],
      "force",
      sheet.work(sheetDeformationBearing, [count, t, d, Fu]),
      sheetDeformation,
    ),
  );
  return states;
}
