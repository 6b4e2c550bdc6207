import { type Citation, type Grade, gradeWords } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { list, table, words } from "../html/table.ts";
import { type Bibliography, gradeKey } from "../value/bibliography.ts";
import type { Matter } from "./sheet.ts";

/** The sources used, and how the places cited are known. */
export const sourcesTable = ({ sources }: Bibliography): string =>
  table(
    "Sources",
    "Sources used, in the order of first use, and how the places cited are known",
    [words("No."), words("Title"), words("Edition"), words("Publisher"), words("Known how")],
    sources.map(({ number, title, edition, publisher, grades }) => [
      `[${number}]`,
      ...[title, edition, publisher, grades.join(", ")].map(text),
    ]),
  );

/** Cautions, what is not checked, and the sources with how far each is known. */
export function limits({ review, bibliography }: Matter): string {
  const mention = (citation: Citation) => typed(bibliography.mention(citation));
  const grades = (Object.keys(gradeKey) as Grade[]).map(
    (grade) => `<b>${gradeKey[grade]}</b>: ${text(gradeWords[grade])}`,
  );
  const places = [...new Set(review.citations.filter(({ place }) => place !== "").map(mention))];
  return `<h3>Cautions</h3>
${list(review.cautions.map(typed))}
<h3>Not checked</h3>
${list(review.notChecked.map(typed))}
<h3>Sources</h3>
${sourcesTable(bibliography)}
<p>${grades.join("; ")}.</p>
${places.length === 0 ? "" : `<h3>Places cited, and judgements</h3>\n${list(places)}`}`;
}
