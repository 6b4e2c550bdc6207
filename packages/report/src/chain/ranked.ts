import {
  type ChainReview,
  firstToGo,
  type LinkCheck,
  type LinkInState,
  type System,
  windFrom,
} from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { numbers, rowOf, table, words } from "../html/table.ts";
import { gustFigure, speedUnit } from "../value/reader.ts";
import { linkNumbers } from "./link-names.ts";

type Combination = "ASD" | "LRFD";

/** What gives way, which one, and how it was computed. */
export const gives = ({ part, place, run }: LinkCheck): string =>
  `${typed(part)}<br><small>${typed(place)}; ${typed(run)}</small>`;

/** The state and the wind of a check. */
export const when = ({ state, check }: LinkInState): string =>
  `${typed(state)}, wind ${typed(windFrom(check.governs.direction))}`;

/** The owner's list: weakest first, the gust of each link beside it. */
export function rankedTable(chain: ChainReview, combination: Combination, system: System): string {
  const known = linkNumbers(chain);
  const first = firstToGo(chain);
  const before = chain.links.findIndex(({ id }) => id === first);
  const rows = chain.links.map(({ id, words: link, worst }, place) => {
    const said = `${known.get(id)} ${typed(link)}`;
    const named =
      place < before ? `${said} <span class="tag">\u25c7 the house is rated without</span>` : said;
    const weak = worst.check.ratio[combination] > 1 ? "\u2717 " : "";
    return rowOf([
      id === first ? `<b>${said}</b> <span class="tag">\u25c0 first to go</span>` : named,
      `${typed(worst.check.part)}<br><small>${typed(worst.check.place)}; ${when(worst)}</small>`,
      `<b>${weak}${text(gustFigure(worst.check.workingGust, system))}</b>`,
    ]);
  });
  return table(
    "Links, weakest first",
    "Weakest first, with the gust each is good for. The numbers are those of the drawing. \u2717: less than the design wind asks.",
    [words("Link"), words("What gives way, where and when"), numbers(`Gust, ${speedUnit(system)}`)],
    rows,
    "plain",
  );
}

/** In every state the link that goes first. */
export function firstByState(chain: ChainReview, system: System): string {
  const named = new Map(chain.links.map(({ id, words: link }) => [id, link]));
  return table(
    "The first link to go in every state",
    "In every state: what goes first, and at which gust.",
    [words("State"), words("Holds?"), words("First to go"), numbers(`Gust, ${speedUnit(system)}`)],
    chain.states.map(({ words: state, now, first, holds }) => [
      `${typed(state)}${now ? ' <span class="tag">\u25b6 as it is now</span>' : ""}`,
      holds ? "\u2713 holds" : "<b>\u2717 no</b>",
      `${typed(named.get(first.link) ?? first.part)}<br><small>${typed(first.part)}; ${typed(first.place)}</small>`,
      text(gustFigure(first.workingGust, system)),
    ]),
    "plain",
  );
}
