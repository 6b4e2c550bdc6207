import { cite, constant, formula, judged } from "@hoopstay/core";

const clause = (place: string) => cite("en-1990", `annex D, ${place}`, "second-hand");

export const leastScatter = constant(
  "least-scatter",
  "V_min",
  "coefficient of variation counted at least",
  0.1,
  "ratio",
  judged("a few pulls that agree by luck prove no small scatter; safe side"),
);

const number = ["n", "number of tests", "ratio"] as const;

export const factorScatterUnknown = formula({
  id: "k-n-unknown",
  symbol: "k_n",
  name: "factor for the 5 % fractile, scatter from the tests alone",
  measure: "ratio",
  arguments: [["t_95", "95 % quantile of Student's t, n - 1 degrees of freedom", "ratio"], number],
  expression: "t_95 * sqrt(1 + 1 / n)",
  citation: clause("D7, V_X unknown"),
  range: "n of 3 or more; with two tests it gives no useful value",
  evaluate: (quantile, n) => quantile * Math.sqrt(1 + 1 / n),
});

export const factorScatterKnown = formula({
  id: "k-n-known",
  symbol: "k_n",
  name: "factor for the 5 % fractile, scatter known from before",
  measure: "ratio",
  arguments: [number],
  expression: "1.645 * sqrt(1 + 1 / n)",
  citation: clause("D7, V_X known"),
  evaluate: (n) => 1.645 * Math.sqrt(1 + 1 / n),
});

export const logScatterUsed = formula({
  id: "log-scatter",
  symbol: "s_y",
  name: "standard deviation of the logarithms, as used",
  measure: "ratio",
  arguments: [
    ["s_t", "as tested", "ratio"],
    ["V", "coefficient of variation counted at least", "ratio"],
  ],
  expression: "max(s_t, sqrt(log(1 + V^2)))",
  citation: judged(
    "form of EN 1990 D7 for known V; never below 0.10, nor known scatter below what the tests show; safe side",
  ),
  evaluate: (tested, least) => Math.max(tested, Math.sqrt(Math.log(1 + least ** 2))),
});

export const lognormalCharacteristic = formula({
  id: "characteristic-lognormal",
  symbol: "X_k",
  name: "characteristic pull, lognormal",
  measure: "force",
  arguments: [
    ["m_y", "mean of the logarithms", "ratio"],
    ["k_n", "factor for the 5 % fractile", "ratio"],
    ["s_y", "standard deviation of the logarithms", "ratio"],
  ],
  expression: "exp(m_y - k_n * s_y)",
  citation: clause("D7 note on the lognormal distribution"),
  evaluate: (mean, factor, scatter) => Math.exp(mean - factor * scatter),
});

export const normalCharacteristic = formula({
  id: "characteristic-normal",
  symbol: "X_n",
  name: "characteristic pull, normal; printed beside, not used",
  measure: "force",
  arguments: [
    ["T_m", "mean of the pulls", "force"],
    ["k_n", "factor for the 5 % fractile", "ratio"],
    ["V_t", "coefficient of variation, as tested", "ratio"],
    ["V", "coefficient of variation counted at least", "ratio"],
  ],
  expression: "T_m * (1 - k_n * max(V_t, V))",
  citation: clause("D7"),
  range: "below zero where the scatter is too great for this distribution",
  evaluate: (mean, factor, tested, least) => mean * (1 - factor * Math.max(tested, least)),
});
