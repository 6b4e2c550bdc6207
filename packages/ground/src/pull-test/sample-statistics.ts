import { type Argument, derived, type Formula } from "@hoopstay/core";

const pulls = (count: number): Argument[] =>
  Array.from({ length: count }, (_, index) => ({
    symbol: `T_${index + 1}`,
    name: `pull of test ${index + 1} as it counts`,
    measure: "force",
  }));

const joined = (count: number, by: string, one: (symbol: string) => string): string =>
  pulls(count)
    .map(({ symbol }) => one(symbol))
    .join(by);

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Mean of so many pulls, N. */
export const meanPull = (count: number): Formula => ({
  id: `mean-of-${count}`,
  symbol: "T_m",
  name: "mean of the pulls",
  measure: "force",
  arguments: pulls(count),
  expression: `(${joined(count, " + ", (symbol) => symbol)}) / ${count}`,
  citation: derived("arithmetic mean"),
  evaluate: (...values) => total(values) / count,
});

/** Lowest of so many pulls, N. */
export const lowestPull = (count: number): Formula => ({
  id: `lowest-of-${count}`,
  symbol: "T_min",
  name: "lowest of the pulls",
  measure: "force",
  arguments: pulls(count),
  expression: `min(${joined(count, ", ", (symbol) => symbol)})`,
  citation: derived("least value"),
  evaluate: (...values) => Math.min(...values),
});

/** Mean of the natural logarithms of so many pulls in N. */
export const logMean = (count: number): Formula => ({
  id: `log-mean-of-${count}`,
  symbol: "m_y",
  name: "mean of the logarithms of the pulls in newtons",
  measure: "ratio",
  arguments: pulls(count),
  expression: `(${joined(count, " + ", (symbol) => `log(${symbol})`)}) / ${count}`,
  citation: derived("mean of the logarithms"),
  evaluate: (...values) => total(values.map(Math.log)) / count,
});

/** Standard deviation of so many logarithms about their mean, which comes last. Two or more. */
export const logDeviation = (count: number): Formula => ({
  id: `log-deviation-of-${count}`,
  symbol: "s_t",
  name: "standard deviation of the logarithms, as tested",
  measure: "ratio",
  arguments: [...pulls(count), { symbol: "m_y", name: "their mean", measure: "ratio" }],
  expression: `sqrt((${joined(count, " + ", (symbol) => `(log(${symbol}) - m_y)^2`)}) / ${count - 1})`,
  citation: derived("sample standard deviation, n - 1 below the line"),
  evaluate: (...values) => {
    const mean = values[count] as number;
    const squares = values.slice(0, count).map((value) => (Math.log(value) - mean) ** 2);
    return Math.sqrt(total(squares) / (count - 1));
  },
});

/** Coefficient of variation of so many pulls about their mean, which comes last. Two or more. */
export const variation = (count: number): Formula => ({
  id: `variation-of-${count}`,
  symbol: "V_t",
  name: "coefficient of variation of the pulls, as tested",
  measure: "ratio",
  arguments: [...pulls(count), { symbol: "T_m", name: "their mean", measure: "force" }],
  expression: `sqrt((${joined(count, " + ", (symbol) => `(${symbol} - T_m)^2`)}) / ${count - 1}) / T_m`,
  citation: derived("sample standard deviation over the mean, n - 1 below the line"),
  evaluate: (...values) => {
    const mean = values[count] as number;
    const squares = values.slice(0, count).map((value) => (value - mean) ** 2);
    return Math.sqrt(total(squares) / (count - 1)) / mean;
  },
});
