import type { ChainReview, System } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { shown } from "./checks.ts";
import { linkNumbers } from "./link-names.ts";

/** What was not checked, why, and what it would have to carry. */
export function uncheckedTable(chain: ChainReview, system: System): string {
  if (chain.notChecked.length === 0) return "<p>Nothing is left out of the links above.</p>";
  const known = linkNumbers(chain);
  return table(
    "Links not checked",
    "Not checked. A link without a number is no link that holds: this is what it would have to carry at the design wind.",
    [words("Link, and why"), numbers("Would have to carry")],
    chain.notChecked.map(({ link, words: what, why, demand }) => [
      `${known.get(link)} ? ${typed(what)}<br><small>${typed(why)}</small>`,
      demand === null ? "not known" : `<b>${shown(demand, system)}</b>`,
    ]),
    "plain",
  );
}
