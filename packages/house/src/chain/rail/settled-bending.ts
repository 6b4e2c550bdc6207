import type { LaidLoad } from "../../rail-pull/rail-loads.ts";
import type { RailCompliance } from "../../rail-pull/rail-on-ground.ts";
import type { StationForces } from "../../rail-pull/rail-shapes.ts";
import { RailWalk } from "../../rail-pull/rail-walk.ts";
import { giving, holding, SupportSets } from "../../rail-pull/support-sets.ts";
import type { VerticalAnswer } from "./vertical-answer.ts";

/** Places nearer than this part of the length are one. */
const samePlace = 1e-6;

/**
 * A rail on its anchors and the ground, quickly: supports by a walk over sets of them, moments and
 * shears by the balance of what lies left of a place. Differs from the rail solver by rounding alone.
 */
export class SettledBending {
  private readonly sets: SupportSets;
  private readonly walk: RailWalk;
  /** Nodes in rising order, m, and which node each place is. */
  private readonly x: number[] = [];
  private readonly nodeOf: Int32Array;
  private readonly force: Float64Array;
  private readonly moment: Float64Array;
  private readonly shear: Float64Array;

  /**
   * @param places stations, anchors and further places to look at, from the back end, m
   * @param anchorStiffness against a lift of the rail, N/m
   */
  constructor(
    compliance: RailCompliance,
    columns: readonly StationForces[],
    anchorStiffness: readonly number[],
    places: readonly number[],
  ) {
    this.sets = new SupportSets(compliance, columns, anchorStiffness);
    this.walk = new RailWalk(this.sets);
    const near = samePlace * compliance.on.rail.length;
    this.nodeOf = new Int32Array(places.length);
    const inTurn = places.map((place, at) => ({ place, at })).sort((a, b) => a.place - b.place);
    for (const { place, at } of inTurn) {
      const last = this.x.at(-1);
      if (last === undefined || place - last > near) this.x.push(place);
      this.nodeOf[at] = this.x.length - 1;
    }
    this.force = new Float64Array(this.x.length);
    this.moment = new Float64Array(this.x.length);
    this.shear = new Float64Array(this.x.length);
  }

  /**
   * Bends the rail under a load; what is greater than known goes `into`.
   *
   * @param forces the load at the stations, N
   * @returns false where the walk over the supports does not end
   */
  bend(load: LaidLoad, forces: StationForces, into: VerticalAnswer): boolean {
    const set = this.walk.settle(load);
    if (!set) return false;
    this.sumForces(set.parts, forces, into.pulls);
    const { x, force, moment, shear, nodeOf } = this;
    let [m, v] = [0, 0];
    for (let node = 0; node < x.length; node += 1) {
      if (node > 0) m += v * ((x[node] as number) - (x[node - 1] as number));
      v += force[node] as number;
      moment[node] = Math.abs(m);
      shear[node] = Math.abs(v);
    }
    const { moments, shears } = into;
    for (let at = 0; at < nodeOf.length; at += 1) {
      const node = nodeOf[at] as number;
      const before = node > 0 ? (shear[node - 1] as number) : 0;
      moments[at] = Math.max(moments[at] as number, moment[node] as number);
      shears[at] = Math.max(shears[at] as number, before, shear[node] as number);
    }
    return true;
  }

  /** Forces at the nodes, of the load and of the supports, N, up positive. */
  private sumForces(parts: Uint8Array, forces: StationForces, pulls: Float64Array): void {
    const { force, nodeOf } = this;
    const { lies } = this.walk;
    const { ground, size, stiffness, cap } = this.sets;
    force.fill(0);
    for (let i = 0; i < size; i += 1) {
      const node = nodeOf[i] as number;
      let up = i < ground ? (forces[i] as number) : 0;
      if (parts[i] === holding) {
        const push = -(stiffness[i] as number) * (lies[i] as number);
        if (i >= ground) pulls[i - ground] = Math.max(pulls[i - ground] as number, -push);
        up += push;
      } else if (parts[i] === giving) up += cap[i] as number;
      force[node] = (force[node] as number) + up;
    }
  }
}
