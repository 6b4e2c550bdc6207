import { formula, judged, type LayoutReview } from "@hoopstay/core";
import type { Evaluation } from "../review/evaluate.ts";
import { gustOf } from "../review/summaries.ts";

const anchorGust = formula({
  id: "anchor-gust",
  symbol: "V_w",
  name: "gust at which an overloaded anchor still carries no more than is allowed",
  measure: "speed",
  arguments: [
    ["V_g", "gust that the design wind stands for", "speed"],
    ["r", "pull over allowable pull under the design wind, above 1", "ratio"],
  ],
  expression: "V_g / sqrt(r)",
  citation: judged(
    "wind goes with the square of the speed, and weight takes the first of it, so an anchor's pull " +
      "falls at least as fast as the wind; safe side",
  ),
  range: "r above 1",
  evaluate: (gust, ratio) => gust / Math.sqrt(ratio),
});

/** The gust that the design wind stands for, m/s. */
export const designGust = ({ site }: Evaluation): number => gustOf(site.mapSpeed);

/**
 * The lowest gust, m/s, at which an anchor of a layout gives out for itself where one is overloaded
 * under the design wind. It is that of the worst state, and so a lower bound in every other. Infinite
 * where none is.
 */
export function layoutGust({ anchors }: LayoutReview, evaluation: Evaluation): number {
  const design = designGust(evaluation);
  // An anchor that nothing rates carries nothing and has no ratio; everything at once leaves it out.
  const overloaded = anchors.filter(({ allowable, ratio }) => allowable > 0 && ratio > 1);
  return Math.min(...overloaded.map(({ ratio }) => anchorGust.evaluate(design, ratio)));
}
