import { type FeetSupport, type HoopStations, responsesOnFeet, superpose } from "@hoopstay/frame";
import type { ChainCase } from "../chain-case.ts";
import { type FramedHoop, loadCount, weightLoad } from "./hoop-frame.ts";
import { actionOf, type HoopAction, type HoopRun, loadsOnHoop } from "./hoop-run.ts";

/**
 * Hoops that each stand for themselves, on feet that are held or free.
 *
 * @param lineLoads line load of a coefficient of one on each hoop, m
 */
export function hoopsOnFeet(
  about: Pick<HoopRun, "words" | "bound" | "tied">,
  framed: FramedHoop,
  stations: HoopStations,
  support: FeetSupport,
  lineLoads: readonly number[],
): HoopRun {
  const { frame } = framed;
  const units = responsesOnFeet(frame, support);
  const response = new Float64Array(frame.size);
  const solve = (loads: Float64Array): HoopAction => {
    superpose(units, frame.size, loads, response);
    return actionOf(framed, stations, response);
  };
  const weight = new Float64Array(loadCount);
  weight[weightLoad] = 1;
  let dead: HoopAction | undefined;
  return {
    ...about,
    railed: false,
    framed,
    stations,
    dead: () => (dead ??= solve(weight)),
    wind: (windCase: ChainCase, hoop: number) =>
      solve(loadsOnHoop(windCase, hoop, lineLoads[hoop] as number)),
  };
}
