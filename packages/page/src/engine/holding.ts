import type { KindReview, System } from "@hoopstay/core";
import { anchorPlan, stormMarkup, towMarkup } from "@hoopstay/report/parts";
import type { Loaded } from "./load.ts";
import type { DrawnLayout, Holding, ShownIn } from "./messages.ts";
import { holdOf, ladderOf, reviewOf } from "./study.ts";

/** What holds the house here, its layouts drawn as the report draws them, and the pull to move it. */
export function holdingOf(loaded: Loaded, system: System): Omit<Holding, "turn"> {
  const hold = holdOf(loaded);
  const { drawings } = reviewOf(loaded);
  const layoutOf = (kind: KindReview, place: number): DrawnLayout[] => {
    const layout = kind.every ?? kind.shut;
    if (!layout || layout.anchors.length === 0) return [];
    const when = kind.every ? "in every state" : "kept shut";
    const title = `${kind.words}: ${layout.perRail} on each side, ${when}`;
    return [{ title, html: anchorPlan(`kind-${place}`, title, layout.anchors, drawings, system) }];
  };
  const fitted = hold.fitted?.anchors ?? [];
  const asFitted = "As fitted, with the worst pull at each";
  return {
    hold,
    layouts: [
      ...(fitted.length === 0
        ? []
        : [{ title: asFitted, html: anchorPlan("fitted", asFitted, fitted, drawings, system) }]),
      ...hold.kinds.flatMap(layoutOf),
    ],
    tow: towMarkup(hold.tow, system),
  };
}

export const ladderMarkup = (loaded: Loaded, { forecast, system }: ShownIn): string =>
  stormMarkup(ladderOf(loaded, forecast), system);
