import { cite, constant } from "@hoopstay/core";
import { INCH, KSI } from "../connection/common/customary.ts";
import type { LumberGrade, WoodKind } from "./lumber-rows.ts";

const memory = (place: string) => cite("nds-2018", place, "memory");
const supplement = (place: string) => cite("nds-supplement-2018", place, "memory");

/** Pascals in a pound per square inch. */
export const PSI = KSI / 1000;

/** Slack by which a dressed size in whole millimetres misses the size in inches, m. */
const rounding = 0.0005;

/** Nominal widths, in, and the dressed width that goes with each. */
const sizes = [
  { nominal: 4, dressed: 3.5 },
  { nominal: 5, dressed: 4.5 },
  { nominal: 6, dressed: 5.5 },
  { nominal: 8, dressed: 7.25 },
  { nominal: 10, dressed: 9.25 },
  { nominal: 12, dressed: 11.25 },
] as const;
export type NominalWidth = (typeof sizes)[number]["nominal"];

/**
 * Nominal width, in, of a dressed width, m; a board sawn full counts as the next size, which is
 * weaker. Null above 12 in.
 */
export const nominalWidth = (dressed: number): NominalWidth | null =>
  sizes.find((size) => dressed <= size.dressed * INCH + rounding)?.nominal ?? null;

/** C_F of lumber 2 and 3 in thick, for bending; 4 in thick has no less. */
const sizeFactors: Readonly<Record<LumberGrade, Readonly<Partial<Record<NominalWidth, number>>>>> =
  {
    "No. 2": { 4: 1.5, 5: 1.4, 6: 1.3, 8: 1.2, 10: 1.1, 12: 1 },
    stud: { 4: 1.1, 5: 1, 6: 1 },
  };

/**
 * C_F; the rows of southern pine hold it already, and the widths they are for. Null where the grade
 * has no such width.
 */
export const sizeFactor = (
  wood: WoodKind,
  grade: LumberGrade,
  width: NominalWidth,
): number | null => (wood === "southern-pine" ? 1 : (sizeFactors[grade][width] ?? null));

/** C_fu of lumber 2 and 3 in thick, loaded on its wide face. */
const flatUse: Readonly<Record<NominalWidth, number>> = {
  4: 1.1,
  5: 1.1,
  6: 1.15,
  8: 1.15,
  10: 1.2,
  12: 1.2,
};

/** C_fu; none is counted for lumber 4 in thick, where it is at most 1.1. */
export const flatUseFactor = (thickness: number, width: NominalWidth): number =>
  thickness <= 2.5 * INCH + rounding ? flatUse[width] : 1;

/** F_b C_F up to which wet service does not lower bending strength, Pa. */
const wetThreshold = 1150 * PSI;

/** C_M of wood above 19 % moisture: bending, shear, modulus of elasticity. */
export const wetFactors = {
  bending: (bending: number): number => (bending <= wetThreshold ? 1 : 0.85),
  shear: 0.97,
  modulus: 0.9,
  citation: supplement("tables 4A and 4B, wet service factors"),
} as const;

/** Ten minutes of wind, ASD. */
export const windDuration = constant(
  "wind-duration",
  "C_D",
  "load duration factor, wind",
  1.6,
  "ratio",
  memory("table 2.3.2"),
);

/** K_F phi lambda over the reference value, LRFD with wind: lambda 1.0. */
export const lumberResistance = {
  bending: constant(
    "bending-resistance",
    "K_F phi",
    "LRFD, bending",
    2.54 * 0.85,
    "ratio",
    memory("appendix N"),
  ),
  shear: constant(
    "shear-resistance",
    "K_F phi",
    "LRFD, shear",
    2.88 * 0.75,
    "ratio",
    memory("appendix N"),
  ),
} as const;
