import {
  endBayShares,
  footShares,
  type RoofLoad,
  type Sense,
  type Shell,
  turningShares,
  zoneUplift,
} from "@hoopstay/load";
import type { House } from "../model/house-model.ts";

/** Forces at the stations of one rail, N or a part of a whole, up positive. */
export type StationForces = Float64Array;

/** Ways in which a load lies along a rail. */
export interface RailShapes {
  /** Places of the hoops from the middle of the house, back to front, m. */
  readonly feet: readonly number[];
  /** A force of one spread evenly over the shell. */
  readonly even: StationForces;
  /** A moment of one (y times force) in proportion to each foot's place. */
  readonly turning: StationForces;
  /** A moment of one as a couple in the end bay. */
  readonly frontBay: StationForces;
  readonly backBay: StationForces;
  /** A force of one spread evenly over the rail's own length. */
  readonly rail: StationForces;
  /** Forces at the feet as forces at the stations. */
  readonly atStations: (feet: Float64Array) => StationForces;
}

/** Places of the hoops from the middle of the house, back to front, m. */
export const hoopPlaces = ({ length, hoopCount }: House["lines"]): number[] =>
  Array.from({ length: hoopCount }, (_, hoop) => -length / 2 + (hoop * length) / (hoopCount - 1));

/**
 * @param stations hoop feet and rail ends, from the middle of the house, m
 * @param footStation which station each foot is
 */
export function railShapes(
  { lines, rail }: House,
  shell: Shell,
  stations: readonly number[],
  footStation: readonly number[],
): RailShapes {
  const feet = hoopPlaces(lines);
  const half = shell.L / 2;
  const atStations = (forces: Float64Array): StationForces => {
    const all = new Float64Array(stations.length);
    footStation.forEach((station, foot) => {
      all[station] = forces[foot] as number;
    });
    return all;
  };
  const length = rail.front + rail.back;
  return {
    feet,
    even: atStations(footShares(feet, -half, half).map((share) => share / shell.L)),
    turning: atStations(turningShares(feet)),
    frontBay: atStations(endBayShares(feet, "front")),
    backBay: atStations(endBayShares(feet, "back")),
    rail: footShares(stations, -rail.back, rail.front).map((share) => share / length),
    atStations,
  };
}

/**
 * Forces of a roof's uplift for wind along the ridge, both rails together, per unit of K_d q_h; null
 * where one pressure acts all along, which is an even load.
 */
export function roofShape(
  { feet, atStations }: RailShapes,
  { zones }: RoofLoad,
  sense: Sense,
): StationForces | null {
  if (zones.length === 1) return null;
  const forces = new Float64Array(feet.length);
  for (const { a, b, from, to, coefficient } of zones) {
    const perLength = zoneUplift.evaluate(coefficient, 1, a.x, b.x);
    const shares = sense > 0 ? footShares(feet, from, to) : footShares(feet, -to, -from);
    for (let foot = 0; foot < forces.length; foot += 1) {
      forces[foot] = (forces[foot] as number) + perLength * (shares[foot] as number);
    }
  }
  return atStations(forces);
}
