import type { Grade } from "../source/citation.ts";
import { gradeWords } from "../source/citation.ts";
import type { EvidenceRow, EvidenceTotals } from "./evidence-review.ts";

/** A count with its thousands parted. */
export const showCount = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");

/** A computed number of a row, to more figures than are printed. */
export const showOurs = ({ ours }: Pick<EvidenceRow, "ours">): string =>
  typeof ours === "number" ? String(Number(ours.toPrecision(6))) : ours;

/** How many values were compared, of which kind, and how it went. */
export function totalsWords({ values, agree, known, differ, grades }: EvidenceTotals): string {
  const reworked = grades.derived ?? 0;
  return `${showCount(values - reworked)} printed values and ${showCount(reworked)} worked by other means compared: ${showCount(
    agree,
  )} agree, ${showCount(known)} disagree as is known and explained, ${
    differ === 0 ? "none differs otherwise" : `${showCount(differ)} DIFFER`
  }`;
}

/** The same by how the sources are known. */
export const gradesWords = ({ grades }: EvidenceTotals): string =>
  (Object.entries(grades) as [Grade, number][])
    .map(
      ([grade, count]) =>
        `${showCount(count)} ${grade === "derived" ? "by hand or by other code, printed nowhere" : gradeWords[grade]}`,
    )
    .join("; ");

/** How many formulas of the working the values hold. */
export const formulasWords = ({ formulas: { declared, reached } }: EvidenceTotals): string =>
  `${showCount(declared)} formulas and constants: ${showCount(reached)} move at least one of these values, ${showCount(
    declared - reached,
  )} move none`;
