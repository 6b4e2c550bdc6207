import type { Base } from "./base.ts";
import { turnAt, wayAt } from "./plan-equations.ts";
import type { PlanResponse } from "./response.ts";
import type { Stations } from "./stations.ts";
import { forcesEach } from "./tie-forces.ts";

/** What acts on one rail at each station, but for the line load. */
export interface RailActions {
  /** Forces toward +x, N. */
  readonly side: Float64Array;
  /** Torques in the sense of theta, N m. */
  readonly torque: Float64Array;
}

export const railActions = (stations: number): RailActions => ({
  side: new Float64Array(stations),
  torque: new Float64Array(stations),
});

/**
 * Writes what hoops, cross members and anchors take into the response, and the opposite of it onto
 * the rails.
 *
 * @param rails left and right
 * @returns sum of the sizes of all these forces and of the loads, N; moments count as a force with
 * the span as their lever
 */
export function actOnRails(
  { span, hoops, sideHold }: Base,
  { ofTie, ofAnchor }: Stations,
  fixedEnd: ArrayLike<number>,
  solved: Float64Array,
  ties: Float64Array,
  rails: readonly [RailActions, RailActions],
  into: PlanResponse,
): number {
  let size = 0;
  for (let rail = 0; rail < 2; rail += 1) {
    const { side, torque } = rails[rail] as RailActions;
    side.fill(0);
    torque.fill(0);
    for (let tie = 0; tie < ofTie.length; tie += 1) {
      const station = ofTie[tie] as number;
      const spread = ties[forcesEach * tie] as number;
      let force = rail === 0 ? -spread : spread;
      let moment = ties[forcesEach * tie + 1 + rail] as number;
      if (tie < hoops.length) {
        const foot = 4 * tie + 2 * rail;
        force += fixedEnd[foot] as number;
        moment += fixedEnd[foot + 1] as number;
        size += Math.abs(fixedEnd[foot] as number) + Math.abs(fixedEnd[foot + 1] as number) / span;
        into.footDisplacement[foot] = solved[wayAt(rail, station)] as number;
        into.footDisplacement[foot + 1] = solved[turnAt(rail, station)] as number;
        into.footForce[foot] = force;
        into.footForce[foot + 1] = moment;
      } else {
        into.crossAxial[tie - hoops.length] = spread;
        into.crossEndMoment[2 * (tie - hoops.length) + rail] = moment;
      }
      side[station] = (side[station] as number) - force;
      torque[station] = (torque[station] as number) - moment;
      size += Math.abs(force) + Math.abs(moment) / span;
    }
    if (sideHold === "evenly") continue;
    for (let anchor = 0; anchor < sideHold.length; anchor += 1) {
      const one = sideHold[anchor] as (typeof sideHold)[number];
      if ((one.rail === "left" ? 0 : 1) !== rail) continue;
      const station = ofAnchor[anchor] as number;
      const force = -one.stiffness * (solved[wayAt(rail, station)] as number);
      into.anchorForce[anchor] = force;
      side[station] = (side[station] as number) + force;
      size += Math.abs(force);
    }
  }
  return size;
}
