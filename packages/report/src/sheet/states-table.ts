import type { StateSummary, System } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { gustFigure, speedUnit } from "../value/reader.ts";
import { statePairs } from "../value/state-pairs.ts";

/** The owner's table: what holds, what gives way first, and at which gust. */
export function statesTable(states: readonly StateSummary[], system: System): string {
  const pairs = statePairs(states);
  const anyFitted = pairs.some(({ fitted }) => fitted);
  const rows = pairs.map((pair) => {
    const state = (pair.fitted ?? pair.bare) as StateSummary;
    const now = state.now ? ' <span class="tag">\u25b6 as it is now</span>' : "";
    return [
      `${typed(state.words)}${now}`,
      state.holds ? "\u2713 holds" : "<b>\u2717 no</b>",
      typed(state.first.words),
      ...[pair.bare, ...(anyFitted ? [pair.fitted] : [])].map((one) =>
        one ? text(gustFigure(one.first.workingGust, system)) : "\u2013",
      ),
    ];
  });
  const held = anyFitted ? ["By its own weight", "As fitted"] : ["By its own weight"];
  return table(
    "States of the house and the gust each stands",
    `What it stands, state by state. The last ${anyFitted ? "two columns are gusts" : "column is the gust"} it is good for.`,
    [
      words("State"),
      words("Holds?"),
      words("First to give way"),
      ...held.map((how) => numbers(`${how}, ${speedUnit(system)}`)),
    ],
    rows,
    "plain",
  );
}
