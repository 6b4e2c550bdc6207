import {
  type BaseLine,
  baseLines,
  type CheckId,
  type CombinationId,
  demandOf,
  type Extremes,
  extremesOf,
  type HoldingTerms,
  holdingTerms,
  type LineTerms,
  lineTerms,
  ratioOf,
  resistanceOf,
} from "@hoopstay/stability";
import { combinationOf } from "../rail-pull/dead-on-rails.ts";
import type { EvaluatedState, Evaluation, LoadSet } from "../review/evaluate.ts";
import { withBallast } from "../take-off/take-off.ts";
import { fittedAnchors, type RailAnchor } from "./layout.ts";

/** The worst of lift off and turning about all base lines. */
export interface HoldRatio {
  readonly check: Exclude<CheckId, "slide">;
  readonly ratio: number;
  readonly state: EvaluatedState;
  readonly caseIndex: number;
  readonly weight: "low" | "high";
  readonly line: BaseLine | null;
}

interface HeldSet {
  readonly state: EvaluatedState;
  readonly extremes: Extremes;
  readonly lines: readonly BaseLine[];
  readonly weights: readonly {
    readonly terms: HoldingTerms;
    readonly about: readonly LineTerms[];
  }[];
}

/**
 * Lift off and turning of the whole house in some states, for any anchors: what wind and weight do
 * is worked once.
 */
export class WholeHouseHold {
  private readonly sets: readonly HeldSet[];

  constructor(
    private readonly evaluation: Evaluation,
    states: readonly EvaluatedState[],
    private readonly combination: CombinationId,
  ) {
    const { house, site } = evaluation;
    const sets = [...new Set(states.map(({ set }) => set))];
    this.sets = sets.map((set): HeldSet => {
      const bare = set.holds[0] as LoadSet["holds"][number];
      const weights = bare.holdings.map(({ weight }) => withBallast(weight, house));
      const bearing = {
        halfSpan: house.lines.span / 2,
        front: house.rail.front,
        back: house.rail.back,
        railWidth: house.rail.width,
        allowable: site.bearing,
      };
      const lines = baseLines(bearing, (weights[0] as (typeof weights)[number]).W, true);
      return {
        state: states.find((one) => one.set === set) as EvaluatedState,
        extremes: extremesOf(set.table, lines),
        lines,
        weights: weights.map((weight) => {
          const holding = { weight, anchors: [], slope: site.slope, friction: site.friction };
          const terms = holdingTerms(holding, combinationOf(combination));
          return { terms, about: lines.map((line) => lineTerms(terms, line)) };
        }),
      };
    });
  }

  /** @param above the first ratio above this is returned, even if a worse one follows */
  worst(anchors: readonly RailAnchor[], above = Number.POSITIVE_INFINITY): HoldRatio {
    const { evaluation, combination } = this;
    const { wind } = combinationOf(combination);
    const { pressure, site } = evaluation;
    const none = { name: "low" as const, W: 0, x: 0, y: 0, z: 0 };
    const tethers = holdingTerms(
      {
        weight: none,
        anchors: fittedAnchors(anchors, evaluation.house),
        slope: null,
        friction: site.friction,
      },
      combinationOf(combination),
    );
    let worst: HoldRatio | undefined;
    for (const { state, extremes, lines, weights } of this.sets) {
      for (const { terms, about } of weights) {
        const weight = terms.holding.weight.name;
        const demand = demandOf.evaluate(wind, pressure * extremes.uplift.effect, 0);
        const resistance = resistanceOf.evaluate(terms.deadNormal, tethers.anchorDown);
        const ratio = ratioOf(demand, resistance);
        const caseIndex = extremes.uplift.index;
        if (!worst || ratio > worst.ratio) {
          worst = { check: "lift", ratio, state, caseIndex, weight, line: null };
        }
        if (worst.ratio > above) return worst;
        for (let place = 0; place < lines.length; place += 1) {
          const line = lines[place] as BaseLine;
          const { weightMoment, slopeMoment } = about[place] as LineTerms;
          const { effect, index } = extremes.moments[place] as Extremes["moments"][number];
          const turned = ratioOf(
            demandOf.evaluate(wind, pressure * effect, slopeMoment),
            resistanceOf.evaluate(weightMoment, lineTerms(tethers, line).anchorMoment),
          );
          if (turned <= worst.ratio) continue;
          worst = { check: line.check, ratio: turned, state, caseIndex: index, weight, line };
          if (turned > above) return worst;
        }
      }
    }
    if (!worst) throw new Error("no state to hold the house in");
    return worst;
  }
}
