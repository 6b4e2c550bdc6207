import {
  caseOnRails,
  endMomentWays,
  type RailSide,
  railSides,
  sideSign,
} from "../../rail-pull/case-on-rails.ts";
import { combinationOf, deadOnRails, type SlopeMoments } from "../../rail-pull/dead-on-rails.ts";
import type { LaidLoad } from "../../rail-pull/rail-loads.ts";
import { type RailShapes, roofShape, type StationForces } from "../../rail-pull/rail-shapes.ts";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import type { LinkCombination } from "../combination.ts";
import { inMap } from "../in-map.ts";

type Case = ReturnType<typeof caseOnRails>;

/** A weight on both rails, factored, by column, and what a slope makes of it. */
interface Weight {
  readonly columns: Readonly<Record<RailSide, number>>;
  readonly slopes: readonly SlopeMoments[];
}

/** What one rail may have to carry up and down in a case, as multiples of columns. */
export class VerticalLoads {
  /** Forces at the stations: even, turning, both end bays, then weights and roofs. */
  readonly columns: StationForces[];
  private readonly cases = new Map<LoadSet, Case[]>();
  private readonly weights = new Map<LoadSet, Map<LinkCombination, Weight>>();
  private readonly roofs = new Map<object, Map<number, number>>();

  constructor(
    private readonly evaluation: Evaluation,
    private readonly shapes: RailShapes,
  ) {
    this.columns = [shapes.even, shapes.turning, shapes.frontBay, shapes.backBay];
  }

  /** One load for every moment of a slope and every way of the end walls' moments. */
  of(
    set: LoadSet,
    caseIndex: number,
    side: RailSide,
    q: number,
    combination: LinkCombination,
  ): LaidLoad[] {
    const one = this.caseOf(set, caseIndex);
    const { columns, slopes } = this.weightOf(set, combination);
    const wind = combination.wind * q;
    const half = wind / 2;
    const roof = one.roof ? this.roofOf(one.roof) : -1;
    const { span } = this.evaluation.house.lines;
    const ways = one.front === 0 && one.back === 0 ? endMomentWays.slice(0, 1) : endMomentWays;
    return slopes.flatMap((slope) =>
      ways.map((way): LaidLoad => {
        const endBays = way === "end bays";
        return {
          parts: [
            wind * one.even[side] - (sideSign[side] * slope.my) / span,
            half * (one.rest + (endBays ? 0 : one.front + one.back)) + slope.mx / 2,
            endBays ? half * one.front : 0,
            endBays ? half * one.back : 0,
          ],
          roof,
          roofPart: half,
          dead: columns[side],
        };
      }),
    );
  }

  /** Forces of a load at the stations of its rail, N, up positive; writes into `into`. */
  forces({ parts, roof, roofPart, dead }: LaidLoad, into: Float64Array): void {
    const [even, turning, front, back] = this.columns as [
      StationForces,
      StationForces,
      StationForces,
      StationForces,
    ];
    const own = this.columns[dead] as StationForces;
    for (let at = 0; at < own.length; at += 1) {
      into[at] =
        (own[at] as number) +
        parts[0] * (even[at] as number) +
        parts[1] * (turning[at] as number) +
        (parts[2] * (front[at] as number) + parts[3] * (back[at] as number));
    }
    if (roof < 0) return;
    const zones = this.columns[roof] as StationForces;
    for (let at = 0; at < own.length; at += 1) {
      into[at] = (into[at] as number) + roofPart * (zones[at] as number);
    }
  }

  private caseOf(set: LoadSet, index: number): Case {
    const known = inMap(this.cases, set, () => []);
    const { shell, house } = this.evaluation;
    known[index] ??= caseOnRails(set, shell, house.lines.span, index);
    return known[index];
  }

  private weightOf(set: LoadSet, combination: LinkCombination): Weight {
    const known = inMap(this.weights, set, () => new Map<LinkCombination, Weight>());
    return inMap(known, combination, () => {
      const { method, weight } = combination;
      const hold = set.holds.at(-1) as LoadSet["holds"][number];
      const deads = deadOnRails(this.evaluation.house, this.shapes, hold, method);
      const dead = deads.find((found) => found.weight === weight);
      if (!dead) throw new Error(`no ${weight} weight on the rails`);
      // Weights come factored by the whole-house combination of the method; a slope's pull stays so.
      const times = combination.dead / combinationOf(method).dead;
      const [right, left] = railSides.map(
        (side) => this.columns.push(dead.columns[side].map((force) => times * force)) - 1,
      ) as [number, number];
      return { columns: { right, left }, slopes: dead.outerSlopes };
    });
  }

  /** The column of a roof by zones, or -1 where one pressure acts all along. */
  private roofOf({ roof, sense }: NonNullable<Case["roof"]>): number {
    const known = inMap(this.roofs, roof, () => new Map<number, number>());
    return inMap(known, sense, () => {
      const shape = roofShape(this.shapes, roof, sense);
      return shape ? this.columns.push(shape) - 1 : -1;
    });
  }
}
