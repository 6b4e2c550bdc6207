import { type CompareReview, showWords, unpricedInAll, type VariantReview } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { type PageOf, sheetsPage } from "../html/sheets-page.ts";
import { list } from "../html/table.ts";
import { cutSheet } from "./cut-sheet.ts";
import { findingsOf } from "./findings.ts";
import { outlines } from "./outlines.ts";
import { sideBySide } from "./side-by-side.ts";

/**
 * Today's house beside its variants: one self-contained page in the look of the report.
 *
 * @returns HTML, the same in every locale
 */
export function renderCompare(review: CompareReview, of: PageOf): string {
  const { system } = of;
  const houses = [review.today, ...review.variants];
  const findings = findingsOf(houses, system);
  return sheetsPage("Side by side", of, [
    {
      id: "answer",
      title: "Today\u2019s house beside its variants",
      body: `<div class="says">${list(review.sentences.map((one) => typed(showWords(one, system))))}</div>
${sideBySide(review, system)}
<p>Gusts are real gusts, as a forecast gives them: the strongest three seconds, in open country,
33 ft (10 m) above ground. Act well before the gust in the table.</p>
${notPriced(houses)}
${findings.length === 0 ? "" : `<h3>Findings</h3>\n${list(findings)}`}`,
    },
    {
      id: "outlines",
      title: "Drawn side by side",
      body: `<p>All cross sections are to one scale, all side views to another, the same both ways. Triangles
under the rail are the anchors of its right side.</p>
${outlines(houses, system)}`,
    },
    { id: "cuts", title: "What to buy, and how to cut it", body: cutSheet(review, system) },
  ]);
}

function notPriced(houses: readonly VariantReview[]): string {
  const what = unpricedInAll(houses).map(typed).join("; ");
  return what === "" ? "" : `<p>In no cost, for lack of a price: ${what}.</p>`;
}
