import { formula, judged } from "@hoopstay/core";

export const actionGust = formula({
  id: "action-gust",
  symbol: "V_a",
  name: "forecast gust from which to act",
  measure: "speed",
  arguments: [["V_w", "working gust", "speed"]],
  expression: "0.75 * V_w",
  citation: judged("three quarters of the working gust: forecasts miss gusts; safe side"),
  evaluate: (working) => 0.75 * working,
});
