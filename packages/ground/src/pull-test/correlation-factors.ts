import { type Chapter, type Citation, cite, formula, taken } from "@hoopstay/core";
import { requireWholeCount } from "./whole-count.ts";

type Row = readonly [tests: number, onMean: number, onLowest: number];

interface CorrelationTable {
  readonly citation: Citation;
  /** n, xi_1, xi_2; the last row stands for its number and more. */
  readonly rows: readonly Row[];
}

/** Correlation factors for static load tests. Written for piles; for light anchors an adaptation. */
export const correlationTable: CorrelationTable = {
  citation: cite("en-1997-1", "annex A, table A.9", "read"),
  rows: [
    [1, 1.4, 1.4],
    [2, 1.3, 1.2],
    [3, 1.2, 1.05],
    [4, 1.1, 1.0],
    [5, 1.0, 1.0],
  ],
};

/** The same table in the United Kingdom, higher throughout. Recorded for a reviewer; not used. */
export const ukCorrelationTable: CorrelationTable = {
  citation: cite("en-1997-1-uk-na", "national counterpart of table A.9", "read"),
  rows: [
    [1, 1.55, 1.55],
    [2, 1.47, 1.35],
    [3, 1.42, 1.23],
    [4, 1.38, 1.15],
    [5, 1.35, 1.08],
  ],
};

/**
 * Correlation factors on mean and lowest of so many load tests.
 *
 * @param count whole number from 1; five and more share a row
 * @throws Refusal `out-of-range`
 * @returns xi_1 on the mean, xi_2 on the lowest
 */
export function correlationFactors(
  count: number,
  { rows }: CorrelationTable = correlationTable,
): readonly [onMean: number, onLowest: number] {
  requireWholeCount(count, "tests");
  const [, onMean, onLowest] = rows[Math.min(count, rows.length) - 1] as Row;
  return [onMean, onLowest];
}

/** The factors on mean and lowest, each as a step that names the table. */
export function correlationSteps(count: number, chapter: Chapter): readonly [number, number] {
  const { citation } = correlationTable;
  const [onMean, onLowest] = correlationFactors(count);
  const show = (symbol: string, on: string, value: number): number => {
    const name = `correlation factor on the ${on}, ${count} tests`;
    const read = taken("read from the table", symbol, symbol, name, value, "ratio", citation);
    return chapter.work(read, []);
  };
  return [show("xi_1", "mean", onMean), show("xi_2", "lowest", onLowest)];
}

export const smallNumberResistance = formula({
  id: "small-number-resistance",
  symbol: "R",
  name: "resistance from mean and lowest pull",
  measure: "force",
  arguments: [
    ["T_m", "mean of the pulls", "force"],
    ["xi_1", "correlation factor on the mean", "ratio"],
    ["T_min", "lowest pull", "force"],
    ["xi_2", "correlation factor on the lowest", "ratio"],
  ],
  expression: "min(T_m / xi_1, T_min / xi_2)",
  citation: cite("en-1997-1", "annex A, A.3.3.3 and table A.9", "read"),
  evaluate: (mean, onMean, lowest, onLowest) => Math.min(mean / onMean, lowest / onLowest),
});
