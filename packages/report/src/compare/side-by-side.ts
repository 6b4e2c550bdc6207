import {
  type CompareReview,
  type CutList,
  type System,
  unpricedInAll,
  unpricedOnlyHere,
  type VariantReview,
} from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { rowOf, table, words } from "../html/table.ts";
import { cutLength } from "../value/cut-length.ts";
import { columnUnit, gustFigure, speedUnit } from "../value/reader.ts";
import { money, share } from "./money.ts";
import { titled } from "./titled.ts";
import { weakestOf } from "./weakest.ts";

const none = "\u2013";

/** Today's house and its variants as columns, what matters to the owner first. */
export function sideBySide({ today, variants }: CompareReview, system: System): string {
  const houses = [today, ...variants];
  const row = (what: string, cell: (house: VariantReview) => string): string =>
    rowOf([what, ...houses.map(cell)]);
  const force = columnUnit(
    "force",
    system,
    houses.flatMap(({ weight, pull }) => [weight.high, pull.high]),
  );
  const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    `${force.cell(low)} to ${force.cell(high)}`;
  const columns = houses.length + 1;
  const inAll = unpricedInAll(houses);
  const head = (title: string): string =>
    `<tr><th scope="colgroup" colspan="${columns}"><span class="stay">${title}</span>`;
  return table(
    "Houses side by side",
    `Side by side. The large number is the gust the house is good for in its worst state, in ${speedUnit(system)}: the
house as a whole, or its weakest link.`,
    [
      words("What"),
      ...houses.map(({ name }, place) => ({
        heading: name,
        markup: typed(titled(name, place)),
      })),
    ],
    [
      row("Good for a gust of", (house) => goodFor(house, system)),
      row("Holds the design wind?", ({ holds }) => (holds ? "\u2713 holds" : "<b>\u2717 no</b>")),
      row("First link to go", ({ first }) =>
        [
          typed(first.words),
          `<small>${typed(first.check.part)}; ${typed(first.check.place)}; ${typed(first.state)}</small>`,
        ].join("<br>"),
      ),
      row("Changed", ({ changes }) =>
        changes.length === 0
          ? none
          : changes
              .map(
                ({ key, from, to }) =>
                  `<code>${typed(key)}</code>: ${typed(from)} \u2192 ${typed(to)}`,
              )
              .join("<br>"),
      ),
      row(`Weight, ${force.symbol}`, ({ weight }) => range(weight)),
      row(`of it steel, ${force.symbol}`, ({ steel }) => range(steel)),
      row("Steel to buy", (house) => toBuy(house, house === today ? [] : today.cuts, system)),
      row("What it costs", (house) => costs(house, inAll, system)),
      row(
        `Pull to keep it moving, ${force.symbol}`,
        ({ pull }) => `${range(pull)}<br><small>${typed(pull.says)}</small>`,
      ),
      head("Fewest anchors on each side that hold it here in every state"),
      ...namesOf(houses, ({ anchors }) => anchors.map(({ kind }) => kind)).map((kind) =>
        row(typed(kind), ({ anchors }) => {
          const found = anchors.find((one) => one.kind === kind);
          return found === undefined ? none : String(found.perRail ?? "none holds");
        }),
      ),
      head(`Gusts by state, in ${speedUnit(system)}: as a whole, and the weakest link`),
      ...namesOf(houses, ({ states }) => states.map((state) => state.words)).map((state) =>
        row(typed(state), (house) => inState(house, state, system)),
      ),
    ],
    "side",
  );
}

function goodFor(house: VariantReview, system: System): string {
  const weakest = weakestOf(house);
  if (weakest === undefined) return none;
  const { gust, state, words: what } = weakest;
  return `<b class="big">${text(gustFigure(gust, system))}</b><br><small>${typed(what)}; ${typed(state)}</small>`;
}

/** How many sticks, and those that are not bought alike for today's house. */
function toBuy({ cuts }: VariantReview, known: readonly CutList[], system: System): string {
  if (cuts.length === 0) return none;
  const sum = (of: (cut: CutList) => number): number => cuts.reduce((all, cut) => all + of(cut), 0);
  const bought = sum(({ stock, sticks }) => stock * sticks.length);
  const count = sum(({ sticks }) => sticks.length);
  const told = `${count} ${count === 1 ? "stick" : "sticks"}, ${share(sum(wasteOf) / bought)} left over`;
  const before = known.map((cut) => sticks(cut, system));
  const others = cuts
    .map((cut) => sticks(cut, system))
    .filter((one) => before.length > 0 && !before.includes(one))
    .map((one) => `<small>${one}</small>`);
  return [told, ...others].join("<br>");
}

const wasteOf = ({ sticks: all }: CutList): number =>
  all.reduce((sum, { waste }) => sum + waste, 0);

const sticks = ({ sticks: all, stock, tube, waste }: CutList, system: System): string =>
  `${all.length} \u00d7 ${cutLength(stock, system)} of ${typed(tube)}, ${share(waste)}`;

function costs(house: VariantReview, inAll: readonly string[], system: System): string {
  const { cost } = house;
  if (cost === null) return "no prices";
  const without = unpricedOnlyHere(house, inAll).map(typed).join("; ");
  const note = without === "" ? "" : `<br><small>and what has no price: ${without}</small>`;
  return `${money(cost.total, cost.currency, system)}${note}`;
}

/** Names in the order in which the houses have them, today's first. */
const namesOf = (
  houses: readonly VariantReview[],
  of: (house: VariantReview) => readonly string[],
): readonly string[] => [...new Set(houses.flatMap(of))];

function inState({ states }: VariantReview, words: string, system: System): string {
  const state = states.find((one) => one.words === words);
  if (state === undefined) return none;
  const { whole, link } = state;
  return [whole, link]
    .map((one) => {
      const shown = text(gustFigure(one.gust, system));
      const lower = one.gust === Math.min(whole.gust, link.gust);
      return `${lower ? `<b>${shown}</b>` : shown} <small>${typed(one.words)}</small>`;
    })
    .join("<br>");
}
