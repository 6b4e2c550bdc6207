import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { factoredDead, type HoopAnswer } from "./hoop-answers.ts";

export type FootSide = "left" | "right";
export const footSides: readonly FootSide[] = ["left", "right"];

/** Forces on one foot, factored: uplift plus, N; thrust across, N; couple, N m. */
export interface FootForces {
  uplift: number;
  thrust: number;
  couple: number;
}

/** Reads the forces of a foot; `into` is reused. */
type ForcesAt = (
  answer: HoopAnswer,
  side: FootSide,
  deadFactor: number,
  windFactor: number,
  into: FootForces,
) => FootForces;

/** Where the forces of a foot are read. */
export interface FootReading {
  readonly words: string;
  readonly at: ForcesAt;
}

/** What the stub at the rail's top face has to hold. Writes into `into`. */
export function atRail(
  { dead, wind }: HoopAnswer,
  side: FootSide,
  deadFactor: number,
  windFactor: number,
  into: FootForces,
): FootForces {
  const at = side === "left" ? 0 : 3;
  const sum = (place: number): number =>
    deadFactor * (dead.response[place] as number) + windFactor * (wind.response[place] as number);
  into.thrust = Math.abs(sum(at));
  into.uplift = -sum(at + 1);
  into.couple = Math.abs(sum(at + 2));
  return into;
}

/** The places of the hinges among the stations, left and right. */
export const hingeStations = ({ runs }: ChainContext): readonly [left: number, right: number] => {
  const left = runs.places.findIndex(({ kind }) => kind === "hinge");
  const right = runs.places.findLastIndex(({ kind }) => kind === "hinge");
  return [left, right];
};

/** What the bolts' middle has to hold: pull along the tube plus, shear, moment. Writes into `into`. */
export function atBolts(
  { dead, wind }: HoopAnswer,
  station: number,
  deadFactor: number,
  windFactor: number,
  into: FootForces,
): FootForces {
  const count = dead.along.length / 3;
  const sum = (block: number): number =>
    deadFactor * (dead.along[block * count + station] as number) +
    windFactor * (wind.along[block * count + station] as number);
  into.uplift = sum(0);
  into.thrust = Math.abs(sum(1));
  into.couple = Math.abs(sum(2));
  return into;
}

/** Weight and wind factors of a case in a combination at K_d q_h. */
export const factorsOf = (
  { dead }: ChainContext,
  { windCase }: HoopAnswer,
  q: number,
  combination: LinkCombination,
): readonly [dead: number, wind: number] => [
  factoredDead(dead, windCase, combination),
  combination.wind * q,
];

/** The foot where the stub stands on the rail. */
export const footAtRail: FootReading = { words: "on the stub at the rail", at: atRail };
