import { makeReview, moveCard } from "@hoopstay/house";
import { showCard, showCardWritten } from "../show/card.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";
import { type HeldOptions, heldOf, jsonOf } from "./held.ts";

export interface PageOptions extends HeldOptions {
  readonly to?: string;
}

/** The move card: a page on request, else text. */
export async function card(
  houseFile: string,
  siteFile: string,
  { to, json, units }: PageOptions,
): Promise<Outcome> {
  if (to !== undefined) refusePlace(to, [houseFile, siteFile]);
  const held = heldOf(houseFile, siteFile, true);
  const record = moveCard(held.evaluation, held.hold, held.meta);
  if (to !== undefined) {
    const { renderCard } = await import("@hoopstay/report");
    const { drawings } = makeReview(held.evaluation, held.meta, { full: false });
    writeWhole(to, renderCard(record, drawings, { system: units }));
  }
  const shown = to === undefined ? showCard(record, units) : showCardWritten(record, units, to);
  return { text: json ? jsonOf(record, held) : shown, code: record.go ? 0 : 1 };
}
