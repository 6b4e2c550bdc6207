import { Refusal } from "@hoopstay/core";
import type { RailSupport } from "./rail.ts";

/** Ground under a rail, per length of rail. */
export interface GroundBed {
  /** Force per length and per settlement, N/m2: ground modulus (N/m3) times the rail's width. */
  readonly modulus: number;
  /** Greatest push per length, N/m: allowable bearing pressure times the rail's width. */
  readonly greatestPush: number;
}

/** Length of rail that bears at each station: half way to its neighbours, and to the rail's ends. */
export function tributaryLengths(length: number, stations: readonly number[]): number[] {
  return stations.map((x, i) => {
    const from = i === 0 ? 0 : ((stations[i - 1] as number) + x) / 2;
    const to = i === stations.length - 1 ? length : (x + (stations[i + 1] as number)) / 2;
    return to - from;
  });
}

/**
 * Ground under a rail as springs that only push, at given stations (every hoop foot and rail end),
 * each with the length of rail half way to its neighbours. Converges to a continuous bed with the
 * square of the stations' spacing, as long as that bed does not let go anywhere.
 *
 * @param stations places in rising order, m
 * @throws Refusal where the stations do not rise
 */
export function groundSprings(
  length: number,
  stations: readonly number[],
  bed: GroundBed,
): RailSupport[] {
  if (stations.some((x, i) => i > 0 && !(x > (stations[i - 1] as number)))) {
    throw new Refusal([
      {
        code: "out-of-range",
        key: "stations",
        given: stations.join(", "),
        expected: "places in rising order",
        mend: "sort the stations and drop repeated ones",
      },
    ]);
  }
  return tributaryLengths(length, stations).map((part, i) => ({
    kind: "ground",
    x: stations[i] as number,
    stiffness: bed.modulus * part,
    cap: bed.greatestPush * part,
  }));
}
