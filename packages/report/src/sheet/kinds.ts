import {
  type Drawings,
  type HoldReview,
  type KindReview,
  type LayoutReview,
  type System,
  showGustLimit,
  showWords,
} from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { columnUnit } from "../value/reader.ts";
import { layoutMarkup } from "./layout.ts";

/** Every kind of anchor on this ground: what it may carry, and the fewest that hold. */
export function kindsTable(kinds: readonly KindReview[], system: System): string {
  const force = columnUnit(
    "force",
    system,
    kinds.map(({ allowable }) => allowable ?? 0),
  );
  return table(
    "Kinds of anchor",
    `Fewest anchors that hold, for each kind. Allowed pull along the tether in ${force.symbol}.`,
    [
      words("Kind"),
      words("Counted from"),
      numbers("Allowed pull"),
      words("Weakest link"),
      words("On each side, in every state"),
      words("On each side, kept shut"),
    ],
    kinds.map((kind) => [
      typed(kind.words),
      typed(kind.basis),
      kind.allowable === null ? "<b>none</b>" : force.cell(kind.allowable),
      typed(kind.governs ?? kind.reason ?? "\u2013"),
      fewest(kind, kind.every, system),
      fewest(kind, kind.shut, system),
    ]),
    "plain",
  );
}

function fewest(
  { short, allowable }: KindReview,
  layout: LayoutReview | null,
  system: System,
): string {
  if (layout !== null) {
    return `<b>${layout.perRail}</b>, to ${text(showGustLimit(layout.joint.gust, system))}`;
  }
  if (allowable === null) return "not rated";
  return short === null ? "none holds" : `none holds: ${typed(showWords(short, system))}`;
}

/** Each kind's own notes and the layout it needs, for the person who sets it. */
export const kindLayouts = ({ kinds }: HoldReview, drawings: Drawings, system: System): string =>
  kinds
    .map((kind, place) => {
      const layout = kind.every ?? kind.shut;
      const state = kind.every ? "every state" : "kept shut";
      const name = `${place + 1}. ${kind.words}`;
      const notes = [
        ...(kind.reason === null ? [] : [typed(kind.reason)]),
        ...kind.findings.map(typed),
        ...kind.notChecked.map((one) => `Not checked: ${typed(one)}`),
      ];
      const shown =
        layout === null
          ? ""
          : layoutMarkup(
              { id: `plan-kind-${place + 1}`, words: `${name}, ${state}` },
              layout,
              drawings,
              system,
            );
      return `<h3>${typed(name)}${layout ? `, ${state}: ${layout.perRail} on each side` : ""}</h3>
${list(notes)}
${shown}`;
    })
    .join("\n");
