import type { HoopStations } from "@hoopstay/frame";
import type { ChainCase } from "../chain-case.ts";
import { type FramedHoop, loadCount, pushLoad, stretchCount } from "./hoop-frame.ts";

/** What one hoop does under one load: forces at its stations, at its feet and in its bars. */
export interface HoopAction {
  /** N at all stations, then V, then M. */
  readonly along: Float64Array;
  /** The frame's response; it begins with the ground on both feet: F_x, F_z, couple, left and right. */
  readonly response: Float64Array;
  /** Of each bar: axial force, N, and the greater moment at its ends, N m. */
  readonly bars: Float64Array;
}

/** A way of computing the hoops: how their feet stand, with their ties or without. */
export interface HoopRun {
  readonly words: string;
  /** Printed as a bound, never a rating. */
  readonly bound: boolean;
  readonly tied: boolean;
  /** All hoops together on the rails, each of them by itself; else inner ones may stand for all. */
  readonly railed: boolean;
  readonly framed: FramedHoop;
  readonly stations: HoopStations;
  /** The action of a weight of 1 N per metre of every hoop. */
  dead(hoop: number): HoopAction;
  /** The action of a case on one hoop per unit of K_d q_h. */
  wind(windCase: ChainCase, hoop: number): HoopAction;
}

/**
 * What multiplies the unit loads of a frame, per unit of K_d q_h.
 *
 * @param lineLoad line load of a coefficient of one on this hoop, m
 */
export function loadsOnHoop(
  { stretches, push }: ChainCase,
  hoop: number,
  lineLoad: number,
): Float64Array {
  const loads = new Float64Array(loadCount);
  const own = (stretches[hoop] ?? stretches[0]) as readonly number[];
  for (let stretch = 0; stretch < stretchCount; stretch += 1) {
    loads[stretch] = (own[stretch] as number) * lineLoad;
  }
  loads[pushLoad] = push;
  return loads;
}

/** What the checks need of a response of the frame. */
export function actionOf(
  { frame, bars }: FramedHoop,
  stations: HoopStations,
  response: Float64Array,
): HoopAction {
  const { count } = stations;
  const inTurn = new Float64Array(3 * count);
  stations.forces(response, inTurn);
  const along = new Float64Array(3 * count);
  for (let station = 0; station < count; station += 1) {
    for (let block = 0; block < 3; block += 1) {
      along[block * count + station] = inTurn[3 * station + block] as number;
    }
  }
  const forces = new Float64Array(2 * bars.length);
  bars.forEach((_, bar) => {
    const at = frame.barAt(bar);
    const [near, far] = [response[at + 2] as number, response[at + 5] as number];
    forces[2 * bar] = response[at] as number;
    forces[2 * bar + 1] = Math.max(Math.abs(near), Math.abs(far));
  });
  return { along, response: response.slice(), bars: forces };
}
