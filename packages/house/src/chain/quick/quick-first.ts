import type { Evaluation } from "../../review/evaluate.ts";
import { gustOf, speedOf } from "../../review/summaries.ts";
import { QuickLinks } from "./quick-links.ts";

/**
 * The working gust, m/s, at which some link has given way at the latest, as quickly as one types: hoops
 * without ties, bolts, stubs, welds, the rail's face, boards and purlins, under the cases that tell. The
 * whole load path never tells more; it may tell less, since it looks at every link and every case.
 */
export function quickFirst(evaluation: Evaluation): number {
  const limit = new QuickLinks().limit(evaluation, evaluation.house, evaluation.takeOff);
  return gustOf(speedOf(evaluation, limit));
}
