import {
  type FoundDesign,
  type FoundGust,
  figures,
  type SearchReview,
  type System,
  showGustLimit,
  unitOf,
} from "@hoopstay/core";
import { bullet, bullets, column, cut, leadOf, notSealed, rightColumn, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

const mostShown = 12;

const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

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
  const { looked, asked, worked, complete, today, unbeaten, worthALook, findings, currency } =
    review;
  const all = [today, ...unbeaten];
  const force = unitOf("force", system, Math.max(...all.map(({ steel }) => steel.value)));
  const stands = (what: string, { gust, words }: FoundGust): string =>
    wrap(`${what} ${showGustLimit(gust, system)}: ${words}`, "        ", "          ");
  const row = (mark: string, { steel, cost, gust, words, whole, link }: FoundDesign): string[] => [
    `  ${column(mark, 5)}${rightColumn(figures(steel.value, force), 8)}${
      currency === null ? "" : rightColumn(cost === null ? "-" : money(cost), 9)
    }${rightColumn(showGustLimit(gust, system), 9)}`.trimEnd(),
    wrap(words, "        "),
    stands("as a whole", whole),
    stands("first link", link),
  ];
  const shown = shownPlaces(review);
  const by = currency === null ? "steel and gust" : "steel, cost and gust";
  const full =
    worked === 1
      ? "One was worked in full."
      : `Of the ${worked} worked in full ${unbeaten.length} ${unbeaten.length === 1 ? "is" : "are"} beaten by no other of them on ${by}.`;
  const said = complete
    ? `${counted(looked, "design", "designs")} looked at. ${full}`
    : `Stopped after ${looked} of ${counted(asked, "design", "designs")}: what was not looked at may be better. ${full}`;
  const worth = worthALook.map(({ place, why }) => {
    const { changes } = unbeaten[place] as FoundDesign;
    const keys = changes.map(({ key, to }) => `${key}=${to}`).join("; ");
    return bullet(
      `${place + 1}: ${why}. ${keys === "" ? "It is today's design." : `Change ${keys}`}`,
    );
  });
  const lines = [
    leadOf("SEARCH", names.map(visible)),
    wrap(
      `${said} Steel is the middle of its tolerance; gust the lower of whole and first link.`,
      "  ",
    ),
    `  ${column("", 5)}${rightColumn(`steel ${force.symbol}`, 8)}${
      currency === null ? "" : rightColumn(cut(visible(currency), 9), 9)
    }${rightColumn("gust", 9)}`,
    ...row("today", today),
    ...shown.flatMap((place) => row(String(place + 1), unbeaten[place] as FoundDesign)),
    ...(shown.length < unbeaten.length
      ? [`  ${unbeaten.length - shown.length} more of them: see --json or the report`]
      : []),
    ...(worth.length > 0 ? ["  Worth a look:", ...worth] : []),
    ...bullets(findings, system),
    notSealed,
    ...(report === undefined ? [] : [`  Report: ${visible(report)}`]),
  ];
  return `${lines.join("\n")}\n`;
}
