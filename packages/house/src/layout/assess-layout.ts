import {
  type AnchorPull,
  anchoredRuns,
  anchorPull,
  complianceOf,
  onSide,
  type RailFailure,
  uprightAllowable,
} from "../rail-pull/anchor-pulls.ts";
import type { AnchoredRail } from "../rail-pull/anchored-rail.ts";
import { Balances } from "../rail-pull/balanced-forces.ts";
import { type RailSide, railSides } from "../rail-pull/case-on-rails.ts";
import type { RailLoads } from "../rail-pull/rail-loads.ts";
import type { RailCompliance } from "../rail-pull/rail-on-ground.ts";
import {
  type PullsBySide,
  TrialOrder,
  type WorstPull,
  worstPulls,
} from "../rail-pull/worst-pulls.ts";
import { anchorsAt, equalPlaces, type HoldDownKind, type RailAnchor } from "./layout.ts";
import { type HoldRatio, WholeHouseHold } from "./whole-house-hold.ts";

/** A layout on both rails alike, and what it comes to. */
export interface Assessment {
  readonly count: number;
  readonly inset: number;
  /** The worst of lift off, turning and the anchors' own pulls. */
  readonly by: HoldRatio | AnchorPull | RailFailure;
  /** Its ratio; null where a rail is not held: a fail without a number. */
  readonly ratio: number | null;
  /** The pulls of both rails, where they were worked to the end. */
  readonly pulls: PullsBySide | null;
}

/** A layout under work: both rails have their anchors at the same places. */
interface Laid {
  readonly anchors: readonly RailAnchor[];
  readonly runs: readonly AnchoredRail[];
}

/** Assesses layouts of one kind; what can be shared between kinds is. */
export class LayoutAssessor {
  readonly order: TrialOrder;
  readonly hold: WholeHouseHold;
  private readonly rails = new Map<
    string,
    { readonly compliance: RailCompliance; readonly balances: Balances }
  >();
  private readonly laid = new Map<string, Laid>();

  constructor(readonly loads: RailLoads) {
    const { evaluation, states, combination } = loads;
    this.order = new TrialOrder(loads);
    this.hold = new WholeHouseHold(evaluation, states, combination);
  }

  anchors(kind: HoldDownKind, count: number, inset: number): RailAnchor[] {
    return anchorsAt(kind, equalPlaces(this.loads.evaluation.house.rail, count, inset));
  }

  /** Both rails' anchors and, at each stiffness, the rail that stands for either. */
  layOut(kind: HoldDownKind, count: number, inset: number): Laid {
    const place = `${count} ${inset}`;
    const key = `${kind.id} ${place}`;
    const known = this.laid.get(key);
    if (known) return known;
    const anchors = this.anchors(kind, count, inset);
    const own = onSide(anchors, "right");
    let rail = this.rails.get(place);
    if (!rail) {
      const compliance = complianceOf(this.loads, own);
      rail = { compliance, balances: new Balances(this.loads, compliance) };
      this.rails.set(place, rail);
    }
    const runs = anchoredRuns(this.loads, rail.compliance, own, rail.balances);
    const made = { anchors, runs };
    this.laid.set(key, made);
    return made;
  }

  /** Whether a layout holds: quicker than what it comes to. */
  holds(kind: HoldDownKind, count: number, inset: number): boolean {
    const { loads, order } = this;
    if (this.hold.worst(this.anchors(kind, count, inset), 1).ratio > 1) return false;
    const { anchors, runs } = this.layOut(kind, count, inset);
    const most = this.uprightAllowables(anchors, 1);
    return worstPulls(loads, order, runs, most, undefined, most).outcome === "held";
  }

  private uprightAllowables(anchors: readonly RailAnchor[], times: number): number[] {
    return onSide(anchors, "right").map(
      (anchor) => times * uprightAllowable(anchor, this.loads.combination),
    );
  }

  /**
   * What a layout comes to. Whole-house checks come first, being necessary and cheap.
   *
   * @param above the search ends at the first ratio above this; the result then is above it, though
   *   a worse one may follow
   */
  assess(kind: HoldDownKind, count: number, inset: number, above: number): Assessment {
    const { loads, order } = this;
    const hold = this.hold.worst(this.anchors(kind, count, inset), above);
    if (hold.ratio > above) return { count, inset, by: hold, ratio: hold.ratio, pulls: null };
    const { anchors, runs } = this.layOut(kind, count, inset);
    const most = this.uprightAllowables(anchors, above);
    const found = worstPulls(loads, order, runs, most);
    if (found.outcome !== "held" && found.outcome !== "above") {
      const { outcome, load } = found;
      const by = { outcome, side: load.side, governs: load };
      return { count, inset, by, ratio: null, pulls: null };
    }
    const pulls = found.outcome === "held" ? found.worst : null;
    const worst =
      found.outcome === "above"
        ? this.pullOf(anchors, found.pull.load?.side ?? "right", found.anchor, found.pull)
        : railSides
            .flatMap((side) =>
              found.worst[side].map((pull, at) => this.pullOf(anchors, side, at, pull)),
            )
            .reduce((a, b) => (b.ratio > a.ratio ? b : a));
    const by = worst.ratio > hold.ratio ? worst : hold;
    return { count, inset, by, ratio: by.ratio, pulls };
  }

  pullOf(anchors: readonly RailAnchor[], side: RailSide, at: number, pull: WorstPull): AnchorPull {
    const anchor = onSide(anchors, side)[at] as RailAnchor;
    return anchorPull(anchor, pull, this.loads.combination);
  }
}
