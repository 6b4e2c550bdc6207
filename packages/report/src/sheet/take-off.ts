import { type Measured, type System, show, showMeasured, type TakeOffRow } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { columnUnit } from "../value/reader.ts";
import type { Matter } from "./sheet.ts";

/** What the house weighs, part by part, low and high, and where each part's weight acts. */
export function takeOff({ review, system }: Matter): string {
  const { rows, totals, measured } = review.takeOff;
  const weight = columnUnit("force", system, [
    ...rows.map((r) => r.high),
    ...totals.map((t) => t.weight),
  ]);
  const place = columnUnit(
    "length",
    system,
    rows.flatMap((r) => [r.x, r.y, r.z]),
  );
  const shown = (value: Measured | null): string =>
    value === null ? "\u2013" : text(showMeasured(value, system));
  const parts = table(
    "Take-off",
    `Take-off. Weights in ${weight.symbol}; centres in ${place.symbol} from the middle of the house:
x to the right, y to the front, z up. The low weight resists wind; the high one is run as well.`,
    [
      words("Part"),
      numbers("Count"),
      numbers("Each"),
      numbers("Unit weight"),
      numbers("Low"),
      numbers("High"),
      numbers("x"),
      numbers("y"),
      numbers("z"),
    ],
    rows.map((row) => [
      typed(row.what),
      String(row.count),
      shown(row.amount),
      text(unitWeight(row, system)),
      ...[row.low, row.high].map(weight.cell),
      ...[row.x, row.y, row.z].map(place.cell),
    ]),
  );
  return `<p>${measured ? "The house was weighed; the totals follow the weighing." : "The house was not weighed: the weights are computed."}</p>
${parts}
${table(
  "Total weights",
  `Totals, ${weight.symbol}, and their centres, ${place.symbol}`,
  [words("Total"), numbers("Weight"), numbers("x"), numbers("y"), numbers("z")],
  totals.map((total) => [
    typed(total.words),
    weight.cell(total.weight),
    ...total.place.map(place.cell),
  ]),
)}`;
}

/** Weight per piece, per length or per area, as a range where low and high differ. */
function unitWeight({ unitLow, unitHigh, per }: TakeOffRow, system: System): string {
  const shown = (one: Measured): string => {
    if (per === "length") return show(one.value, "force-per-length", system);
    if (per === "area") return show(one.value, "pressure", system);
    return showMeasured(one, system);
  };
  const ends = [unitLow, unitHigh].filter((end) => end !== null).map(shown);
  return [...new Set(ends)].join(" to ") || "\u2013";
}
