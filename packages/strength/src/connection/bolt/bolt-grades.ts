import { type Citation, cite } from "@hoopstay/core";
import { INCH, KSI } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";

/** Strength class of a bolt, as marked on its head. */
export type BoltGrade =
  | "A307"
  | "A325"
  | "SAE 2"
  | "SAE 5"
  | "SAE 8"
  | "ISO 4.6"
  | "ISO 5.6"
  | "ISO 8.8";

interface GradeRow {
  readonly unit: "ksi" | "MPa";
  /** F_u of a threaded part, from which table J3.2 makes the nominal stresses. */
  readonly tensile?: number;
  /** F_nt and F_nv that table J3.2 prints, threads in the shear plane and excluded from it. */
  readonly printed?: { readonly fnt: number; readonly included: number; readonly excluded: number };
  /** Diameters the row holds for, in. */
  readonly sizes: readonly [from: number, to: number];
  readonly strength: Citation;
  readonly range: Citation;
}

const j32 = cite("aisc-360-22", "table J3.2", "read");
const classPage = cite("shigley-mischke-5", "SAE and ASTM bolts, pp. 341 and 348", "second-hand");
const sae = cite("sae-j429", "table 1", "memory");
const iso = cite("en-1993-1-8", "table 3.1", "memory");
const isoSizes = cite("iso-898-1", "scope, 1.6 mm to 39 mm", "memory");
const metric = [1.6 / 25.4, 39 / 25.4] as const;

/**
 * Bolts by grade, in the source's units. SAE and ISO bolts are not listed fasteners of AISC 360-22
 * and count as threaded parts of that tensile strength.
 */
export const boltGradeRows: Readonly<Record<BoltGrade, GradeRow>> = {
  A307: {
    unit: "ksi",
    printed: { fnt: 45, included: 27, excluded: 27 },
    sizes: [0.25, 4],
    strength: j32,
    range: cite("shigley-mischke-5", "ASTM A307, 1/4 to 4 in", "memory"),
  },
  A325: {
    unit: "ksi",
    printed: { fnt: 90, included: 54, excluded: 68 },
    sizes: [0.5, 1.5],
    strength: j32,
    range: cite("aisc-360-22", "J3.1: high-strength bolts start at 1/2 in", "second-hand"),
  },
  "SAE 2": { unit: "ksi", tensile: 74, sizes: [0.25, 0.75], strength: classPage, range: sae },
  "SAE 5": { unit: "ksi", tensile: 120, sizes: [0.25, 1], strength: classPage, range: classPage },
  "SAE 8": { unit: "ksi", tensile: 150, sizes: [0.25, 1], strength: classPage, range: classPage },
  "ISO 4.6": { unit: "MPa", tensile: 400, sizes: metric, strength: iso, range: isoSizes },
  "ISO 5.6": { unit: "MPa", tensile: 500, sizes: metric, strength: iso, range: isoSizes },
  "ISO 8.8": { unit: "MPa", tensile: 800, sizes: metric, strength: iso, range: isoSizes },
};

/** Pascals in one of the unit a row is printed in. */
export const worthOfRow = ({ unit }: GradeRow): number => (unit === "ksi" ? KSI : 1e6);

/** Whether a diameter, m, lies within a grade's sizes. */
export function isSizeOf(grade: BoltGrade, diameter: number): boolean {
  const [from, to] = boltGradeRows[grade].sizes;
  const inches = diameter / INCH;
  return !exceeds(from, inches) && !exceeds(inches, to);
}
