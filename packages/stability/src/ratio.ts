import { derived, formula } from "@hoopstay/core";

export const utilization = formula({
  id: "utilization",
  symbol: "E/R",
  name: "ratio of demand to resistance",
  measure: "ratio",
  arguments: [
    ["E", "demand", "force"],
    ["R", "resistance", "force"],
  ],
  expression: "E / R",
  citation: derived("demand over resistance; the check holds up to 1"),
  evaluate: (demand, resistance) => demand / resistance,
});

/** Demand over resistance. Without resistance any demand is beyond all bounds. */
export function ratioOf(demand: number, resistance: number): number {
  if (resistance > 0) return utilization.evaluate(demand, resistance);
  return demand > 0 || resistance < 0 ? Number.POSITIVE_INFINITY : 0;
}
