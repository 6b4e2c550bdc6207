import {
  type Rail as BentRail,
  type GroundBed,
  groundSprings,
  RailSolver,
  type RailSupport,
} from "@hoopstay/frame";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { groundModulus, railStiffness } from "./rail-stiffness.ts";

/** Places nearer than this, m, are one station. */
const samePlace = 1e-6;

/** One rail of a house on its ground, its places measured from its back end. */
export interface RailOnGround {
  readonly rail: BentRail;
  /** Where the middle of the house lies, m from the back end. */
  readonly middle: number;
  /** Hoop feet and rail ends in rising order, m, and which station each foot is. */
  readonly stations: readonly number[];
  readonly footStation: readonly number[];
  readonly ground: readonly RailSupport[];
}

/** @throws Refusal, when it is solved, where a hoop stands beyond the rail's ends */
export function railOnGround(
  { rail, lines }: Pick<House, "rail" | "lines">,
  { bearing }: Pick<Site, "bearing">,
  feet: readonly number[],
): RailOnGround {
  const length = rail.front + rail.back;
  const near = samePlace * (length + lines.length);
  const places = feet.map((y) => snapped(y + rail.back, length, near));
  const stations: number[] = [];
  for (const place of [0, ...places, length].sort((a, b) => a - b)) {
    if (stations.length === 0 || place - (stations.at(-1) as number) > near) stations.push(place);
  }
  const bed: GroundBed = {
    modulus: groundModulus.value * rail.width,
    greatestPush: bearing * rail.width,
  };
  return {
    rail: { length, stiffness: railStiffness(rail) },
    middle: rail.back,
    stations,
    footStation: places.map((place) => stations.findIndex((one) => Math.abs(one - place) <= near)),
    ground: groundSprings(length, stations, bed),
  };
}

/** What stands at the rail's end stands on it, whatever the rounding. */
function snapped(place: number, length: number, near: number): number {
  if (Math.abs(place) <= near) return 0;
  return Math.abs(place - length) <= near ? length : place;
}

/**
 * How a rail gives at its stations and at given places of anchors, m/N, with the ground holding both
 * ways at every station and no anchor at work: columns of deflections under a force of one.
 */
export interface RailCompliance {
  readonly on: RailOnGround;
  readonly anchors: readonly number[];
  readonly size: number;
  readonly columns: readonly Float64Array[];
  /** Stiffness of all the ground together, N/m. */
  readonly groundStiffness: number;
}

/** @param along places of the anchors from the middle of the house, m */
export function railCompliance(on: RailOnGround, along: readonly number[]): RailCompliance {
  const { length } = on.rail;
  const anchors = along.map((y) => snapped(y + on.middle, length, samePlace * length));
  const places = [...on.stations, ...anchors];
  const twoWay = on.ground.map(
    ({ x, stiffness }): RailSupport => ({ kind: "two-way", x, stiffness }),
  );
  const solver = new RailSolver(on.rail, places, twoWay);
  const { x, deflection } = solver.bent;
  const nodes = places.map((place) => nearestNode(x, place));
  const forces = new Float64Array(places.length);
  const read = (): Float64Array => Float64Array.from(nodes, (node) => deflection[node] as number);
  const columns = places.map((_, at) => {
    forces[at] = 1;
    solver.solve(0, forces);
    forces[at] = 0;
    return read();
  });
  const groundStiffness = on.ground.reduce((sum, { stiffness }) => sum + (stiffness as number), 0);
  return { on, anchors, size: places.length, columns, groundStiffness };
}

function nearestNode(x: Float64Array, place: number): number {
  let node = 0;
  for (let i = 1; i < x.length; i += 1) {
    if (Math.abs((x[i] as number) - place) < Math.abs((x[node] as number) - place)) node = i;
  }
  return node;
}
