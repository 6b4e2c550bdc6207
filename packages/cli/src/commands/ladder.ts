import { stormLadder } from "@hoopstay/house";
import { showLadder, showLadderWritten } from "../show/ladder.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { PageOptions } from "./card.ts";
import type { Outcome } from "./check.ts";
import { forecastOf } from "./forecast.ts";
import { heldOf, jsonOf } from "./held.ts";

export interface LadderOptions extends PageOptions {
  readonly gust?: string;
}

/** What to do at which forecast gust: text, and a page on request. */
export async function ladder(
  houseFile: string,
  siteFile: string,
  { to, json, units, gust }: LadderOptions,
): Promise<Outcome> {
  const forecast = forecastOf(gust);
  if (to !== undefined) refusePlace(to, [houseFile, siteFile]);
  const held = heldOf(houseFile, siteFile, true);
  const record = stormLadder(held.evaluation, held.hold, forecast);
  if (to !== undefined) {
    const { renderLadder } = await import("@hoopstay/report");
    writeWhole(to, renderLadder(record, { system: units, stamp: held.meta }));
  }
  const shown = to === undefined ? showLadder(record, units) : showLadderWritten(record, units, to);
  return { text: json ? jsonOf(record, held) : shown, code: 0 };
}
