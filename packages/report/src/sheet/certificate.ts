import type { JointCertificate, JointSummary, System } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { columnUnit } from "../value/reader.ts";

const sums = ["F_x", "F_y", "F_z", "M_x", "M_y", "M_z"];
const headings = sums.map((name) => ({
  ...numbers(name),
  markup: name.replace(/_(.)/, "<sub>$1</sub>"),
}));

/** Forces in balance, row by row, so that anyone can add the six columns up. */
export function certificateTable(
  label: string,
  { wind, weight, tethers, corners, left }: JointCertificate,
  { factor, combination }: JointSummary,
  system: System,
): string {
  const named = [...tethers, ...corners];
  const all = [wind, weight, ...named.map((one) => one.sums), left];
  const force = columnUnit(
    "force",
    system,
    all.flatMap((six) => six.slice(0, 3)),
    5,
  );
  const moment = columnUnit(
    "moment",
    system,
    all.flatMap((six) => six.slice(3)),
    5,
  );
  const place = columnUnit(
    "length",
    system,
    named.flatMap(({ x, y }) => [x, y]),
  );
  const rowOf = (what: string, x: string, y: string, six: readonly number[]): string[] => [
    what,
    x,
    y,
    ...six.slice(0, 3).map(force.cell),
    ...six.slice(3).map(moment.cell),
  ];
  const placed = ({ x, y }: { readonly x: number; readonly y: number }): [string, string] => [
    place.cell(x),
    place.cell(y),
  ];
  return table(
    label,
    `Forces in balance at ${factor.toFixed(4)} of the design wind; no more can be balanced. Wind and weight carry the
factors of ${typed(combination)}. Each of the six columns adds up to nothing but the rounding in the last row. Forces in ${force.symbol}, moments in ${moment.symbol} about the middle of the house on the
ground, places in ${place.symbol}; x to the right, y to the front, z up.`,
    [words("Force"), numbers("x"), numbers("y"), ...headings],
    [
      rowOf("wind", "", "", wind),
      rowOf("weight", "", "", weight),
      ...tethers.map((one) => rowOf(`tether ${typed(one.name)}`, ...placed(one), one.sums)),
      ...corners.map((one) => rowOf(`ground under ${typed(one.name)}`, ...placed(one), one.sums)),
      rowOf("<b>sum</b>", "", "", left),
    ],
    "proof",
  );
}
