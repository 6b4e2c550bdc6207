import { groundSprings, RailSolver, type RailSupport } from "@hoopstay/frame";
import type { CombinationId } from "@hoopstay/stability";
import { countedOnRails } from "../../layout/layout-review.ts";
import { onSide, sineOf } from "../../rail-pull/anchor-pulls.ts";
import {
  caseOnRails,
  endMomentWays,
  type RailSide,
  sideSign,
} from "../../rail-pull/case-on-rails.ts";
import { combinationOf, deadOnRails } from "../../rail-pull/dead-on-rails.ts";
import { railOnGround } from "../../rail-pull/rail-on-ground.ts";
import { railShapes, roofShape } from "../../rail-pull/rail-shapes.ts";
import { groundModulus } from "../../rail-pull/rail-stiffness.ts";
import { stiffnessTimes, uprightStiffness } from "../../rail-pull/tether.ts";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import type { LinkCombination } from "../combination.ts";
import { inMap } from "../in-map.ts";
import { nearestPlace } from "./nearest-place.ts";

/** Moments and pulls of one rail in vertical bending, the worse of every way of computing it. */
interface VerticalAnswer {
  /** Greatest moment in size at each place looked at, N m. */
  readonly moments: Float64Array;
  /** Greatest shear in size beside each place, N. */
  readonly shears: Float64Array;
  /** Greatest upright pull of each anchor of the rail, N. */
  readonly pulls: Float64Array;
}

/** Both rails bent up and down by one case, on the anchors that are fitted and on the ground. */
export interface RailVertical {
  /** Places looked at, from the middle of the house, back to front, m: feet, rail ends, anchors, `also`. */
  readonly places: Readonly<Record<RailSide, readonly number[]>>;
  readonly anchors: Readonly<
    Record<RailSide, readonly ReturnType<typeof countedOnRails>[number][]>
  >;
  /** Null where the rail is not held, by its anchors or at all, at this wind. */
  readonly at: (
    set: LoadSet,
    caseIndex: number,
    side: RailSide,
    q: number,
    combination: LinkCombination,
  ) => VerticalAnswer | null;
}

interface SideRail {
  readonly solvers: readonly RailSolver[];
  readonly nodes: readonly (readonly number[])[];
  readonly places: readonly number[];
}

/** @param also further places to look at, from the middle of the house, m */
export function railVertical(evaluation: Evaluation, also: readonly number[]): RailVertical {
  const { house, site, shell } = evaluation;
  const { lines, rail } = house;
  const feet = Array.from(
    { length: lines.hoopCount },
    (_, hoop) => -lines.length / 2 + (hoop * lines.length) / (lines.hoopCount - 1),
  );
  const on = railOnGround(house, site, feet);
  const stations = on.stations.map((place) => place - on.middle);
  const shapes = railShapes(house, shell, stations, on.footStation);
  const counted = countedOnRails(evaluation);
  const anchors = { left: onSide(counted, "left"), right: onSide(counted, "right") };
  const bed = {
    modulus: groundModulus.value * rail.width,
    greatestPush: site.bearing * rail.width,
  };
  const ground = groundSprings(on.rail.length, on.stations, bed);
  const inside = also.filter((y) => y >= -rail.back && y <= rail.front);
  const sideRail = (side: RailSide): SideRail => {
    const own = anchors[side];
    const places = [...stations, ...own.map(({ along }) => along), ...inside];
    const at = places.map((y) => Math.min(on.rail.length, Math.max(0, y + on.middle)));
    const solvers = (own.length > 0 ? stiffnessTimes.values : [1]).map(
      (times) =>
        new RailSolver(on.rail, at, [
          ...ground,
          ...own.map(
            (anchor, index): RailSupport => ({
              kind: "anchor",
              x: at[stations.length + index] as number,
              stiffness: times * uprightStiffness.evaluate(anchor.stiffness, sineOf(anchor)),
            }),
          ),
        ]),
    );
    const nodes = solvers.map(({ bent }) => at.map((place) => nearestPlace(bent.x, place)));
    return { solvers, nodes, places };
  };
  const rails = { left: sideRail("left"), right: sideRail("right") };
  const deadsOf = new Map<LoadSet, Map<CombinationId, ReturnType<typeof deadOnRails>>>();
  const deadOf = (set: LoadSet, method: CombinationId) => {
    const known = deadsOf.get(set) ?? new Map<CombinationId, ReturnType<typeof deadOnRails>>();
    deadsOf.set(set, known);
    let found = known.get(method);
    if (!found) {
      const hold = set.holds.at(-1) as LoadSet["holds"][number];
      found = deadOnRails(house, shapes, hold, method);
      known.set(method, found);
    }
    return found;
  };
  const casesOf = new Map<LoadSet, ReturnType<typeof caseOnRails>[]>();
  const caseOf = (set: LoadSet, index: number) => {
    const known = casesOf.get(set) ?? [];
    casesOf.set(set, known);
    known[index] ??= caseOnRails(set, shell, lines.span, index);
    return known[index];
  };
  const roofs = new Map<object, (Float64Array | null)[]>();
  const roofOf = (load: NonNullable<ReturnType<typeof caseOnRails>["roof"]>) => {
    const known = roofs.get(load.roof) ?? [];
    roofs.set(load.roof, known);
    const place = load.sense > 0 ? 1 : 0;
    if (known[place] === undefined) known[place] = roofShape(shapes, load.roof, load.sense);
    return known[place];
  };
  const solve: RailVertical["at"] = (set, caseIndex, side, q, combination) => {
    const { method, weight, wind: windFactor } = combination;
    const { solvers, nodes, places } = rails[side];
    const one = caseOf(set, caseIndex);
    const wind = windFactor * q;
    const dead = deadOf(set, method).find((found) => found.weight === weight);
    if (!dead) throw new Error(`no ${weight} weight on the rails`);
    // Weights come factored by the whole-house combination of the method; a slope's pull stays so.
    const times = combination.dead / combinationOf(method).dead;
    const moments = new Float64Array(places.length);
    const shears = new Float64Array(places.length);
    const pulls = new Float64Array(anchors[side].length);
    const forces = new Float64Array(places.length);
    const ways = one.front === 0 && one.back === 0 ? endMomentWays.slice(0, 1) : endMomentWays;
    for (const slope of dead.outerSlopes) {
      for (const way of ways) {
        const half = wind / 2;
        const tipped = wind * one.even[side] - (sideSign[side] * slope.my) / lines.span;
        const endBays = way === "end bays";
        const turning = half * (one.rest + (endBays ? 0 : one.front + one.back)) + slope.mx / 2;
        const roof = one.roof ? roofOf(one.roof) : null;
        for (let at = 0; at < stations.length; at += 1) {
          let force =
            times * (dead.columns[side][at] as number) +
            tipped * (shapes.even[at] as number) +
            turning * (shapes.turning[at] as number);
          if (endBays) {
            force +=
              half * one.front * (shapes.frontBay[at] as number) +
              half * one.back * (shapes.backBay[at] as number);
          }
          if (roof) force += half * (roof[at] as number);
          forces[at] = force;
        }
        for (const [run, solver] of solvers.entries()) {
          if (solver.solve(0, forces) !== "held") return null;
          const { moment, shear } = solver.bent;
          (nodes[run] as readonly number[]).forEach((node, at) => {
            const before = node > 0 ? Math.abs(shear[node - 1] as number) : 0;
            moments[at] = Math.max(moments[at] as number, Math.abs(moment[node] as number));
            shears[at] = Math.max(shears[at] as number, before, Math.abs(shear[node] as number));
          });
          pulls.forEach((known, at) => {
            pulls[at] = Math.max(known, -(solver.reactions[ground.length + at] as number));
          });
        }
      }
    }
    return { moments, shears, pulls };
  };
  type Known = Map<LoadSet, Map<number, Map<number, VerticalAnswer | null>>>;
  const known = new Map<LinkCombination, Map<RailSide, Known>>();
  return {
    places: { left: rails.left.places, right: rails.right.places },
    anchors,
    at: (set, caseIndex, side, q, combination) => {
      const own = inMap(
        inMap(known, combination, () => new Map()),
        side,
        () => new Map(),
      );
      const ofCase = inMap(
        inMap(own, set, () => new Map()),
        caseIndex,
        () => new Map(),
      );
      return inMap(ofCase, q, () => solve(set, caseIndex, side, q, combination));
    },
  };
}
