import type { Chapter, Review, System } from "@hoopstay/core";
import { page } from "./html/page.ts";
import { madeFromMarkup } from "./recheck/made-from.ts";
import { agreed, countWords } from "./sheet/agreed.ts";
import { answer } from "./sheet/answer.ts";
import { cases } from "./sheet/cases.ts";
import { chainSheet } from "./sheet/chain.ts";
import { drawings } from "./sheet/drawings.ts";
import { governing } from "./sheet/governing.ts";
import { holdSheet } from "./sheet/hold.ts";
import { inputs } from "./sheet/inputs.ts";
import { limits } from "./sheet/limits.ts";
import { footerOf, indexOf, type Matter, numbered, type Sheet } from "./sheet/sheet.ts";
import { stormMarkup } from "./sheet/storm.ts";
import { takeOff } from "./sheet/take-off.ts";
import { verified } from "./sheet/verified.ts";
import { working } from "./sheet/working.ts";
import { Bibliography } from "./value/bibliography.ts";

export { renderCard } from "./card/card.ts";
export { renderLadder } from "./card/ladder.ts";
export { renderCompare } from "./compare/compare.ts";
export { renderEvidence } from "./evidence/evidence.ts";
export { type MadeFrom, madeFrom } from "./recheck/made-from.ts";
export { type PrintedLine, printedLines } from "./recheck/printed-lines.ts";
export { renderSearch } from "./search/search.ts";

export interface ReportOptions {
  readonly system: System;
  /** A load case worked in full after the last sheet, by its name. */
  readonly detail?: { readonly of: string; readonly chapters: readonly Chapter[] } | null;
}

/** The report as one text, and how many of its steps have a formula, were evaluated twice and agree. */
export interface Report {
  readonly html: string;
  readonly steps: number;
  readonly evaluated: number;
  readonly agreeing: number;
}

/**
 * Makes the calculation sheet of a review: one self-contained HTML text, the same in every locale.
 *
 * @throws Error naming the steps whose second evaluation disagrees; no report is made of them
 */
export function renderReport(review: Review, options: ReportOptions): Report {
  const { system } = options;
  const detail = options.detail?.chapters ?? [];
  const chapters = [...review.chapters, ...detail];
  const counted = agreed(chapters);
  const matter: Matter = {
    review,
    system,
    bibliography: new Bibliography(review.citations, chapters),
  };
  const count = `<p><b>${countWords(counted)}.</b> The working is in SI
(m, N, Pa, rad), because the constants of its formulas are; results stand in the reader's units too. Numbers are
shown to six figures and carried in full. Where a number put in came out of an earlier step, a step that
gives it is named beneath; one that names none is an input, a size of the house or a place in it.</p>`;
  const { hold, chain, ladder } = review;
  const holding: Sheet[] = [
    ...(hold === null
      ? []
      : [
          {
            id: "hold",
            title: "What holds it here",
            body: holdSheet(hold, review.drawings, system),
          },
        ]),
    ...(chain === null
      ? []
      : [
          {
            id: "chain",
            title: "What goes first",
            body: chainSheet(chain, review.drawings, review.combination, system),
          },
        ]),
    ...(ladder === null
      ? []
      : [{ id: "storm", title: "The storm ladder", body: stormMarkup(ladder, system) }]),
  ];
  const later: Sheet[] = [
    ...holding,
    { id: "governing", title: "Governing cases", body: governing(matter) },
    { id: "drawings", title: "Drawings", body: drawings(matter) },
    { id: "inputs", title: "Inputs and assumptions", body: inputs(matter) },
    { id: "take-off", title: "Take-off and weight", body: takeOff(matter) },
    {
      id: "working",
      title: "Working",
      body: count + verified() + working(review.chapters, matter, "Working"),
    },
    { id: "cases", title: "All load cases", body: cases(matter) },
    { id: "limits", title: "Cautions, what is not checked, sources", body: limits(matter) },
  ];
  if (detail.length > 0) {
    later.push({ id: "detail", title: "Details in full", body: working(detail, matter, "Detail") });
  }
  const first = { id: "answer", title: "The answer" };
  const index = indexOf([first, ...later]);
  const sheets = [{ ...first, body: answer(matter, index) }, ...later];
  return {
    html: page(
      "Wind check",
      review,
      footerOf(review),
      `${numbered(sheets, review)}\n${madeFromMarkup(review, system, options.detail?.of ?? null)}`,
    ),
    ...counted,
  };
}
