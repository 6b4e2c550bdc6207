import type { CombinationId } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation, LoadSet } from "../review/evaluate.ts";
import { familiesOf } from "./case-families.ts";
import {
  type CaseOnRails,
  caseOnRails,
  type EndMomentWay,
  endMomentWays,
  type RailSide,
  railSides,
  sideSign,
} from "./case-on-rails.ts";
import {
  combinationOf,
  type DeadOnRails,
  deadOnRails,
  type SlopeMoments,
} from "./dead-on-rails.ts";
import { type RailOnGround, railOnGround } from "./rail-on-ground.ts";
import {
  hoopPlaces,
  type RailShapes,
  railShapes,
  roofShape,
  type StationForces,
} from "./rail-shapes.ts";

/** Where a load on a rail comes from. */
export interface RailLoadSource {
  readonly state: EvaluatedState;
  readonly caseIndex: number;
  readonly way: EndMomentWay;
  readonly weight: "low" | "high";
  readonly side: RailSide;
}

/** A load on one rail: multiples of columns. The first four are even, turning, front and back bay. */
export interface RailLoad extends RailLoadSource {
  readonly parts: readonly [number, number, number, number];
  /** Column of a roof by zones, or -1, and its multiple. */
  readonly roof: number;
  readonly roofPart: number;
  /** Column of the weight; its multiple is one. */
  readonly dead: number;
}

/** What of a load the rail is laid on its supports by. */
export type LaidLoad = Pick<RailLoad, "parts" | "roof" | "roofPart" | "dead">;

/**
 * Loads that lie between a few of them, the corners: every other one is a mean of these. Where the
 * same supports work under all corners, they work under every load between, and no anchor pulls more
 * than under the worst corner: supports at work under two loads work under any mean of the two, and
 * pulls are then linear in the load.
 */
export interface RailLoadFamily {
  readonly side: RailSide;
  readonly corners: readonly number[];
  /** The rest, made when asked for. */
  readonly inner: () => readonly number[];
}

/** Every load on either rail, factored, N. */
export interface RailLoads {
  readonly evaluation: Evaluation;
  readonly combination: CombinationId;
  readonly states: readonly EvaluatedState[];
  readonly on: RailOnGround;
  readonly shapes: RailShapes;
  readonly columns: readonly StationForces[];
  /** Loads made so far; equal ones stand once. */
  readonly loads: readonly RailLoad[];
  /** Forces of a load by its place, at the stations. */
  readonly forces: (id: number) => StationForces;
  readonly families: readonly RailLoadFamily[];
}

/** Two loads nearer than this part of the greatest are one. */
const sameLoad = 1e-10;

/** Whether every case of `one` stands in `other` too. */
const within = (one: LoadSet, other: LoadSet): boolean =>
  one !== other &&
  one.surfaces === other.surfaces &&
  one.insideCoefficients.length < other.insideCoefficients.length &&
  one.insideCoefficients.every((value) => other.insideCoefficients.includes(value));

/**
 * The loads of load cases 1 and 3 on both rails, in every state asked for, both ways of the end
 * walls' moments, both weights.
 *
 * @param only ids of the states, all if not given
 */
export function railLoadsOf(
  evaluation: Evaluation,
  only?: readonly string[],
  combination: CombinationId = evaluation.site.combination,
): RailLoads {
  const { house, shell } = evaluation;
  const states = evaluation.states.filter(({ state }) => !only || only.includes(state.id));
  const all = [...new Set(states.map(({ set }) => set))];
  const on = railOnGround(house, evaluation.site, hoopPlaces(house.lines));
  const stations = on.stations.map((place) => place - on.middle);
  const shapes = railShapes(house, shell, stations, on.footStation);
  const columns = [shapes.even, shapes.turning, shapes.frontBay, shapes.backBay];
  const loads: RailLoad[] = [];
  const known = new Map<string, number>();
  const families: RailLoadFamily[] = [];
  const roofs = new Map<object, number[]>();
  const wind = combinationOf(combination).wind * evaluation.pressure;
  const size = wind * shell.b * shell.L;

  const deadColumn = (column: StationForces): number => {
    const same = (one: StationForces) =>
      one.every((force, at) => Math.abs(force - (column[at] as number)) < sameLoad * size);
    const found = columns.findIndex(same);
    return found >= 0 ? found : columns.push(column) - 1;
  };
  const roofColumn = ({ roof }: CaseOnRails): number => {
    if (!roof) return -1;
    const made = roofs.get(roof.roof) ?? [];
    roofs.set(roof.roof, made);
    const place = roof.sense > 0 ? 1 : 0;
    made[place] ??= columns.push(roofShape(shapes, roof.roof, roof.sense) as StationForces) - 1;
    return made[place];
  };
  const add = (load: RailLoad): number => {
    const { parts, roof, roofPart, dead } = load;
    const rounded = [...parts, roofPart].map((part) => Math.round(part / (sameLoad * size)));
    const key = `${rounded.join(" ")} ${roof} ${dead}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, loads.length);
    return loads.push(load) - 1;
  };

  for (const set of all) {
    if (all.some((other) => within(set, other))) continue;
    const state = states.find((one) => one.set === set) as EvaluatedState;
    const onRails: CaseOnRails[] = [];
    const caseAt = (index: number): CaseOnRails => {
      onRails[index] ??= caseOnRails(set, shell, house.lines.span, index);
      return onRails[index];
    };
    const deads = deadOnRails(house, shapes, set.holds[0] as LoadSet["holds"][number], combination);
    const grouped = familiesOf(set.table.cases);
    for (const side of railSides) {
      for (const dead of deads) {
        const deadAt = deadColumn(dead.columns[side]);
        for (const { cases, cornersOf } of grouped) {
          const corners = cornersOf((index) => caseAt(index).even[side]);
          for (const way of endMomentWays) {
            if (way === "all hoops" && cases.every((at) => without(caseAt(at)))) continue;
            const load = (index: number, slope: SlopeMoments): number =>
              add({
                state,
                caseIndex: index,
                way,
                weight: dead.weight,
                side,
                ...partsOf(caseAt(index), side, way, slope, wind, house.lines.span),
                roof: roofColumn(caseAt(index)),
                dead: deadAt,
              });
            const made = (indices: readonly number[], slopes: DeadOnRails["slopes"]) => [
              ...new Set(indices.flatMap((index) => slopes.map((slope) => load(index, slope)))),
            ];
            let rest: readonly number[] | undefined;
            families.push({
              side,
              corners: made(corners, dead.outerSlopes),
              inner: () => (rest ??= made(cases, dead.slopes)),
            });
          }
        }
      }
    }
  }
  const made: StationForces[] = [];
  const forces = (id: number): StationForces => {
    made[id] ??= forcesOf({ columns }, loads[id] as RailLoad);
    return made[id];
  };
  return { evaluation, combination, states, on, shapes, columns, loads, forces, families };
}

/** No end wall stands or is loaded: both ways of its moment are one. */
const without = ({ front, back }: CaseOnRails): boolean => front === 0 && back === 0;

/** Multiples of the first four columns and of the roof's, for one rail. */
function partsOf(
  { even, rest, front, back, roof }: CaseOnRails,
  side: RailSide,
  way: EndMomentWay,
  slope: SlopeMoments,
  wind: number,
  span: number,
): Pick<RailLoad, "parts" | "roofPart"> {
  const half = wind / 2;
  const tipped = wind * even[side] - (sideSign[side] * slope.my) / span;
  const turning = half * rest + slope.mx / 2;
  return {
    parts:
      way === "end bays"
        ? [tipped, turning, half * front, half * back]
        : [tipped, turning + half * (front + back), 0, 0],
    roofPart: roof ? half : 0,
  };
}

/** Forces of a load at the stations of its rail, N, up positive. */
export function forcesOf({ columns }: Pick<RailLoads, "columns">, load: RailLoad): StationForces {
  const forces = (columns[load.dead] as StationForces).slice();
  const { parts, roof, roofPart } = load;
  for (let column = 0; column < parts.length; column += 1) {
    add(forces, columns[column] as StationForces, parts[column] as number);
  }
  if (roof >= 0) add(forces, columns[roof] as StationForces, roofPart);
  return forces;
}

function add(to: StationForces, column: StationForces, times: number): void {
  if (times === 0) return;
  for (let at = 0; at < to.length; at += 1) {
    to[at] = (to[at] as number) + times * (column[at] as number);
  }
}
