import {
  type JointCertificate,
  type JointSummary,
  type System,
  showGustLimit,
  unitOf,
} from "@hoopstay/core";
import { column, rightColumn, wrap } from "./lines.ts";

const headings = ["F_x", "F_y", "F_z", "M_x", "M_y", "M_z"];

/** Forces in balance, row by row: each of the six columns adds up to the last row. */
export function certificateLines(
  joint: JointSummary,
  certificate: JointCertificate,
  system: System,
): string[] {
  const { wind, weight, tethers, corners, left } = certificate;
  const rows: (readonly [string, readonly number[]])[] = [
    ["wind", wind],
    ["weight", weight],
    ...tethers.map(({ name, sums }) => [`tether ${name}`, sums] as const),
    ...corners.map(({ name, sums }) => [`ground, ${name}`, sums] as const),
    ["sum", left],
  ];
  const largest = (from: number): number =>
    Math.max(...rows.flatMap(([, six]) => six.slice(from, from + 3).map(Math.abs)));
  const units = [unitOf("force", system, largest(0)), unitOf("moment", system, largest(3))];
  const cell = (value: number, place: number): string => {
    const unit = units[place < 3 ? 0 : 1] as (typeof units)[number];
    const shown = (value / unit.factor).toFixed(unit.factor >= 1000 ? 3 : 0);
    return rightColumn(Number(shown) === 0 ? "0" : shown, 8);
  };
  return [
    wrap(
      `Forces in balance at ${joint.factor.toFixed(4)} of the design wind, a gust of ${showGustLimit(joint.gust, system)}: ${joint.state}, load case ${joint.loadCase}, wind ${joint.direction}, ${joint.weight} weight. Wind and weight carry the factors of ${joint.combination}. No more wind can be balanced. Each column adds up to nothing but rounding. Forces in ${units[0]?.symbol}, moments in ${units[1]?.symbol} about the middle of the house on the ground; x to the right, y to the front, z up.`,
      "  ",
    ),
    `  ${column("force", 20)}${headings
      .map((name) => rightColumn(name, 8))
      .join("")
      .trimEnd()}`,
    ...rows.map(([name, six]) => `  ${column(name, 20)}${six.map(cell).join("").trimEnd()}`),
  ];
}
