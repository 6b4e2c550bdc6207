import { type EvidenceReview, formulasWords, gradesWords, totalsWords } from "@hoopstay/core";
import { flat, text } from "../html/escape.ts";
import { pageOf } from "../html/page.ts";
import { list } from "../html/table.ts";
import { indexOf, numberedAs, type Sheet } from "../sheet/sheet.ts";
import { evidenceStyle } from "../style/evidence.ts";
import { chapterMarkup } from "./chapter.ts";
import { formulasMarkup } from "./formulas.ts";
import { countsTable, disagreements } from "./totals.ts";

/** What the page was made by. */
interface MadeBy {
  readonly program: string;
  readonly version: string;
}

const cautions = [
  "Agreement with published values shows that formulas, tables and factors are computed as printed. It does not show that they are the right ones for a house, a soil or a storm.",
  "No test of a real house stands here, and none is known to the program.",
  "Values from memory were never confirmed in the source. Values worked by other means stand in no publication: they were computed once more, by hand or by other code, from the same formulas.",
  "A formula that no value moves is checked by laws, by its second evaluation, or not at all: the last sheet says which.",
];

/**
 * The verification sheet: every published value beside what is computed now.
 *
 * @returns HTML, the same in every locale
 */
export function renderEvidence(review: EvidenceReview, { program, version }: MadeBy): string {
  const { totals, chapters } = review;
  const off = chapters.flatMap(({ rows }) => rows).filter(({ verdict }) => verdict === "differs");
  const later: Sheet[] = [
    ...chapters.map((chapter) => ({
      id: chapter.id,
      title: text(chapter.title),
      body: chapterMarkup(chapter),
    })),
    {
      id: "formulas",
      title: "Formulas, and the values that hold them",
      body: formulasMarkup(review),
    },
  ];
  const first = { id: "answer", title: "What was compared" };
  const verdict = totals.differ === 0 ? "\u2713 All agree, or as is known" : "\u2717 Some differ";
  const body = `<p class="verdict"><b>${verdict}</b></p>
<p class="headline">${text(totalsWords(totals))}.</p>
${list(cautions.map(text))}
<p>By how the source is known: ${text(gradesWords(totals))}. ${text(formulasWords(totals))}.</p>
${countsTable(review)}
${disagreements("Values that differ", "Values that differ: a fault, here or in the file.", off)}
${disagreements(
  "Known disagreements",
  "Known disagreements. Ours lies outside the tolerance of the printed value and inside an allowance of its own.",
  chapters.flatMap(({ rows }) => rows).filter(({ verdict: one }) => one === "known"),
)}
<h3>Sheets</h3>
${indexOf([first, ...later])}`;
  const made = `${flat(program)} ${flat(version)}`;
  const sheets = [{ ...first, body }, ...later];
  const title = "Verification sheet";
  return pageOf(
    `${title}: published values and what is computed`,
    `${title}: published values and what is computed`,
    `${title} - ${program} ${version}`,
    numberedAs(sheets, ["verification", made]),
    evidenceStyle,
  );
}
