import { Refusal, type System } from "@hoopstay/core";
import { type DesignRange, readRange, searchDesigns } from "@hoopstay/house";
import { loadInputs } from "../read/load-inputs.ts";
import { showSearch } from "../show/search.ts";
import { refusePlace, writeWhole } from "../write-whole.ts";
import type { Outcome } from "./check.ts";
import { jsonOf } from "./held.ts";
import { runSearch } from "./run-search.ts";

declare const __VERSION__: string;

export interface SearchOptions {
  readonly json?: true;
  readonly units: System;
  readonly report?: string;
  readonly seconds?: string;
}

/** Exit code of a program that Ctrl-C stopped. */
const stopped = 130;

/** Seconds to look; without limit where none are given. */
function secondsOf(given: string | undefined): number {
  if (given === undefined) return Number.POSITIVE_INFINITY;
  const seconds = given.trim() === "" ? Number.NaN : Number(given);
  if (seconds > 0 && Number.isFinite(seconds)) return seconds;
  throw new Refusal([
    {
      code: Number.isFinite(seconds) ? "not-positive" : "not-a-number",
      key: "--seconds",
      given,
      expected: "time to look, in seconds, such as 30",
      mend: "Leave it out to look at every design.",
    },
  ]);
}

/** Designs of a range that no other beats. */
export async function search(
  houseFile: string,
  siteFile: string,
  { json, units, report, seconds: given }: SearchOptions,
): Promise<Outcome> {
  const seconds = secondsOf(given);
  if (report !== undefined) refusePlace(report, [houseFile, siteFile]);
  let range: DesignRange | undefined;
  const { today, site, digest, date } = loadInputs(houseFile, siteFile, (...read) => {
    const [house, , complaints] = read;
    range = readRange(house, complaints);
  });
  const { input, house } = today;
  const asked = { input, house, site, range: range as DesignRange };
  const { review, interrupted } = await runSearch(searchDesigns(asked), seconds);
  const names = [house.name, site.name] as const;
  const stamp = { version: __VERSION__, digest, date };
  if (report !== undefined) {
    const { renderSearch } = await import("@hoopstay/report");
    const [of, place] = names;
    writeWhole(report, renderSearch(review, { house: of, site: place, stamp, system: units }));
  }
  const text = json
    ? jsonOf(review, { meta: stamp, names })
    : showSearch(review, names, units, report);
  return { text, code: interrupted ? stopped : 0 };
}
