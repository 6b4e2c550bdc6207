import type { LoadSet } from "../../review/evaluate.ts";
import type { ChainCase } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import { type AlongPush, alongPush } from "./end-pushes.ts";
import type { HoopAlong, HoopsAlong } from "./hoop-along.ts";

/** What a push along the house asks of one hoop, per unit of K_d q_h: m2 for forces, m3 for moments. */
export interface AlongDemand {
  /** Push on this hoop at purlins or wall, m2, and on every metre of it, m. */
  readonly top: number;
  readonly line: number;
  readonly byTop: HoopAlong;
  readonly even: HoopAlong;
  readonly bending: Float64Array;
  readonly torsion: Float64Array;
  readonly shear: number;
  readonly tipping: number;
  readonly torque: number;
  readonly atBolts: number;
}

/** Load sets of a case in which the push along the house is the same. */
export interface PushedCase {
  readonly push: AlongPush;
  readonly sets: Map<LoadSet, number>;
}

/** The load sets of a case of the hoops, parted by what pushes the house along its ridge. */
export function pushedCases({ evaluation }: ChainContext, windCase: ChainCase): PushedCase[] {
  const found = new Map<string, PushedCase>();
  for (const [set, index] of windCase.sets) {
    const inside = insideOf(set, index);
    const push = alongPush(evaluation.shell, set, windCase.direction, inside);
    const key = [push.front, push.back, push.line].map((value) => value.toPrecision(12)).join(" ");
    const known = found.get(key);
    if (known) known.sets.set(set, index);
    else found.set(key, { push, sets: new Map([[set, index]]) });
  }
  return [...found.values()];
}

/** Inside pressures run in blocks of one length through a table of cases. */
const insideOf = ({ insideCoefficients, table }: LoadSet, index: number): number =>
  insideCoefficients[Math.floor((index * insideCoefficients.length) / table.count)] as number;

export function alongDemand(
  { even }: HoopsAlong,
  top: number,
  byTop: HoopAlong,
  line: number,
): AlongDemand {
  const sum = (of: (one: HoopAlong) => number): number => top * of(byTop) + line * of(even);
  const both = (of: (one: HoopAlong) => Float64Array): Float64Array =>
    of(byTop).map((value, at) => top * value + line * (of(even)[at] as number));
  return {
    top,
    line,
    byTop,
    even,
    bending: both(({ bending }) => bending),
    torsion: both(({ torsion }) => torsion),
    shear: sum(({ foot }) => foot.shear),
    tipping: sum(({ foot }) => foot.tipping),
    torque: sum(({ foot }) => foot.torque),
    atBolts: sum(({ atBolts }) => atBolts),
  };
}
