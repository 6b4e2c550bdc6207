import { cautions, chainOf, makeReview, notCheckedBeside } from "@hoopstay/house";
import { showChain } from "../show/chain.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";
import { evaluatedOf, type HeldOptions, jsonOf } from "./held.ts";

export interface FirstOptions extends HeldOptions {
  readonly report?: string;
}

/** What gives way first: every link of the load path, weakest first. */
export async function first(
  houseFile: string,
  siteFile: string,
  { json, units, report }: FirstOptions,
): Promise<Outcome> {
  if (report !== undefined) refusePlace(report, [houseFile, siteFile]);
  const evaluated = evaluatedOf(houseFile, siteFile);
  const { evaluation, meta, names } = evaluated;
  const chain = chainOf(evaluation);
  if (report !== undefined) {
    const { renderReport } = await import("@hoopstay/report");
    const review = makeReview(evaluation, meta, { full: true, chain });
    writeWhole(report, renderReport(review, { system: units }).html);
  }
  const { review } = chain;
  const beside = notCheckedBeside(review);
  const { combination } = evaluation.site;
  const text = json
    ? jsonOf({ ...review, notCheckedBeside: beside, cautions }, evaluated)
    : showChain(review, names, { system: units, combination, beside, report });
  return { text, code: review.holds ? 0 : 1 };
}
