import {
  type EvidenceReview,
  type EvidenceRow,
  formulasWords,
  gradesWords,
  showCount,
  showOurs,
  sources,
  totalsWords,
} from "@hoopstay/core";
import { tableLines } from "./columns.ts";
import { bullet, notSealed, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

/** The chapters with their counts, what disagrees and why, and how far the formulas are held. */
export function showEvidence(
  { totals, chapters, formulas }: EvidenceReview,
  to: string | undefined,
): string {
  const rows = chapters.flatMap((chapter) => chapter.rows);
  const off = rows.filter(({ verdict }) => verdict === "differs");
  const known = rows.filter(({ verdict }) => verdict === "known");
  const lines = [
    `${totals.differ === 0 ? "AGREES" : "DIFFERS"}   ${showCount(totals.values)} values compared`,
    wrap(`${totalsWords(totals)}.`, "  "),
    ...tableLines(
      [
        { about: "", cells: ["values", "agree", "known", "differ"] },
        ...chapters.map(({ title, counts: { values, agree, known: explained, differ } }) => ({
          about: title,
          cells: [values, agree, explained, differ].map(showCount),
        })),
      ],
      44,
    ),
    bullet(`By how the source is known: ${gradesWords(totals)}.`),
    bullet(
      `${formulasWords(totals)}; ${formulas.filter(({ reason }) => reason !== null).length} of those stand with the reason.`,
    ),
    ...(off.length === 0 ? [] : ["  These differ:"]),
    ...off.map((row) =>
      bullet(
        `${row.title}, ${row.quantity}: printed ${row.published} ${row.unit}, here ${showOurs(row)}`,
      ),
    ),
    "  Known disagreements, each inside an allowance of its own:",
    ...knownLines(known),
    to === undefined
      ? "  Every value, and the formulas that none moves: --to evidence.html"
      : `  Verification sheet: ${visible(to)}`,
    wrap("That a value agrees says nothing of a house: no test of a real one stands here.", "  "),
    notSealed,
  ];
  return `${lines.join("\n")}\n`;
}

/** Known disagreements, those of one place and one reason together. */
function knownLines(rows: readonly EvidenceRow[]): string[] {
  const together = new Map<string, EvidenceRow[]>();
  for (const row of rows) {
    const key = `${sources[row.source].title}, ${row.edition}, ${row.place} [${row.grade}]: ${row.reason}`;
    together.set(key, [...(together.get(key) ?? []), row]);
  }
  return [...together].map(([key, own]) => bullet(`${key}. ${own.map(pairOf).join("; ")}`));
}

const pairOf = (row: EvidenceRow): string =>
  `${row.case}, ${row.quantity}: printed ${row.published}, here ${showOurs(row)}${row.unit === "1" ? "" : ` ${row.unit}`}`;
