import type { RailLoads } from "./rail-loads.ts";
import type { RailCompliance } from "./rail-on-ground.ts";
import type { StationForces } from "./rail-shapes.ts";

/** Forces of anchors and ground that balance a load on a rail, each within what it can do. */
export interface BalancedForces {
  /** Upright pull of each anchor, N. */
  readonly pulls: Float64Array;
  /** Energy in the ground and in the bent rail, N m. */
  readonly ground: number;
  readonly bent: number;
  /** What the load lifts in all, N. */
  readonly lift: number;
}

interface Node {
  readonly station: number;
  readonly anchor: number;
  /** Way from the node before, m. */
  readonly from: number;
}

/**
 * A simple balance of any load: what presses down goes straight into the ground, what lifts goes to
 * the two anchors beside it by the lever.
 */
class Balancer {
  private readonly nodes: readonly Node[];
  private readonly left: Int32Array;
  private readonly toRight: Float64Array;

  constructor(private readonly compliance: RailCompliance) {
    const { on, anchors } = compliance;
    const places = [
      ...on.stations.map((x, station) => ({ x, station, anchor: -1 })),
      ...anchors.map((x, anchor) => ({ x, station: -1, anchor })),
    ].sort((a, b) => a.x - b.x);
    this.nodes = places.map(({ x, station, anchor }, at) => ({
      station,
      anchor,
      from: at === 0 ? 0 : x - (places[at - 1] as { x: number }).x,
    }));
    this.left = Int32Array.from(on.stations, (x) => {
      let bay = 0;
      while (bay < anchors.length - 2 && x > (anchors[bay + 1] as number)) bay += 1;
      return bay;
    });
    this.toRight = Float64Array.from(on.stations, (x, at) => {
      const bay = this.left[at] as number;
      const [near, far] = [anchors[bay] as number, anchors[bay + 1] as number];
      return (x - near) / (far - near);
    });
  }

  /** The balance, or null where an anchor had to push or the ground gives. */
  of(forces: StationForces): BalancedForces | null {
    const { on, anchors } = this.compliance;
    const pulls = new Float64Array(anchors.length);
    let [ground, lift] = [0, 0];
    for (let at = 0; at < forces.length; at += 1) {
      const force = forces[at] as number;
      lift += force;
      if (force < 0) {
        const { stiffness, cap } = on.ground[at] as { stiffness: number; cap?: number };
        if (cap !== undefined && -force > cap) return null;
        ground += (force * force) / (2 * stiffness);
        continue;
      }
      const bay = this.left[at] as number;
      const right = force * (this.toRight[at] as number);
      pulls[bay] = (pulls[bay] as number) + force - right;
      pulls[bay + 1] = (pulls[bay + 1] as number) + right;
    }
    for (const pull of pulls) if (pull < 0) return null;
    return { pulls, ground, bent: this.bent(forces, pulls), lift };
  }

  private bent(forces: StationForces, pulls: Float64Array): number {
    let [moment, shear, sum] = [0, 0, 0];
    for (const { station, anchor, from } of this.nodes) {
      const after = moment + shear * from;
      sum += from * (moment * moment + moment * after + after * after);
      moment = after;
      shear += station >= 0 ? Math.max(0, forces[station] as number) : -(pulls[anchor] as number);
    }
    return sum / (6 * this.compliance.on.rail.stiffness);
  }
}

/** The simple balance of each load on one anchored rail, worked out once. */
export class Balances {
  private readonly known: (BalancedForces | null)[] = [];
  private readonly balancer: Balancer | null;

  constructor(
    private readonly loads: RailLoads,
    compliance: RailCompliance,
  ) {
    this.balancer = compliance.anchors.length < 2 ? null : new Balancer(compliance);
  }

  /** The balance of a load by its place in the loads. */
  of(id: number): BalancedForces | null {
    const found = this.known[id];
    if (found !== undefined) return found;
    const made = this.balancer?.of(this.loads.forces(id)) ?? null;
    this.known[id] = made;
    return made;
  }
}
