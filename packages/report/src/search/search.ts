import {
  type FoundDesign,
  type SearchReview,
  type System,
  showMeasured,
  showWords,
} from "@hoopstay/core";
import { money } from "../compare/money.ts";
import { text, typed } from "../html/escape.ts";
import { type PageOf, sheetsPage } from "../html/sheets-page.ts";
import { type Column, list, numbers, rowOf, table, words } from "../html/table.ts";
import { columnUnit, gustFigure, speedUnit } from "../value/reader.ts";
import { lookLetter, searchPlot } from "./search-plot.ts";

/**
 * Designs that no other beats: the plot, those worth a look, all of them as a table, and what was
 * looked through.
 *
 * @returns HTML, the same in every locale
 */
export function renderSearch(review: SearchReview, of: PageOf): string {
  const { system } = of;
  const { looked, asked, worked, complete, unbeaten, currency, findings } = review;
  const all =
    looked === 1 ? "The one design asked for was" : `All ${looked} designs asked for were`;
  const count = complete
    ? `${all} looked at.`
    : `It was stopped after ${looked} of ${asked} designs: what follows is the best of those, not of all.`;
  const by = currency === null ? "gust and weight of steel" : "gust, weight of steel and cost";
  const full =
    worked === 1
      ? "One was worked in full."
      : `${unbeaten.length} of the ${worked} that were worked in full ${unbeaten.length === 1 ? "is" : "are"} beaten by no other of them on ${by} together.`;
  return sheetsPage("Search", of, [
    {
      id: "answer",
      title: "Designs worked in full that no other of them beats",
      body: `<p class="verdict">${complete ? "" : "<b>\u2717 Not complete</b>"}${count} ${full}</p>
<h3>Worth a look</h3>
${worth(review, system)}
${searchPlot(review, system)}
<p>A design found here is a start: put it into the house file, and check it whole.</p>
${designs(review, system)}`,
    },
    {
      id: "range",
      title: "What was looked through",
      body: `${range(review)}
<h3>What to know of it</h3>
${list(findings.map((one) => typed(showWords(one, system))))}`,
    },
  ]);
}

/** Both gusts of a design, the lower one strong. */
const stands = ({ gust, whole, link }: FoundDesign, system: System): string =>
  [
    { what: "As a whole", ...whole },
    { what: "First link", ...link },
  ]
    .map((one) => {
      const shown = text(gustFigure(one.gust, system));
      return `${one.what} ${one.gust === gust ? `<b>${shown}</b>` : shown}: ${typed(one.words)}`;
    })
    .join("<br>");

/** Cells of what a design costs; none where cost is not compared. */
const costCell = (cost: number | null, currency: string | null, system: System): string[] =>
  currency === null ? [] : [cost === null ? "no price" : money(cost, currency, system)];

const costColumn = (currency: string | null): Column[] =>
  currency === null ? [] : [numbers("Cost")];

function worth({ unbeaten, worthALook, currency, today }: SearchReview, system: System): string {
  const row = (name: string, why: string, design: FoundDesign): string[] => [
    name,
    `${why}<br><small>${typed(design.words)}<br>${stands(design, system)}</small>`,
    `<b>${text(gustFigure(design.gust, system))}</b>`,
    text(showMeasured(design.steel, system)).replace(" ", "\u00a0"),
    ...costCell(design.cost, currency, system),
  ];
  const rows = worthALook.flatMap(({ place, why }, index) => {
    const design = unbeaten[place];
    if (design === undefined) return [];
    const name = `<b>\u25c6\u00a0${lookLetter(index)}</b><br><small>number\u00a0${place + 1}</small>`;
    return [row(name, typed(why), design)];
  });
  return table(
    "Worth a look",
    "Beside the house as it is today. Steel is the middle of its tolerance.",
    [
      words("Design"),
      words("Why, and what it is"),
      numbers(`Gust, ${speedUnit(system)}`),
      numbers("Steel"),
      ...costColumn(currency),
    ],
    [...rows, row("<b>\u25a1</b> today", "as it is", today)],
    "plain",
  );
}

/** Every unbeaten design, with the keys to type into the house file. */
function designs({ unbeaten, worthALook, currency }: SearchReview, system: System): string {
  const steel = columnUnit(
    "force",
    system,
    unbeaten.map((design) => design.steel.value),
  );
  const looks = new Map(worthALook.map(({ place }, index) => [place, lookLetter(index)]));
  return table(
    "Unbeaten designs",
    `Unbeaten designs. Gusts in ${speedUnit(system)}, steel in ${steel.symbol}, the middle of its tolerance; to look closer, change these keys of the house file (null: take the key out).`,
    [
      numbers("No."),
      words("Design"),
      words("Keys to change"),
      numbers("Gust"),
      numbers("Steel"),
      ...costColumn(currency),
      words("As a whole, and its first link"),
    ],
    unbeaten.map((design, place) => {
      const letter = looks.get(place);
      const changes = design.changes.map(
        ({ key, to }) => `<code>${typed(key)}</code>: ${typed(to)}`,
      );
      return rowOf([
        `${letter === undefined ? "" : `<b>\u25c6 ${letter}</b> `}${place + 1}`,
        typed(design.words),
        changes.length === 0 ? "none: as it is today" : changes.join("<br>"),
        `<b>${text(gustFigure(design.gust, system))}</b>`,
        steel.cell(design.steel.value),
        ...costCell(design.cost, currency, system),
        stands(design, system),
      ]);
    }),
    "checks",
  );
}

function range({ range: { assumed, rows } }: SearchReview): string {
  return table(
    "Range",
    assumed
      ? "Assumed: the house file asks for no range."
      : "As the house file asks. Every design keeps the rest of today\u2019s house.",
    [words("What"), words("Looked at")],
    rows.map(({ what, values }) => [typed(what), values.map(typed).join("; ")]),
    "plain",
  );
}
