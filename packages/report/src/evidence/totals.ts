import { type EvidenceReview, type EvidenceRow, showCount, showOurs } from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { unitWords } from "./unit-words.ts";

/** How many values of each chapter were compared, and how it went. */
export const countsTable = ({ chapters, totals }: EvidenceReview): string =>
  table(
    "Values compared, by chapter",
    "Values compared, by chapter of the calculation",
    [words("Chapter"), numbers("Values"), numbers("Agree"), numbers("Known"), numbers("Differ")],
    [
      ...chapters.map(({ id, title, counts }) => [
        `<a href="#${id}">${text(title)}</a>`,
        ...[counts.values, counts.agree, counts.known, counts.differ].map(showCount),
      ]),
      [
        "<b>all</b>",
        ...[totals.values, totals.agree, totals.known, totals.differ].map(
          (count) => `<b>${showCount(count)}</b>`,
        ),
      ],
    ],
    "plain",
  );

/** Values that are off, with the reason where one is known. */
export const disagreements = (
  label: string,
  caption: string,
  rows: readonly EvidenceRow[],
): string =>
  rows.length === 0
    ? ""
    : table(
        label,
        caption,
        [words("Where, and why"), numbers("Printed"), numbers("Here")],
        rows.map((row) => [
          `${text(row.title)}, <b>${text(row.quantity)}</b><br><small>${text(row.reason ?? "")}</small>`,
          `${text(row.published)}${unitWords(row)}`,
          text(showOurs(row)),
        ]),
        "plain",
      );
