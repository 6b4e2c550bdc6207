import type { System } from "@hoopstay/core";
import type { Stamp } from "../card/single.ts";
import { footerOf, numbered, type Sheet } from "../sheet/sheet.ts";
import { page } from "./page.ts";

/** What a page beside the report is of, what it was made from, and the units it is in. */
export interface PageOf {
  readonly house: string;
  readonly site: string;
  readonly stamp: Stamp;
  readonly system: System;
}

/** A self-contained page of sheets in the look of the report. */
export function sheetsPage(
  what: string,
  { house, site, stamp }: PageOf,
  sheets: readonly Sheet[],
): string {
  const { date, digest, version } = stamp;
  const identity = { house, site, date, digest, version, program: "hoopstay" };
  return page(what, identity, footerOf(identity), numbered(sheets, identity));
}
