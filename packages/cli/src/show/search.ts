import {
  type FoundDesign,
  figures,
  type SearchReview,
  type System,
  showGustLimit,
  unitOf,
} from "@hoopstay/core";
import { bullet, bullets, column, cut, leadOf, notSealed, rightColumn, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

const mostShown = 12;

/** A sum of money in whole units. */
const money = (sum: number): string => sum.toFixed(0).replace(/\d(?=(?:\d{3})+$)/g, "$&,");

/** The unbeaten designs to show: those worth a look, and others evenly between them. */
function shownPlaces({ unbeaten, worthALook }: SearchReview): number[] {
  const worth = worthALook.map(({ place }) => place);
  const step = Math.max(1, unbeaten.length / (mostShown - worth.length));
  const even = unbeaten.map((_, place) => place).filter((place) => Math.floor(place % step) === 0);
  return [...new Set([...worth, ...even])].slice(0, mostShown).sort((one, other) => one - other);
}

/** The designs that no other beats, and three of them that are worth a look. */
export function showSearch(
  review: SearchReview,
  names: readonly [house: string, site: string],
  system: System,
  report: string | undefined,
): string {
  const { looked, asked, complete, today, unbeaten, worthALook, findings, currency } = review;
  const all = [today, ...unbeaten];
  const force = unitOf("force", system, Math.max(...all.map(({ steel }) => steel.value)));
  const row = (mark: string, { steel, cost, gust, words, first }: FoundDesign): string[] => [
    `  ${column(mark, 5)}${rightColumn(figures(steel.value, force), 8)}${
      currency === null ? "" : rightColumn(cost === null ? "-" : money(cost), 9)
    }${rightColumn(showGustLimit(gust, system), 9)}`.trimEnd(),
    wrap(words, "        "),
    wrap(`first: ${first}`, "        "),
  ];
  const shown = shownPlaces(review);
  const said = complete
    ? `${looked} designs looked at; ${unbeaten.length} that no other beats on ${currency === null ? "steel" : "steel, cost"} and gust.`
    : `Stopped after ${looked} of ${asked} designs; of these ${unbeaten.length} that no other beats. What was not looked at may be better.`;
  const worth = worthALook.map(({ place, why }) => {
    const { changes } = unbeaten[place] as FoundDesign;
    const keys = changes.map(({ key, to }) => `${key}=${to}`).join("; ");
    return bullet(
      `${place + 1}: ${why}. ${keys === "" ? "It is today's design." : `Change ${keys}`}`,
    );
  });
  const lines = [
    leadOf("SEARCH", names.map(visible)),
    wrap(said, "  "),
    `  ${column("", 5)}${rightColumn(`steel ${force.symbol}`, 8)}${
      currency === null ? "" : rightColumn(cut(visible(currency), 9), 9)
    }${rightColumn("gust", 9)}`,
    ...row("today", today),
    ...shown.flatMap((place) => row(String(place + 1), unbeaten[place] as FoundDesign)),
    ...(shown.length < unbeaten.length
      ? [`  ${unbeaten.length - shown.length} more that no other beats: see --json or the report`]
      : []),
    ...(worth.length > 0 ? ["  Worth a look:", ...worth] : []),
    ...bullets(findings, system),
    notSealed,
    ...(report === undefined ? [] : [`  Report: ${visible(report)}`]),
  ];
  return `${lines.join("\n")}\n`;
}
