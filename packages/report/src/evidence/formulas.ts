import {
  type EvidenceReview,
  type FormulaReach,
  formulasWords,
  gradeWords,
  showCount,
  sources,
} from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";

const nameOf = ({ id, name }: FormulaReach): string => `${text(name)} <small>${text(id)}</small>`;

const sourceOf = ({ source, place, grade }: FormulaReach): string =>
  `${text(sources[source].edition)}, ${text(place)} <small>${text(gradeWords[grade])}</small>`;

/** Which formulas a value moves, and why none moves the others. */
export function formulasMarkup({ formulas, totals }: EvidenceReview): string {
  const reached = formulas.filter(({ heldBy }) => heldBy !== null);
  const others = formulas.filter(({ heldBy }) => heldBy === null);
  const byReason = [...new Set(others.map(({ reason }) => reason ?? "no reason is given"))];
  return `<p>${text(formulasWords(totals))}. A value holds a formula when its row changes as the formula\u2019s
result is changed by one part in a hundred; being evaluated beside it is not enough.</p>
${byReason
  .map((reason) => {
    const own = others.filter((one) => (one.reason ?? "no reason is given") === reason);
    return table(
      `Moved by no value: ${reason}`,
      `Moved by no value, ${own.length}: ${text(reason)}`,
      [words("Formula"), words("Source")],
      own.map((one) => [nameOf(one), sourceOf(one)]),
      "proofs",
    );
  })
  .join("\n")}
${table(
  "Formulas that a value moves",
  `Formulas that a value moves, ${reached.length}, with how many rows evaluate each and the first that moves`,
  [words("Formula"), words("First value that moves"), numbers("Rows")],
  reached.map((one) => [nameOf(one), text(one.heldBy ?? ""), showCount(one.rows)]),
  "proofs",
)}`;
}
