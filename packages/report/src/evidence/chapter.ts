import {
  type EvidenceChapter,
  type EvidenceCounts,
  type EvidenceRow,
  gradeWords,
  showCount,
  showOurs,
  sources,
} from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { numbers, rowOf, table, words } from "../html/table.ts";
import { unitWords } from "./unit-words.ts";

const columns = [words("Quantity"), numbers("Printed"), numbers("Here"), numbers("Off by")];

const marks = {
  agrees: "\u2713",
  known: "<b>known:</b>",
  differs: "<b>\u2717 differs:</b>",
} as const;

/** A chapter: one table for each file of values, its cases one under the other. */
export function chapterMarkup({
  rows,
  counts,
}: EvidenceChapter & { readonly counts: EvidenceCounts }): string {
  const files = new Map<string, EvidenceRow[]>();
  for (const row of rows) files.set(row.file, [...(files.get(row.file) ?? []), row]);
  const { values, agree, known, differ } = counts;
  return `<p>${showCount(values)} values: ${showCount(agree)} agree, ${showCount(known)} known, ${showCount(differ)} differ.</p>
${[...files].map(([file, own]) => fileTable(file, own)).join("\n")}`;
}

function fileTable(file: string, rows: readonly EvidenceRow[]): string {
  const [first] = rows as [EvidenceRow];
  const { title, edition, publisher } = sources[first.source];
  const places = new Set(rows.map(({ place }) => place));
  const tolerances = [...new Set(rows.map(({ tolerance }) => tolerance))];
  const allowed = tolerances.length === 1 ? `<br>Allowed: ${text(first.tolerance)}.` : "";
  return table(
    file,
    `${text(title)}, ${text(edition)}, ${text(publisher)}${
      places.size === 1 ? `: ${text(first.place)}` : ""
    } <small>${text(file)}${allowed}</small>`,
    columns,
    rows.map((row, place) => {
      const before = rows[place - 1];
      const heading =
        before?.case === row.case && before.place === row.place
          ? ""
          : caseRow(row, places.size > 1);
      return heading + valueRow(row, tolerances.length > 1);
    }),
    "proofs",
  );
}

/** The line above the values of a case: what is given, where it stands, how it is known. */
const caseRow = ({ case: name, inputs, place, grade }: EvidenceRow, placed: boolean): string =>
  `<tr><th scope="rowgroup" colspan="4">${text(name)} <small>${[
    ...(placed ? [place] : []),
    ...(inputs === "" ? [] : [inputs]),
    gradeWords[grade],
  ]
    .map(text)
    .join("; ")}</small>`;

/** What rounding alone leaves of a number. */
const rounding = 1e-11;

const figure = (value: number): string => String(Number(value.toPrecision(2)));

/** How far off, of what is allowed; digits that a machine may round otherwise are not printed. */
function offOf({ off, allowed, published, values }: EvidenceRow): string {
  const least = values === 1 ? rounding * Math.abs(Number(published)) : 0;
  if (off <= least) return allowed <= least ? "0" : `0 <small>of ${figure(allowed)}</small>`;
  if (off < allowed / 100) return `<small>under 1 % of ${figure(allowed)}</small>`;
  return `${figure(off)} <small>of ${figure(allowed)}</small>`;
}

function valueRow(row: EvidenceRow, withTolerance: boolean): string {
  const { quantity, published, verdict, tolerance, reason } = row;
  const why = reason ?? (withTolerance ? tolerance : "");
  return rowOf([
    `${text(quantity)}${why === "" ? "" : ` <small>${text(why)}</small>`}`,
    `${text(published)}${unitWords(row)}`,
    text(showOurs(row)),
    `${marks[verdict]} ${offOf(row)}`,
  ]);
}
