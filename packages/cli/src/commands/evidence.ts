import { readFileSync } from "node:fs";
import { join } from "node:path";
import { makeEvidence, type Texts } from "@hoopstay/evidence";
import { showEvidence } from "../show/evidence.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";

declare const __VERSION__: string;

export interface EvidenceOptions {
  readonly to?: string;
  readonly json?: true;
}

/** The published values, as they lie beside the program. */
const publishedTexts = (): Texts =>
  JSON.parse(readFileSync(join(__dirname, "published.json"), "utf8")) as Texts;

/** Every published value beside what is computed now; a page on request. */
export async function evidence({ to, json }: EvidenceOptions): Promise<Outcome> {
  if (to !== undefined) refusePlace(to, []);
  const review = makeEvidence(publishedTexts());
  const stamp = { program: "hoopstay", version: __VERSION__ };
  if (to !== undefined) {
    const { renderEvidence } = await import("@hoopstay/report");
    writeWhole(to, renderEvidence(review, stamp));
  }
  const text = json ? `${JSON.stringify({ ...stamp, ...review })}\n` : showEvidence(review, to);
  return { text, code: review.totals.differ === 0 ? 0 : 1 };
}
