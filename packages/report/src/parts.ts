import {
  type Chapter,
  type CompareReview,
  type Review,
  type System,
  showWords,
} from "@hoopstay/core";
import { sideBySide } from "./compare/side-by-side.ts";
import { typed } from "./html/escape.ts";
import { list } from "./html/table.ts";
import { agreed, countWords } from "./sheet/agreed.ts";
import { limits, sourcesTable } from "./sheet/limits.ts";
import { verified } from "./sheet/verified.ts";
import { working } from "./sheet/working.ts";
import { Bibliography } from "./value/bibliography.ts";

export { anchorPlan } from "./drawing/anchor-plan.ts";
export { chainSheet } from "./sheet/chain.ts";
export { holdSheet } from "./sheet/hold.ts";
export { stormMarkup } from "./sheet/storm.ts";
export { towMarkup } from "./sheet/tow.ts";

/** Cautions, what is not checked and the sources of a review, as on its last sheet. */
export const limitsMarkup = (review: Review, system: System): string =>
  limits({ review, system, bibliography: new Bibliography(review.citations, review.chapters) });

/**
 * The working of a review, or of a case of it in full, as the report prints it, evaluated twice.
 *
 * @throws Error naming the steps whose second evaluation disagrees
 */
export function workingMarkup(review: Review, detail: readonly Chapter[], system: System): string {
  const chapters = [...review.chapters, ...detail];
  const shown = detail.length > 0 ? detail : review.chapters;
  const matter = { review, system, bibliography: new Bibliography(review.citations, chapters) };
  return `<p>${countWords(agreed(shown))}. In SI, as in the report; results stand
in your units too.</p>
${verified()}
${working(shown, matter, detail.length > 0 ? "Detail" : "Working")}
${sourcesTable(matter.bibliography)}`;
}

/** Houses side by side, with what changes in plain words. */
export const compareMarkup = (review: CompareReview, system: System): string =>
  `<div class="says">${list(review.sentences.map((one) => typed(showWords(one, system))))}</div>
${sideBySide(review, system)}`;
