import type { Review, System } from "@hoopstay/core";
import { flat, typed } from "../html/escape.ts";
import type { Bibliography } from "../value/bibliography.ts";

/** What every sheet is made from. */
export interface Matter {
  readonly review: Review;
  readonly system: System;
  readonly bibliography: Bibliography;
}

/** A sheet before it has its number. */
export interface Sheet {
  readonly id: string;
  readonly title: string;
  readonly body: string;
}

/** What a sheet is of, and what it was made from and by. */
export type Identity = Pick<Review, "house" | "site" | "digest" | "program" | "version" | "date">;

/** The first figures of the input digest: enough to tell two runs apart. */
export const shortDigest = (digest: string): string => digest.slice(0, 12);

/** Numbers the sheets and gives each its header line. */
export function numbered(sheets: readonly Sheet[], of: Identity): string {
  const { house, site, digest, program, version, date } = of;
  return numberedAs(sheets, [
    `house ${typed(house)}`,
    `site ${typed(site)}`,
    ...(date === null ? [] : [typed(date)]),
    `inputs ${flat(shortDigest(digest))}`,
    `${flat(program)} ${flat(version)}`,
  ]);
}

/** The same under a header line of any markup. */
export function numberedAs(sheets: readonly Sheet[], header: readonly string[]): string {
  const identity = header.join(" \u00b7 ");
  return sheets
    .map(
      ({ id, title, body }, place) => `<section class="sheet" id="${id}" aria-labelledby="${id}-h">
<p class="head"><b>Sheet ${place + 1} of ${sheets.length}</b> \u00b7 ${identity} \u00b7 not a sealed design</p>
<h2 id="${id}-h">${title}</h2>
${body}
</section>`,
    )
    .join("\n");
}

/** What stands at the foot of every printed page. */
export const footerOf = ({ house, digest, program, version }: Identity): string =>
  `${house} - inputs ${shortDigest(digest)} - ${program} ${version}`;

/** The index of sheets, for the first page. */
export const indexOf = (sheets: readonly Pick<Sheet, "id" | "title">[]): string =>
  `<nav class="index" aria-label="Sheets"><ol>${sheets
    .map(({ id, title }) => `<li><a href="#${id}">${title}</a></li>`)
    .join("")}</ol></nav>`;
