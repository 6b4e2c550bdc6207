import type { Complaint, System } from "@hoopstay/core";
import type { ReadMore } from "@hoopstay/file";
import { compareReview, readVariants, type VariantHouse } from "@hoopstay/house";
import { loadInputs } from "../read/load-inputs.ts";
import { variantOf } from "../read/with-option.ts";
import { showCompare } from "../show/compare.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";
import { jsonOf } from "./held.ts";

declare const __VERSION__: string;

export interface CompareOptions {
  readonly json?: true;
  readonly units: System;
  readonly report?: string;
  readonly with?: readonly string[];
}

/** Today's house beside the variants of its file, or beside those asked for. */
export async function compare(
  houseFile: string,
  siteFile: string,
  { json, units, report, with: asked = [] }: CompareOptions,
): Promise<Outcome> {
  if (report !== undefined) refusePlace(report, [houseFile, siteFile]);
  const unclear: Complaint[] = [];
  const typed = asked.flatMap((text) => variantOf(text, unclear) ?? []);
  let variants: readonly VariantHouse[] = [];
  const readMore: ReadMore = (today, site, complaints) => {
    if (typed.length > 0 || asked.length === 0)
      variants = readVariants(today, typed, site, complaints);
  };
  const { today, site, digest, date } = loadInputs(houseFile, siteFile, readMore, unclear);
  const stamp = { version: __VERSION__, digest, date };
  const names = [today.house.name, site.name] as const;
  const review = compareReview(today, variants, site);
  if (report !== undefined) {
    const { renderCompare } = await import("@hoopstay/report");
    const [house, place] = names;
    writeWhole(report, renderCompare(review, { house, site: place, stamp, system: units }));
  }
  const text = json
    ? jsonOf(review, { meta: stamp, names })
    : showCompare(review, names, units, report);
  return { text, code: 0 };
}
