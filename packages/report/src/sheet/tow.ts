import { type BallastReview, type System, show, showWords, type TowSummary } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { columnUnit } from "../value/reader.ts";

const verdicts: Readonly<Record<"go" | "doubtful" | "no", string>> = {
  go: "\u2713 go",
  doubtful: "<b>? doubtful</b>",
  no: "<b>\u2717 no</b>",
};

/** Ballast that would do in place of anchors, or beside those fitted. */
export function ballastTable(ballast: readonly BallastReview[], system: System): string {
  if (ballast.length === 0) return "<p>No ballast was worked out.</p>";
  return table(
    "Ballast",
    "Ballast. It counts only when it is tied to the rails.",
    [words("What"), words("Pieces on each side"), words("Where"), words("Holds?")],
    ballast.map((one) => [
      typed(showWords(one.words, system)),
      one.pieces.map(({ what, perRail }) => `${perRail} \u00d7 ${typed(what)}`).join("; ") ||
        "\u2013",
      typed(showWords(one.where, system)),
      one.holds ? "\u2713 holds" : "<b>\u2717 no</b>",
    ]),
    "plain",
  );
}

/** The pull it takes to move the house, against what the vehicle has. */
export function towMarkup(tow: TowSummary | null, system: System): string {
  if (tow === null) return "<p>The pull to move was not worked out.</p>";
  const { available, loads } = tow;
  const force = columnUnit("force", system, [
    available?.high ?? 0,
    ...loads.flatMap(({ running, starting }) => [running.high, starting.high]),
  ]);
  const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    `${force.cell(low)} to ${force.cell(high)}`;
  const level = Math.abs(tow.slope) < 5e-4;
  const has =
    available === null
      ? "The house file has no tractor, so there is no verdict."
      : `It has a pull of ${range(available)}.`;
  const remarks = [
    ...(tow.runsByItself ? ["<b>On this slope it can run by itself.</b> Hold it back."] : []),
    ...tow.remarks.map(typed),
  ];
  return `${table(
    "Pull to move",
    `Pull to move, in ${force.symbol}, ${tow.vehicle === null ? "" : `with ${typed(tow.vehicle)}, `}${
      level ? "on level ground" : `up a slope of ${text(show(tow.slope, "angle", system, 2))}`
    }. ${has}`,
    [
      words("House"),
      numbers("To keep it moving"),
      numbers("To start it"),
      numbers("Left skid"),
      numbers("Right skid"),
      words("Verdict"),
    ],
    loads.map((load) => [
      typed(load.words),
      range(load.running),
      range(load.starting),
      force.cell(load.skids.left),
      force.cell(load.skids.right),
      load.verdict === null ? "not known" : verdicts[load.verdict],
    ]),
    "plain",
  )}
${list(remarks)}`;
}
