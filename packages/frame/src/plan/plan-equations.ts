import { addTo, type Band, bandOf, pin } from "./band.ts";
import type { Base, RailInPlan } from "./base.ts";
import type { Stations } from "./stations.ts";
import { springsEach } from "./tie-springs.ts";

/**
 * Six unknowns a station and the reach between them: plan moments of the left and right rail, ways
 * u, turns theta. Moments at the ends are zero.
 */
const each = 6;
const reach = 8;
export const momentAt = (rail: number, station: number): number => each * station + rail;
export const wayAt = (rail: number, station: number): number => each * station + 2 + rail;
export const turnAt = (rail: number, station: number): number => each * station + 4 + rail;

/**
 * The equations of the base: equal slope on both sides of each inner station (three
 * moments), balance of side forces and balance of torques at each station. Moments are unknowns of
 * their own, so that stations may stand close together without loss of digits. Where the side is
 * held evenly, the left rail's ends are pinned: every load comes with the line load that balances
 * it, and the pins carry nothing.
 */
export function planEquations(base: Base, stations: Stations, springs: Float64Array): Band {
  const { y, ofTie, ofAnchor } = stations;
  const last = y.length - 1;
  const band = bandOf(each * y.length, reach);
  railEquations(band, 0, base.left, y);
  railEquations(band, 1, base.right, y);
  ofTie.forEach((station, tie) => {
    const k = (i: number): number => springs[springsEach * tie + i] as number;
    const feet = [wayAt(0, station), wayAt(1, station)] as const;
    const turns = [turnAt(0, station), turnAt(1, station)] as const;
    addTo(band, feet[0], feet[0], k(0));
    addTo(band, feet[1], feet[1], k(0));
    addTo(band, feet[0], feet[1], -k(0));
    for (const [i, turn] of turns.entries()) {
      addTo(band, feet[0], turn, -k(1 + i));
      addTo(band, feet[1], turn, k(1 + i));
    }
    addTo(band, turns[0], turns[0], k(3));
    addTo(band, turns[0], turns[1], k(4));
    addTo(band, turns[1], turns[1], k(5));
  });
  if (base.sideHold === "evenly") {
    pin(band, wayAt(0, 0));
    pin(band, wayAt(0, last));
  } else {
    base.sideHold.forEach(({ rail, stiffness }, anchor) => {
      const way = wayAt(rail === "left" ? 0 : 1, ofAnchor[anchor] as number);
      addTo(band, way, way, stiffness);
    });
  }
  return band;
}

function railEquations(
  band: Band,
  rail: number,
  { bending, twist }: RailInPlan,
  y: Float64Array,
): void {
  const last = y.length - 1;
  const gap = (station: number): number => (y[station + 1] as number) - (y[station] as number);
  for (let station = 1; station < last; station += 1) {
    const [h, g] = [gap(station - 1), gap(station)];
    const moment = momentAt(rail, station);
    addTo(band, moment, moment, -(h + g) / (3 * bending));
    if (station + 1 < last) addTo(band, moment, momentAt(rail, station + 1), -g / (6 * bending));
    addTo(band, moment, wayAt(rail, station - 1), 1 / h);
    addTo(band, moment, wayAt(rail, station), -1 / h - 1 / g);
    addTo(band, moment, wayAt(rail, station + 1), 1 / g);
  }
  pin(band, momentAt(rail, 0));
  pin(band, momentAt(rail, last));
  for (let station = 0; station < last; station += 1) {
    const stiffness = twist / gap(station);
    const [here, next] = [turnAt(rail, station), turnAt(rail, station + 1)];
    addTo(band, here, here, stiffness);
    addTo(band, next, next, stiffness);
    addTo(band, here, next, -stiffness);
  }
}
