import type { TowSummary, VariantReview } from "@hoopstay/core";
import { towSummary } from "../hold-down/tow.ts";
import type { Evaluation } from "../review/evaluate.ts";

const order = ["go", "doubtful", "no"] as const;

/** What the tractor makes of the heaviest load on the way that the site file tells of. */
function verdictWords({ vehicle, loads, slope }: TowSummary): string {
  if (vehicle === null) return "no tractor entered";
  const worst = Math.max(...loads.map(({ verdict }) => (verdict ? order.indexOf(verdict) : 0)));
  const where = slope > 0 ? "up the slope of the way" : "on the level";
  return `${vehicle}, ${where}: ${order[worst] ?? "go"}`;
}

/** Pull that keeps it moving on the level, N, all loads together, and what the tractor makes of it. */
export function pullToMove(evaluation: Evaluation): VariantReview["pull"] {
  const { site } = evaluation;
  const level = { ...evaluation, site: { ...site, slope: null, dragSlope: 0 } };
  const running = towSummary(level).summary.loads.map((load) => load.running);
  return {
    low: Math.min(...running.map(({ low }) => low)),
    high: Math.max(...running.map(({ high }) => high)),
    says: verdictWords(towSummary(evaluation).summary),
  };
}
