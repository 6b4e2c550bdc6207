import type { System } from "@hoopstay/core";
import { metaOf } from "@hoopstay/file";
import { evaluate, makeReview, resultOf, workingOfCase } from "@hoopstay/house";
import { loadInputs } from "../read/load-inputs.ts";
import { showAnswer } from "../show/answer.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";

declare const __VERSION__: string;

export interface CheckOptions {
  readonly json?: true;
  readonly units: System;
  readonly report?: string;
  readonly case?: string;
}

/** What a command prints, and the exit code it ends with. */
export interface Outcome {
  readonly text: string;
  readonly code: number;
}

/** The main job: two files in, the answer out, and on request the JSON and the report. */
export async function check(
  houseFile: string,
  siteFile: string,
  options: CheckOptions,
): Promise<Outcome> {
  if (options.report !== undefined) refusePlace(options.report, [houseFile, siteFile]);
  const inputs = loadInputs(houseFile, siteFile);
  const meta = metaOf(inputs, __VERSION__);
  const evaluation = evaluate(inputs.house, inputs.site);
  const of = options.case;
  const detail = of === undefined ? null : { of, chapters: workingOfCase(evaluation, of) };
  const review = makeReview(evaluation, meta, { full: options.report !== undefined });
  if (options.report !== undefined) {
    const { renderReport } = await import("@hoopstay/report");
    writeWhole(options.report, renderReport(review, { system: options.units, detail }).html);
  }
  const text = options.json
    ? `${JSON.stringify(resultOf(evaluation, meta, review.holds))}\n`
    : showAnswer(review, options.units, options.report);
  return { text, code: review.holds ? 0 : 1 };
}
