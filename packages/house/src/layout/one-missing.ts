import { constant, judged } from "@hoopstay/core";
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
import { type RailSide, railSides } from "../rail-pull/case-on-rails.ts";
import { energyWithout, noneBeyond } from "../rail-pull/pull-bound.ts";
import type { RailLoad, RailLoads } from "../rail-pull/rail-loads.ts";
import { solveFamily, TrialOrder, type WorstPull } from "../rail-pull/worst-pulls.ts";
import type { RailAnchor } from "./layout.ts";
import { type HoldRatio, WholeHouseHold } from "./whole-house-hold.ts";

/** What is left when one anchor is missing: for information. */
export interface OneMissing {
  readonly missing: RailAnchor;
  /** Worst of lift off and turning. */
  readonly hold: HoldRatio;
  /** Worst anchor of the same rail, or why there is none. */
  readonly worst: AnchorPull | RailFailure;
  /** Whether an end anchor that is left goes beyond `doubleEndsAbove`, or the rail is not held. */
  readonly endBeyond: boolean;
}

/** The worst of all missing anchors. */
export interface WorstMissing {
  readonly worst: OneMissing;
  /** Whether a second anchor at each end is to be offered. */
  readonly doubleEnds: boolean;
}

/** With one anchor missing, an end anchor loaded beyond this ratio calls for a doubled end pair. */
export const doubleEndsAbove = constant(
  "double-ends-above",
  "T/T_allow",
  "pull of an end anchor with one missing, over its allowable pull",
  1.5,
  "ratio",
  judged("1.5 times the allowable pull is near what an anchor can hold at all"),
);

/** What a search has at hand already. */
export interface MissingTools {
  readonly order: TrialOrder;
  readonly hold: WholeHouseHold;
  readonly runsOf: (own: readonly RailAnchor[]) => readonly AnchoredRail[];
}

const missingTools = (loads: RailLoads): MissingTools => ({
  order: new TrialOrder(loads),
  hold: new WholeHouseHold(loads.evaluation, loads.states, loads.combination),
  runsOf: (own) => anchoredRuns(loads, complianceOf(loads, own), own),
});

/**
 * Each anchor taken away in turn: what whole-house checks and the worst anchor left on its rail come
 * to. Information, not a check.
 */
export function oneMissing(loads: RailLoads, anchors: readonly RailAnchor[]): OneMissing[] {
  const tools = missingTools(loads);
  return railSides.flatMap((side) => {
    const own = onSide(anchors, side);
    const runs = own.length < 2 ? [] : tools.runsOf(own);
    return own.map((_, at): OneMissing => {
      const left = leftOf(loads, tools, side, own, runs, at, 0);
      return told(loads, tools, anchors, own, at, left ?? nothingPulls(own, at));
    });
  });
}

/**
 * The missing anchor that loads another one most, of both rails, or the first that leaves a rail not
 * held; and whether any leaves an end anchor beyond `doubleEndsAbove`. Two anchors or more on a rail.
 */
export function worstMissing(
  loads: RailLoads,
  anchors: readonly RailAnchor[],
  tools: MissingTools = missingTools(loads),
): WorstMissing {
  let [worst, endBeyond]: [OneMissing | undefined, boolean] = [undefined, false];
  let most = 0;
  for (const side of railSides) {
    const own = onSide(anchors, side);
    const runs = tools.runsOf(own);
    for (const at of endsFirst(own.length)) {
      const left = leftOf(loads, tools, side, own, runs, at, most);
      if (!left) continue;
      endBeyond ||= left.endBeyond;
      if (!("outcome" in left) && left.ratio <= most) continue;
      worst = told(loads, tools, anchors, own, at, left);
      if ("outcome" in left) return { worst, doubleEnds: true };
      most = left.ratio;
    }
  }
  const first = onSide(anchors, "right");
  worst ??= told(loads, tools, anchors, first, 0, nothingPulls(first, 0));
  return { worst, doubleEnds: endBeyond };
}

/** Places on a rail, the ends and their neighbours first: those are the likely worst. */
const endsFirst = (count: number): number[] =>
  Array.from({ length: count }, (_, at) => at).sort(
    (a, b) => Math.min(a, count - 1 - a) - Math.min(b, count - 1 - b),
  );

/** The worst anchor left on a rail, or why there is none. */
type Left =
  | {
      readonly anchor: number;
      readonly ratio: number;
      readonly pull: WorstPull;
      readonly endBeyond: boolean;
    }
  | (Omit<RailFailure, "side"> & { readonly endBeyond: true });

const nothingPulls = (own: readonly RailAnchor[], missing: number): Left => ({
  anchor: missing === 0 ? own.length - 1 : 0,
  ratio: 0,
  pull: { pull: 0, load: null, run: 0 },
  endBeyond: false,
});

function told(
  loads: RailLoads,
  { hold }: MissingTools,
  anchors: readonly RailAnchor[],
  own: readonly RailAnchor[],
  at: number,
  left: Left,
): OneMissing {
  const missing = own[at] as RailAnchor;
  const { side } = missing;
  return {
    missing,
    hold: hold.worst(anchors.filter((anchor) => anchor !== missing)),
    worst:
      "outcome" in left
        ? { outcome: left.outcome, side, governs: left.governs }
        : anchorPull(own[left.anchor] as RailAnchor, left.pull, loads.combination),
    endBeyond: left.endBeyond,
  };
}

/**
 * The worst anchor left; loads that provably pull none beyond it are passed over.
 *
 * @param most ratio up to which nothing need be told
 * @returns null where no anchor goes beyond `most` and no end anchor beyond `doubleEndsAbove`
 */
function leftOf(
  loads: RailLoads,
  { order }: MissingTools,
  side: RailSide,
  own: readonly RailAnchor[],
  runs: readonly AnchoredRail[],
  missing: number,
  most: number,
): Left | null {
  if (own.length < 2) return { outcome: "unanchored", governs: null, endBeyond: true };
  const allowed = own.map((anchor) => uprightAllowable(anchor, loads.combination));
  const first = missing === 0 ? 1 : 0;
  const last = missing === own.length - 1 ? own.length - 2 : own.length - 1;
  const isEnd = (j: number): boolean => j === first || j === last;
  let [worst, anchor, endBeyond] = [most, -1, false];
  let pull: WorstPull = { pull: 0, load: null, run: 0 };
  const without = runs.map((rail) => rail.without(missing));
  /** Pulls up to these change nothing, N. */
  const known = new Float64Array(own.length);
  const learn = (): void => {
    allowed.forEach((allowable, j) => {
      const ends = isEnd(j) && !endBeyond;
      known[j] = allowable * (ends ? Math.min(worst, doubleEndsAbove.value) : worst);
    });
  };
  learn();
  for (const family of order.families) {
    if (family.side !== side) continue;
    for (let run = 0; run < without.length; run += 1) {
      const rail = without[run] as AnchoredRail;
      const { pulls, stiffness, balances, from } = rail;
      const failed = solveFamily(loads, family, rail, {
        passedOver: (id) => {
          const balance = balances.of(id);
          if (!balance) return false;
          const bending = from.on.rail.stiffness;
          const energy = energyWithout(balance, missing, from.anchors, stiffness, bending);
          const { groundStiffness } = from;
          return noneBeyond(energy, balance.lift, stiffness, missing, groundStiffness, known);
        },
        take: (id) => {
          for (let j = 0; j < own.length; j += 1) {
            if (j === missing) continue;
            const ratio = (pulls[j] as number) / (allowed[j] as number);
            const beyond = isEnd(j) && ratio > doubleEndsAbove.value;
            if (ratio <= worst && (endBeyond || !beyond)) continue;
            endBeyond ||= beyond;
            if (ratio > worst) {
              worst = ratio;
              anchor = j;
              pull = { pull: pulls[j] as number, load: loads.loads[id] as RailLoad, run };
            }
            learn();
          }
          return true;
        },
      });
      if (failed) return { outcome: failed.outcome, governs: failed.load, endBeyond: true };
    }
  }
  if (anchor >= 0) return { anchor, ratio: worst, pull, endBeyond };
  return endBeyond ? { ...nothingPulls(own, missing), endBeyond } : null;
}
