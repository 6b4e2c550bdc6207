import type { AnchorRow, HoldReview, KindReview, LayoutReview } from "@hoopstay/core";
import type { FittedAnchor } from "../model/house-model.ts";
import { type Evaluation, evaluate } from "../review/evaluate.ts";
import type { HoldId } from "../review/hold.ts";
import { setLetters, stateSummary } from "../review/summaries.ts";
import { layoutLimit } from "../storm-ladder/layout-gust.ts";
import { closedStateOf, stateGust } from "../storm-ladder/state-gusts.ts";

/** The layout a card asks for: what is fitted, or else the first kind that holds in every state. */
export interface CardLayout {
  readonly layout: LayoutReview;
  /** The kind still to be set; null where the anchors are those fitted. */
  readonly kind: KindReview | null;
}

export function firstKindThatHolds({ kinds }: HoldReview): CardLayout | null {
  for (const kind of kinds) if (kind.every?.holds) return { layout: kind.every, kind };
  return null;
}

export function cardLayout(hold: HoldReview): CardLayout | null {
  if (hold.fitted && hold.fitted.anchors.length > 0) return { layout: hold.fitted, kind: null };
  return firstKindThatHolds(hold);
}

/** An anchor of the layout as if it were fitted: its pull is the layout's, and is not rated anew. */
function anchorOf(row: AnchorRow): FittedAnchor {
  const { name, side, across, along, angle, allowable } = row;
  const length = Math.hypot(...row.toward);
  const level = length === 0 ? 0 : Math.cos(angle) / length;
  const down = length === 0 ? -1 : -Math.sin(angle);
  return {
    name,
    side,
    kind: null,
    x: across,
    y: along,
    pull: allowable,
    toward: [level * row.toward[0], level * row.toward[1], down],
  };
}

/** What the house does when it is left shut with the anchors of the card. */
export interface CardEnd {
  /** Working gust, m/s: the lowest of the single checks and what limits the layout. */
  readonly gust: number;
  /** Whether every single check passes against the wind that was asked for. */
  readonly passes: boolean;
  /** Whether the least wind load of the standard is carried. */
  readonly carriesLeast: boolean;
}

function closedIn(evaluation: Evaluation, hold: HoldId): CardEnd {
  const closed = closedStateOf(evaluation);
  const held = evaluation.holds.find(({ id }) => id === hold);
  if (!held) throw new Error(`nothing holds the house ${hold}`);
  const letter = setLetters(evaluation).get(closed.set) ?? "";
  const { checks, least } = stateSummary(evaluation, closed, held, letter);
  const { combination, mapSpeed } = evaluation.site;
  const passes = checks.every(
    ({ ratio, codeSpeed }) =>
      ratio[combination] <= 1 && codeSpeed[combination] >= mapSpeed * (1 - 1e-12),
  );
  const { gust } = stateGust(evaluation, closed, hold);
  return { gust, passes, carriesLeast: least.ratio <= 1 };
}

/**
 * The house shut, with the anchors of the layout set. A layout still to be set is put through every
 * single check as if it were fitted. Without a layout no anchor counts.
 */
export function cardEnd(evaluation: Evaluation, chosen: CardLayout | null): CardEnd {
  const { house, site, holds } = evaluation;
  if (!chosen) {
    const last = holds.at(-1)?.id ?? "bare";
    return closedIn(evaluation, house.anchors.length === 0 ? last : "bare");
  }
  const { layout, kind } = chosen;
  const limit = layoutLimit(layout, evaluation).gust;
  const planned = (): Evaluation =>
    evaluate({ ...house, anchors: layout.anchors.map(anchorOf) }, site);
  const end = closedIn(kind ? planned() : evaluation, "fitted");
  return { ...end, gust: Math.min(end.gust, limit) };
}
