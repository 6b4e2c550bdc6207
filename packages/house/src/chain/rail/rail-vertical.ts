import { RailSolver, type RailSupport } from "@hoopstay/frame";
import { countedOnRails } from "../../layout/layout-review.ts";
import { onSide, sineOf } from "../../rail-pull/anchor-pulls.ts";
import type { RailSide } from "../../rail-pull/case-on-rails.ts";
import { type RailOnGround, railCompliance, railOnGround } from "../../rail-pull/rail-on-ground.ts";
import { hoopPlaces, railShapes } from "../../rail-pull/rail-shapes.ts";
import { stiffnessTimes, uprightStiffness } from "../../rail-pull/tether.ts";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import type { LinkCombination } from "../combination.ts";
import { nearestPlace } from "./nearest-place.ts";
import { SettledBending } from "./settled-bending.ts";
import { noBending, type VerticalAnswer } from "./vertical-answer.ts";
import { VerticalLoads } from "./vertical-loads.ts";

/** One rail in one case; null where it is not held, by its anchors or at all, at this wind. */
type VerticalAt = (
  set: LoadSet,
  caseIndex: number,
  side: RailSide,
  q: number,
  combination: LinkCombination,
) => VerticalAnswer | null;

/** Both rails bent up and down by one case, on the anchors that are fitted and on the ground. */
export interface RailVertical {
  /** Places looked at, from the middle of the house, back to front, m: feet, rail ends, anchors, `also`. */
  readonly places: Readonly<Record<RailSide, readonly number[]>>;
  readonly anchors: Readonly<
    Record<RailSide, readonly ReturnType<typeof countedOnRails>[number][]>
  >;
  readonly exactly: VerticalAt;
  /** The same but for rounding, quicker. */
  readonly nearly: VerticalAt;
}

type Anchors = RailVertical["anchors"][RailSide];

/** One rail at every stiffness of its anchors. */
interface SideRail {
  readonly solvers: readonly RailSolver[];
  readonly nodes: readonly (readonly number[])[];
  readonly settled: readonly SettledBending[];
  readonly places: readonly number[];
}

function sideRail(
  on: RailOnGround,
  anchors: Anchors,
  inside: readonly number[],
  columns: VerticalLoads["columns"],
): SideRail {
  const stations = on.stations.map((place) => place - on.middle);
  const along = anchors.map((anchor) => anchor.along);
  const places = [...stations, ...along, ...inside];
  const at = places.map((y) => Math.min(on.rail.length, Math.max(0, y + on.middle)));
  const stiffnesses = (anchors.length > 0 ? stiffnessTimes.values : [1]).map((times) =>
    anchors.map((anchor) => times * uprightStiffness.evaluate(anchor.stiffness, sineOf(anchor))),
  );
  const solvers = stiffnesses.map(
    (own) =>
      new RailSolver(on.rail, at, [
        ...on.ground,
        ...own.map((stiffness, index): RailSupport => {
          const x = at[stations.length + index] as number;
          return { kind: "anchor", x, stiffness };
        }),
      ]),
  );
  const nodes = solvers.map(({ bent }) => at.map((place) => nearestPlace(bent.x, place)));
  const held = at.slice(stations.length, stations.length + along.length);
  const compliance = railCompliance(
    on,
    held.map((x) => x - on.middle),
  );
  const settled = stiffnesses.map((own) => new SettledBending(compliance, columns, own, at));
  return { solvers, nodes, settled, places };
}

/** @param also further places to look at, from the middle of the house, m */
export function railVertical(evaluation: Evaluation, also: readonly number[]): RailVertical {
  const { house, site, shell } = evaluation;
  const { rail } = house;
  const on = railOnGround(house, site, hoopPlaces(house.lines));
  const stations = on.stations.map((place) => place - on.middle);
  const loads = new VerticalLoads(evaluation, railShapes(house, shell, stations, on.footStation));
  const counted = countedOnRails(evaluation);
  const anchors = { left: onSide(counted, "left"), right: onSide(counted, "right") };
  const inside = also.filter((y) => y >= -rail.back && y <= rail.front);
  const rails = {
    left: sideRail(on, anchors.left, inside, loads.columns),
    right: sideRail(on, anchors.right, inside, loads.columns),
  };
  const none = (side: RailSide) => noBending(rails[side].places.length, anchors[side].length);
  const forces = new Float64Array(stations.length);
  const exactly: VerticalAt = (set, caseIndex, side, q, combination) => {
    const { solvers, nodes, places } = rails[side];
    const into = none(side);
    const atPlaces = new Float64Array(places.length);
    for (const load of loads.of(set, caseIndex, side, q, combination)) {
      loads.forces(load, atPlaces);
      for (const [run, solver] of solvers.entries()) {
        if (solver.solve(0, atPlaces) !== "held") return null;
        takeIn(solver, nodes[run] as readonly number[], stations.length, into);
      }
    }
    return into;
  };
  const nearly: VerticalAt = (set, caseIndex, side, q, combination) => {
    const into = none(side);
    for (const load of loads.of(set, caseIndex, side, q, combination)) {
      loads.forces(load, forces);
      for (const settled of rails[side].settled) {
        if (settled.bend(load, forces, into)) continue;
        return exactly(set, caseIndex, side, q, combination);
      }
    }
    return into;
  };
  return {
    places: { left: rails.left.places, right: rails.right.places },
    anchors,
    exactly,
    nearly,
  };
}

/** Takes in what a solver found where it is greater than known. */
function takeIn(
  { bent: { moment, shear }, reactions }: RailSolver,
  nodes: readonly number[],
  ground: number,
  { moments, shears, pulls }: VerticalAnswer,
): void {
  nodes.forEach((node, at) => {
    const before = node > 0 ? Math.abs(shear[node - 1] as number) : 0;
    moments[at] = Math.max(moments[at] as number, Math.abs(moment[node] as number));
    shears[at] = Math.max(shears[at] as number, before, Math.abs(shear[node] as number));
  });
  pulls.forEach((known, at) => {
    pulls[at] = Math.max(known, -(reactions[ground + at] as number));
  });
}
