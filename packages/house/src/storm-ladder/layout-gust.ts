import { formula, judged, type LayoutReview } from "@hoopstay/core";
import { countedOnRails } from "../layout/layout-review.ts";
import { anchorPulls } from "../rail-pull/anchor-pulls.ts";
import { railLoadsOf } from "../rail-pull/rail-loads.ts";
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

/** What a layout's own anchors and rails stand, m/s, and why no more is told. */
export interface LayoutLimit {
  readonly gust: number;
  readonly why: "overloaded" | "rail not held" | "checked up to it" | "no anchors";
}

const halvings = 20;

/** The largest share of the design wind at which both rails are held and no anchor is overloaded. */
function heldShare(evaluation: Evaluation): number {
  const { pressure } = evaluation;
  const anchors = countedOnRails(evaluation);
  const holds = (share: number): boolean => {
    const pulls = anchorPulls(railLoadsOf({ ...evaluation, pressure: share * pressure }), anchors);
    return pulls.outcome === "held" && pulls.worst <= 1;
  };
  let [held, lost] = [0, 1];
  for (let turn = 0; turn < halvings; turn += 1) {
    const middle = (held + lost) / 2;
    if (holds(middle)) held = middle;
    else lost = middle;
  }
  return held;
}

/**
 * The gust up to which the anchors of a layout and its rails are known to hold, each for itself. It is
 * that of the worst state, and so a lower bound in every other. Beyond the design wind nothing is
 * known of them. The rails of a layout that is only thought of are held: it would not be offered.
 */
export function layoutLimit(layout: LayoutReview, evaluation: Evaluation): LayoutLimit {
  const counted = layout.anchors.filter(({ allowable }) => allowable > 0);
  if (counted.length === 0) return { gust: Number.POSITIVE_INFINITY, why: "no anchors" };
  const design = designGust(evaluation);
  if (!layout.held) {
    return { gust: design * Math.sqrt(heldShare(evaluation)), why: "rail not held" };
  }
  const worst = Math.max(...counted.map(({ ratio }) => ratio));
  if (worst > 1) return { gust: anchorGust.evaluate(design, worst), why: "overloaded" };
  return { gust: design, why: "checked up to it" };
}
