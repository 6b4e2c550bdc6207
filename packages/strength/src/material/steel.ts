import { type Citation, judged, Refusal } from "@hoopstay/core";
import type { Tube } from "@hoopstay/section";
import { KSI } from "../connection/common/customary.ts";
import { elasticConstants } from "./elastic-constants.ts";
import { type MillValues, refuseMillValues } from "./mill-values.ts";
import {
  type A500Edition,
  type SteelForm,
  type SteelGrade,
  type SteelRow,
  type SteelStandard,
  steelRows,
} from "./steel-rows.ts";

/** What is known of the strength of a steel; Pa where a mill certificate tells, else null. */
export interface SteelClaim extends MillValues {
  readonly standard: SteelStandard;
  readonly grade: SteelGrade | null;
  readonly form: SteelForm;
  /** Edition of A500; left out, the lower of both counts. */
  readonly edition?: A500Edition;
}

/** Steel as a check takes it, Pa. */
export interface Steel {
  readonly yieldStrength: number;
  readonly tensileStrength: number;
  readonly modulus: number;
  readonly shearModulus: number;
  readonly citation: Citation;
  /** Where the strengths are from, for the report. */
  readonly words: string;
  /** False where no listed standard stands behind the steel: every strength line says so. */
  readonly listed: boolean;
}

interface Strengths {
  readonly yieldStrength: number;
  readonly tensileStrength: number;
  readonly citation: Citation;
  readonly words: string;
  readonly listed: boolean;
}

const withoutStandard: Strengths = {
  yieldStrength: 32 * KSI,
  tensileStrength: 45 * KSI,
  citation: judged(
    "no strength standard and no mill value: 32/45 ksi, as A513 1010 as welded; safe unless softer",
  ),
  words: "no strength standard and no mill value: F_y 32 ksi, F_u 45 ksi",
  listed: false,
};

const unitOf = { ksi: KSI, MPa: 1e6 } as const;

/** The form of a section, as standards of tube tell it. */
export const formOf = (tube: Tube): SteelForm =>
  tube.kind === "round" ? "round" : tube.kind === "rectangular" ? "shaped" : "solid";

/** Whether a grade belongs to a standard and a form of section, in some edition. */
export const gradeFits = (grade: SteelGrade, standard: SteelStandard, form: SteelForm): boolean =>
  steelRows.some((row) => row.grade === grade && fits(row, standard, form));

const fits = (row: SteelRow, standard: SteelStandard, form: SteelForm): boolean =>
  row.standards.includes(standard) && row.forms.includes(form);

/**
 * Strength and stiffness of a steel.
 *
 * A grade counts by its lowest row: where the edition of A500 is not named, the edition that gives
 * less. A standard without a grade counts by its lowest grade. Mill values count as entered where no
 * listed standard stands behind the steel; where one does, no more than its grade (or, unnamed, its
 * highest grade), since design is based on the least value of the standard. A tensile strength not
 * told is at least the yield strength. Neither standard nor mill value: 32/45 ksi.
 *
 * Left out: strength gained by cold bending and drawing; brittle fracture in cold air.
 *
 * @param claim what is known; `form` by `formOf`
 * @returns strengths and elastic constants, Pa, with citation and words
 * @throws Refusal `sizes-disagree` for a grade that its standard or form does not know, and for a
 *   yield above the tensile strength; `not-positive`, `out-of-range` for mill values beyond steel
 * @example // A500 C round, edition unknown: 46/62 ksi
 * steelOf({ standard: "A500", grade: "A500 C", form: "round", yield: null, tensile: null })
 */
export function steelOf(claim: SteelClaim): Steel {
  refuseMillValues(claim);
  const family = isEuropean(claim) ? elasticConstants.european : elasticConstants.american;
  const { yieldStrength, tensileStrength, citation, words, listed } = withMill(
    claim,
    ofStandard(claim),
  );
  return {
    yieldStrength,
    tensileStrength,
    modulus: family.modulus.value,
    shearModulus: family.shearModulus.value,
    citation,
    words,
    listed,
  };
}

const isEuropean = ({ standard, grade }: SteelClaim): boolean =>
  standard.startsWith("EN ") || grade === "S235" || grade === "S355";

/**
 * Rows of a standard's form, each grade by its lowest, the lowest first; by the named edition where
 * one is. Rows of one standard are in one unit, and none of less yield has more tensile strength.
 */
function lowestRows({ standard, grade, form, edition }: SteelClaim): readonly SteelRow[] {
  const lowest = new Map<SteelGrade, SteelRow>();
  for (const row of steelRows) {
    if (grade !== null && row.grade !== grade) continue;
    if (!fits(row, standard, form)) continue;
    if (edition !== undefined && row.edition !== undefined && row.edition !== edition) continue;
    const known = lowest.get(row.grade);
    if (!known || row.yield < known.yield) lowest.set(row.grade, row);
  }
  return [...lowest.values()].sort((one, other) => one.yield - other.yield);
}

interface Known {
  readonly counts: Strengths;
  /** What mill values may reach at most; null where no listed standard limits them. */
  readonly atMost: Strengths | null;
}

/** Strengths by standard and grade alone. */
function ofStandard(claim: SteelClaim): Known {
  const { standard, grade, form, edition } = claim;
  if (grade === null && standard === "other") return { counts: withoutStandard, atMost: null };
  const rows = lowestRows(claim);
  const [lowest] = rows;
  if (!lowest) {
    const expected = `a grade of ${edition ?? standard} for ${form} sections`;
    const mend = "Name the grade on the mill certificate, or leave it out.";
    throw new Refusal([{ code: "sizes-disagree", given: grade ?? form, expected, mend }]);
  }
  const highest = rows.at(-1) ?? lowest;
  const counts = strengthsOf(lowest, grade);
  return { counts, atMost: lowest.listed ? strengthsOf(highest, grade) : null };
}

function strengthsOf(row: SteelRow, named: SteelGrade | null): Strengths {
  const { unit, yield: fy, tensile: fu, edition } = row;
  const grade = edition ? `${row.grade} (${edition})` : row.grade;
  const doubt = named ? "" : "grade not named, the lowest taken: ";
  const outside = row.listed ? "" : "; outside listed materials, an engineer has to accept it";
  return {
    yieldStrength: fy * unitOf[unit],
    tensileStrength: fu * unitOf[unit],
    citation: row.citation,
    words: `${doubt}${grade}: F_y ${fy} ${unit}, F_u ${fu} ${unit}${outside}`,
    listed: row.listed,
  };
}

/** Mill values put in place of the standard's, as far as they count. */
function withMill(mill: MillValues, { counts, atMost }: Known): Strengths {
  if (mill.yield === null && mill.tensile === null) return counts;
  const most = (value: number, of: "yieldStrength" | "tensileStrength"): number =>
    atMost ? Math.min(value, atMost[of]) : value;
  const typedYield = most(mill.yield ?? counts.yieldStrength, "yieldStrength");
  const tensileStrength = most(
    mill.tensile ?? Math.max(counts.tensileStrength, typedYield),
    "tensileStrength",
  );
  const yieldStrength = Math.min(typedYield, tensileStrength);
  const same = yieldStrength === counts.yieldStrength && tensileStrength === counts.tensileStrength;
  if (same && atMost) return { ...counts, words: `${counts.words}; mill values do not lower it` };
  const outside = atMost ? "no more than the standard's grades" : "outside listed materials";
  return {
    yieldStrength,
    tensileStrength,
    citation: judged("strengths of the mill certificate as entered"),
    words: `strengths of the mill certificate as entered, ${outside}`,
    listed: counts.listed,
  };
}
