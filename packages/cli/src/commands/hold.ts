import { showHold } from "../show/hold.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";
import { type HeldOptions, heldOf, heldReview, jsonOf } from "./held.ts";

export interface HoldOptions extends HeldOptions {
  readonly certificate?: true;
  readonly report?: string;
}

/** What holds the house here, and the fewest anchors or ballast that would. */
export async function hold(
  houseFile: string,
  siteFile: string,
  options: HoldOptions,
): Promise<Outcome> {
  const { report } = options;
  if (report !== undefined) refusePlace(report, [houseFile, siteFile]);
  const held = heldOf(houseFile, siteFile, true);
  if (report !== undefined) {
    const { renderReport } = await import("@hoopstay/report");
    writeWhole(report, renderReport(heldReview(held, held.hold), { system: options.units }).html);
  }
  const text = options.json
    ? jsonOf(held.hold, held)
    : showHold(held.hold, held.names, options.units, options.certificate ?? false);
  return { text, code: held.hold.holds ? 0 : 1 };
}
