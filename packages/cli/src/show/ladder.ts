import {
  citationWords,
  rungNames,
  type StormLadder,
  type System,
  showGust,
  showGustLimit,
  showHours,
  showWords,
} from "@hoopstay/core";
import { bullet, column, leadOf, notSealed, rightColumn, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

/** The storm ladder for the terminal: strongest gust on top, the forecast between its rungs. */
export function showLadder(ladder: StormLadder, system: System): string {
  const { rungs, landmarks, forecast } = ladder;
  const step = (mark: string, gust: string, does: string, takes: string): string =>
    `  ${mark} ${rightColumn(gust, 9)} ${column(does, 40)}${takes}`.trimEnd();
  const steps = [
    ...rungs.map(({ id, gust, hours, reached }) => ({
      gust,
      line: step(
        reached ? "[#]" : "[ ]",
        showGustLimit(gust, system),
        rungNames[id],
        showHours(hours),
      ),
    })),
    ...landmarks.map(({ from, words }) => ({
      gust: from,
      line: step(" ~ ", showGust(from, system), `(${words})`, ""),
    })),
    ...(forecast === null
      ? []
      : [
          {
            gust: forecast,
            line: step("==>", showGust(forecast, system), "THE FORECAST GUST", ""),
          },
        ]),
  ].toSorted((one, other) => other.gust - one.gust);
  const lines = [
    leadOf("STORM LADDER", [visible(ladder.house), visible(ladder.site)]),
    wrap(showWords(ladder.advice, system), "  "),
    `  ${"".padEnd(4)}${rightColumn("from", 9)} ${column("do", 40)}takes`,
    ...steps.map(({ line }) => line),
    "  [#] the forecast reaches it   [ ] it does not   ~ word of the weather service",
    "",
    ...rungs.map(({ id, does, because }) =>
      bullet(`${rungNames[id]}: ${does} ${showWords(because, system)}`),
    ),
    "",
    bullet(`Hours: ${citationWords(ladder.hoursCitation)}`),
    ...ladder.cautions.map((one) => bullet(one)),
    notSealed,
  ];
  return `${lines.join("\n")}\n`;
}

/** The same text, and where the page is. */
export const showLadderWritten = (ladder: StormLadder, system: System, to: string): string =>
  `${showLadder(ladder, system)}  Storm ladder: ${visible(to)}\n`;
