import { type Complaint, Refusal, type Review } from "@hoopstay/core";
import { readInputs } from "@hoopstay/file";
import { chainOf, holdReview, makeReview, workingOfCase } from "@hoopstay/house";
import type { MadeFrom } from "@hoopstay/report";
import { sha256 } from "../read/load-inputs.ts";
import { textWithin } from "../read/read-text.ts";
import { showRecheck, stands } from "../show/recheck.ts";
import type { Outcome } from "./check.ts";
import { differingLines } from "./differing-lines.ts";
import { evaluatedFrom, heldReview } from "./held.ts";

declare const __VERSION__: string;

/** Far above any report; one of a large house has a megabyte. */
const mostBytes = 20_000_000;

const tooLarge = (file: string): Complaint => ({
  code: "file-too-large",
  file,
  given: "more than 20 MB",
  expected: "a report of this program",
  mend: "Is this the right file?",
});

/** Reads a report, makes it again from the files in it, and tells every line that differs. */
export async function recheck(file: string): Promise<Outcome> {
  const { madeFrom, printedLines, renderReport } = await import("@hoopstay/report");
  const given = textWithin(file, mostBytes, {
    tooLarge: tooLarge(file),
    notText: noInputs(file),
  }).replaceAll("\r\n", "\n");
  const from = madeFrom(given);
  if (from === undefined) throw new Refusal([noInputs(file)]);
  const { review, detail } = reviewAgain(from, file);
  const { html } = renderReport(review, { system: from.units, detail });
  const before = printedLines(given);
  const same = given === html;
  const rechecked = {
    from,
    now: __VERSION__,
    digest: review.digest,
    names: [review.house, review.site],
    same,
    printed: before.length,
    differences: same ? [] : differingLines(before, printedLines(html)),
  } as const;
  return { text: showRecheck(file, rechecked), code: stands(rechecked) ? 0 : 1 };
}

/** The record made again; its stamp keeps the version of the report, so that only answers differ. */
function reviewAgain(from: MadeFrom, file: string) {
  const names = { house: `house file in ${file}`, site: `site file in ${file}` };
  const textOf = (name: string): string =>
    name === names.house ? from.files.house : from.files.site;
  const evaluated = evaluatedFrom(
    readInputs(names.house, names.site, textOf, sha256),
    from.version,
  );
  const { evaluation, meta } = evaluated;
  const of = from.case;
  const detail = of === null ? null : { of, chapters: workingOfCase(evaluation, of) };
  const reviewOf: Readonly<Record<MadeFrom["asked"], () => Review>> = {
    check: () => makeReview(evaluation, meta, { full: true }),
    hold: () => heldReview(evaluated, holdReview(evaluation, { search: true })),
    first: () => makeReview(evaluation, meta, { full: true, chain: chainOf(evaluation) }),
  };
  return { review: reviewOf[from.asked](), detail };
}

const noInputs = (file: string): Complaint => ({
  code: "report-without-inputs",
  file,
  given: "a file that carries no house and site to make it again from",
  expected: "a report written by check, hold or first with --report, whole",
  mend: "Give the report itself, not a print or a part of it. Cards, ladders and comparisons carry no inputs.",
});
