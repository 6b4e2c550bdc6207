import type { CaseRow, Review } from "@hoopstay/core";
import { compact, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { type ColumnUnit, columnUnit, ratio } from "../value/reader.ts";
import type { Matter } from "./sheet.ts";

const components = ["F_x", "F_y", "F_z", "M_x", "M_y", "M_z"];

/** Every load case, a table for each load set, grouped by wind direction to save words. */
export function cases({ review, system }: Matter): string {
  const all = review.cases;
  const part = (from: number) => all.flatMap((row) => row.components.slice(from, from + 3));
  const force = columnUnit("force", system, part(0));
  const moment = columnUnit("moment", system, part(3));
  const sets = groupedBy(all, ({ loadSet }) => loadSet);
  return `<p>${all.length} load cases at the design speed. Forces in ${force.symbol}, moments in ${moment.symbol}, about
the middle of the house at ground level; x to the right, y to the front, z up. Ratios above 1.00 fail and are printed bold.</p>
${sets.map(([set, rows]) => caseTable(set, rows, review, force, moment)).join("\n")}`;
}

function groupedBy(
  rows: readonly CaseRow[],
  keyOf: (row: CaseRow) => string,
): [string, CaseRow[]][] {
  const groups = new Map<string, CaseRow[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return [...groups];
}

/** Headings of the ratios, whether or not the review names the components before them. */
const ratioHeadings = ({ caseColumns }: Review, count: number): readonly string[] =>
  Array.from({ length: count }, (_, place) => caseColumns.at(place - count) ?? "");

function caseTable(
  set: string,
  rows: readonly CaseRow[],
  review: Review,
  force: ColumnUnit,
  moment: ColumnUnit,
): string {
  const states = [...new Set(review.states.filter((s) => s.set === set).map((s) => s.words))];
  const ratios = ratioHeadings(review, rows[0]?.ratios.length ?? 0);
  const columns = [
    ...["Case", "Reading", "Set", "Inside", "Weight"].map(words),
    ...components.map((name) => ({
      ...numbers(name),
      markup: name.replace(/_(.)/, "<sub>$1</sub>"),
    })),
    ...ratios.map(numbers),
  ];
  const groups = groupedBy(
    rows,
    ({ direction, loadCase }) => `${direction}, load case ${loadCase}`,
  );
  return table(
    `Load cases of set ${set}`,
    `Load set ${typed(set)}: ${states.map(typed).join("; ") || "no state"}`,
    columns,
    groups.map(([group, members]) => {
      const head = `<tr><th scope="colgroup" colspan="${columns.length}">${typed(group)}`;
      return [head, ...members.map((row) => caseRow(row, force, moment))].join("\n");
    }),
    "cases",
  );
}

/** End tags of cells and rows are optional in HTML; hundreds of rows are a third smaller without. */
function caseRow(row: CaseRow, force: ColumnUnit, moment: ColumnUnit): string {
  const cells = [
    ...[row.reading, row.set, row.inside, row.weight].map(compact),
    ...row.components.slice(0, 3).map(force.cell),
    ...row.components.slice(3, 6).map(moment.cell),
    ...row.ratios.map(ratio),
  ];
  return `<tr><th>${compact(row.id)}<td>${cells.join("<td>")}`;
}
