import { caseStride } from "@hoopstay/load";
import {
  type Anchor,
  asd,
  type BaseLine,
  baseLines,
  type CheckId,
  type Holding,
  type HoldingTerms,
  holdingTerms,
  type LineTerms,
  limitOf,
  lineTerms,
  resistanceOf,
  slideLimit,
  straightLimit,
} from "@hoopstay/stability";
import type { House } from "../../model/house-model.ts";
import type { Site } from "../../model/site-model.ts";
import type { Evaluation } from "../../review/evaluate.ts";
import { type TakeOff, weightsOf, withBallast } from "../../take-off/take-off.ts";
import { type HeldRows, heldRows } from "./held-rows.ts";
import { farOff, slidingBelow } from "./sliding-below.ts";
import {
  allSlidingRows,
  type SlidingHold,
  type SlidingRow,
  slidingRow,
  worstSlidingRows,
} from "./sliding-rows.ts";
import { EndRows, greatestAbout } from "./turning-rows.ts";

/** The check that gives way first, and the K_d q_h at which it does, Pa. */
export interface LowestLimit {
  readonly limit: number;
  readonly check: CheckId;
}

/** What decides in one group of load cases, whatever holds the house. */
interface Group {
  readonly rows: HeldRows;
  readonly uplift: number;
  readonly right: number;
  readonly left: number;
  readonly front: EndRows;
  readonly back: EndRows;
  /** Rows that can govern sliding, by the anchors that hold. */
  readonly sliding: Map<readonly Anchor[], readonly SlidingRow[]>;
}

/** A slide that governed a like house: its load set by number, its case, with or without the arch. */
export interface KnownSlide {
  readonly set: number;
  readonly caseIndex: number;
  readonly withoutArch: boolean;
}

/**
 * Lift off, turning and sliding of houses that the wind cannot tell apart: what the wind does is
 * worked once; the houses differ in weight and anchors. Limits are those of ASD, as the working gust
 * is. Left out: everything at once; and with slanted tethers on a slope all slides but those that are
 * known to govern a like house, and a slide that more wind ends. What is left out can only lower the
 * limit.
 */
export class ShellStability {
  private readonly groups: readonly Group[];

  /** @param design K_d q_h at the design speed, Pa */
  constructor(
    { states }: Pick<Evaluation, "states">,
    private readonly house: House,
    private readonly site: Site,
    private readonly design: number,
    private readonly known: readonly KnownSlide[],
  ) {
    const [right, left] = this.baseLines(0, false);
    const sets = [...new Set(states.map(({ set }) => set))];
    this.groups = heldRows(sets).map((rows) => ({
      rows,
      uplift: greatestUplift(rows),
      right: greatestAbout(rows, right),
      left: greatestAbout(rows, left),
      front: new EndRows(rows, 1, house.rail.front),
      back: new EndRows(rows, -1, house.rail.back),
      sliding: new Map(),
    }));
  }

  /** The lowest limit of all states, both weights. `anchors` is one and the same list for a layout. */
  lowest(takeOff: TakeOff, anchors: readonly Anchor[]): LowestLimit {
    let lowest: LowestLimit = { limit: Number.POSITIVE_INFINITY, check: "lift" };
    for (const group of this.groups) {
      const weights = weightsOf(takeOff, group.rows.gone).map((weight) =>
        withBallast(weight, this.house),
      );
      const lines = this.baseLines((weights[0] as Holding["weight"]).W, anchors.length > 0);
      for (const weight of weights) {
        const { slope, friction } = this.site;
        const terms = holdingTerms({ weight, anchors, slope, friction }, asd);
        lowest = this.lowestOf(group, terms, lines, lowest);
      }
    }
    return lowest;
  }

  private lowestOf(
    group: Group,
    terms: HoldingTerms,
    lines: readonly BaseLine[],
    known: LowestLimit,
  ): LowestLimit {
    const { wind } = terms.combination;
    const held = resistanceOf.evaluate(terms.deadNormal, terms.anchorDown);
    let lowest = lower(known, "lift", limitOf(held, 0, wind, group.uplift));
    const about = lines.map((line) => lineTerms(terms, line));
    lines.forEach((line, place) => {
      const { weightMoment, anchorMoment, slopeMoment } = about[place] as LineTerms;
      const resistance = resistanceOf.evaluate(weightMoment, anchorMoment);
      const limit = limitOf(resistance, slopeMoment, wind, momentOf(group, line));
      lowest = lower(lowest, line.check, limit);
    });
    const [right, left] = about as [LineTerms, LineTerms];
    const sliding = { terms, right, left };
    const straight = terms.sideways && terms.downslope === 0;
    for (const { wind: one, h, parts } of this.slidingRows(group, terms, lines)) {
      const limit = straight
        ? straightLimit({ sliding, wind: one, h, parts }, this.design, lowest.limit)
        : terms.sideways
          ? slidingBelow(sliding, one, Math.min(lowest.limit, farOff * this.design))
          : slideLimit(sliding, one, this.design);
      lowest = lower(lowest, "slide", limit);
    }
    return lowest;
  }

  /** The rows to look at for sliding; worked once for a layout of anchors. */
  private slidingRows(
    { rows, sliding }: Group,
    { holding, downslope, sideways }: HoldingTerms,
    [right, left]: readonly BaseLine[],
  ): readonly SlidingRow[] {
    // Upright tethers do nothing against sliding: one list serves every number of them.
    const anchors = sideways ? holding.anchors : noAnchors;
    const found = sliding.get(anchors);
    if (found) return found;
    const hold = { right: right as BaseLine, left: left as BaseLine, anchors };
    const alongWind = downslope === 0 || (holding.slope?.downhill === null && !sideways);
    const made = alongWind
      ? worstSlidingRows(rows, hold)
      : sideways
        ? this.knownRows(rows, hold)
        : allSlidingRows(rows, hold);
    sliding.set(anchors, made);
    return made;
  }

  private knownRows(rows: HeldRows, hold: SlidingHold): SlidingRow[] {
    return this.known.flatMap(({ set, caseIndex, withoutArch }) => {
      const row = (rows.firstOf.get(set) ?? rows.count) + caseIndex;
      return row < rows.count ? [slidingRow(rows, row, withoutArch, hold)] : [];
    });
  }

  private baseLines(lowWeight: number, anchored: boolean): [BaseLine, BaseLine, ...BaseLine[]] {
    const { rail, lines } = this.house;
    const bearing = {
      halfSpan: lines.span / 2,
      front: rail.front,
      back: rail.back,
      railWidth: rail.width,
      allowable: this.site.bearing,
    };
    return baseLines(bearing, lowWeight, anchored) as [BaseLine, BaseLine, ...BaseLine[]];
  }
}

const noAnchors: readonly Anchor[] = [];

const lower = (known: LowestLimit, check: CheckId, limit: number): LowestLimit =>
  limit < known.limit ? { limit, check } : known;

function momentOf(group: Group, { check, distance }: BaseLine): number {
  if (check === "tip-right") return group.right;
  if (check === "tip-left") return group.left;
  return (check === "tip-front" ? group.front : group.back).greatest(distance);
}

function greatestUplift({ components, count }: HeldRows): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < count; row += 1) {
    most = Math.max(most, components[row * caseStride + 2] as number);
  }
  return most;
}
