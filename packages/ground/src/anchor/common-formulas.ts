import { derived, formula, type Measure } from "@hoopstay/core";

export const interpolated = formula({
  id: "straight-line-interpolation",
  symbol: "y",
  name: "value between two rows of a table",
  measure: "ratio",
  arguments: [
    ["x", "where", "ratio"],
    ["x_1", "row before", "ratio"],
    ["x_2", "row after", "ratio"],
    ["y_1", "value before", "ratio"],
    ["y_2", "value after", "ratio"],
  ],
  expression: "y_1 + (y_2 - y_1) * (x - x_1) / (x_2 - x_1)",
  citation: derived("straight line between two rows"),
  range: "x from x_1 to x_2",
  evaluate: (x, x1, x2, y1, y2) => y1 + ((y2 - y1) * (x - x1)) / (x2 - x1),
});

const lower = (id: string, symbol: string, name: string, measure: Measure) =>
  formula({
    id,
    symbol,
    name,
    measure,
    arguments: [
      ["a", "one", measure],
      ["b", "other", measure],
    ],
    expression: "min(a, b)",
    citation: derived("the lower of two readings"),
    evaluate: (one, other) => Math.min(one, other),
  });

export const lowerForce = lower("lower-force", "R", "lower of two capacities", "force");
export const lowerFactor = lower("lower-breakout-factor", "F_q", "lower breakout factor", "ratio");

/** Rows before and after a value of an ascending column; a value on a row ends the stretch to it. */
export function bracket<Row>(
  rows: readonly Row[],
  column: (row: Row) => number,
  at: number,
): readonly [Row, Row] {
  const passed = rows.slice(1, -1).filter((row) => column(row) < at).length;
  return [rows[passed] as Row, rows[passed + 1] as Row];
}
