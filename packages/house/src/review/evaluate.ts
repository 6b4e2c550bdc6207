import {
  type CaseTable,
  type Covering,
  caseStride,
  type Enclosure,
  type EndsPresent,
  enclosureOf,
  type FrameTubes,
  type PressureFactors,
  pressureFactors,
  type RoofSets,
  roofSetsOf,
  type Shell,
  shellOf,
  singleCheckCases,
  type WindBody,
  type WindSurfaces,
  windSurfaces,
  writeCases,
} from "@hoopstay/load";
import { bareDragAreaOf } from "../model/bar-face.ts";
import { frameBars } from "../model/frame-parts.ts";
import type { House } from "../model/house-model.ts";
import type { Belongs } from "../model/part.ts";
import type { Site } from "../model/site-model.ts";
import { type RatedHouse, rateHouse } from "../rating/rated-house.ts";
import { grossAreas, type HouseState, statesOf } from "../state/states.ts";
import { type TakeOff, takeOff, weightsOf } from "../take-off/take-off.ts";
import { checkHolds, type HeldChecks } from "./held-checks.ts";
import { type Hold, holdsOf } from "./hold.ts";
import { type LeastChecks, type LeastTable, leastChecks, leastTable } from "./least-check.ts";

/** One covering and arrangement of end walls: its wind, and what is left to hold the house. */
interface Arrangement {
  readonly surfaces: WindSurfaces;
  /** A missing wall or stripped film has no weight here. */
  readonly holds: readonly Hold[];
  readonly least: LeastChecks;
  /** What the wind can tell apart in it: one set of loads for each inside pressure. */
  readonly sets: LoadSet[];
}

/** States that the wind cannot tell apart share one load set. */
export interface LoadSet extends Omit<Arrangement, "sets"> {
  readonly covering: Covering;
  readonly ends: EndsPresent;
  readonly insideCoefficients: readonly number[];
  readonly table: CaseTable;
  /** Governing outcomes by hold and combination. */
  readonly governing: readonly HeldChecks[];
}

export interface EvaluatedState {
  readonly state: HouseState;
  readonly enclosure: Enclosure | null;
  readonly set: LoadSet;
}

/** Every number of a review, without a word of it printed yet. */
export interface Evaluation {
  /** Its anchors carry what the ground lets them. */
  readonly house: House;
  readonly ratings: RatedHouse["ratings"];
  readonly site: Site;
  readonly shell: Shell;
  readonly body: WindBody;
  readonly takeOff: TakeOff;
  readonly factors: PressureFactors;
  /** Design K_d q_h, Pa. */
  readonly pressure: number;
  /** What holds the house with everything on it. */
  readonly holds: readonly Hold[];
  readonly states: readonly EvaluatedState[];
}

/** The whole-house check: take-off, all states, all directions, both combinations, both holds. */
export function evaluate(given: House, site: Site): Evaluation {
  const { house, ratings } = rateHouse(given, site);
  const shell = shellOf(house.lines);
  const weights = takeOff(house);
  const factors = pressureFactors(site.place, shell.h);
  const pressure = factors.perSpeedSquared * site.mapSpeed * site.mapSpeed;
  const holdsWithout = (gone: readonly Belongs[]): Hold[] =>
    holdsOf(house, site, weightsOf(weights, gone), pressure);
  const holds = holdsWithout([]);
  const body: WindBody = {
    shell,
    obstacles: house.obstacles,
    frame: frameTubes(house),
    ...(site.reading ? { reading: site.reading.reading } : {}),
  };
  const gross = grossAreas(shell);
  const coverings = new Map<Covering, { roof: RoofSets; least: LeastTable }>();
  const coveringOf = (covering: Covering): { roof: RoofSets; least: LeastTable } => {
    let known = coverings.get(covering);
    if (!known) {
      const least = leastTable(shell, covering, house.obstacles);
      known = { roof: roofSetsOf(body, covering), least };
      coverings.set(covering, known);
    }
    return known;
  };
  const scratch = { numbers: new Float64Array(0) };
  const arrangements: Arrangement[] = [];
  const arrange = (covering: Covering, state: HouseState): Arrangement => {
    const { ends } = state;
    for (const one of arrangements) {
      const { surfaces } = one;
      const same = surfaces.ends.front === ends.front && surfaces.ends.back === ends.back;
      if (same && surfaces.covering === covering) return one;
    }
    const { roof, least } = coveringOf(covering);
    const gone = goneIn(state);
    const held = gone.length > 0 ? holdsWithout(gone) : holds;
    const made: Arrangement = {
      surfaces: windSurfaces(body, covering, ends, roof),
      holds: held,
      least: leastChecks(least, held),
      sets: [],
    };
    arrangements.push(made);
    return made;
  };
  const states = statesOf(house, shell).map((state): EvaluatedState => {
    const enclosure = state.filmOn ? enclosureOf(state.openings, gross) : null;
    const covering: Covering = !enclosure ? "bare" : enclosure.kind === "open" ? "open" : "covered";
    const inside = enclosure ? enclosure.insideCoefficients : [0];
    const arrangement = arrange(covering, state);
    let set = arrangement.sets.find((one) => sameNumbers(one.insideCoefficients, inside));
    if (!set) {
      set = loadSet(arrangement, inside, scratch);
      arrangement.sets.push(set);
    }
    return { state, enclosure, set };
  });
  return { house, ratings, site, shell, body, takeOff: weights, factors, pressure, holds, states };
}

const sameNumbers = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((value, place) => value === b[place]);

function goneIn({ ends, filmOn }: HouseState): Belongs[] {
  const gone: Belongs[] = filmOn ? [] : ["film"];
  if (!ends.front) gone.push("front");
  if (!ends.back) gone.push("back");
  return gone;
}

function loadSet(
  { surfaces, holds, least }: Arrangement,
  insideCoefficients: readonly number[],
  scratch: { numbers: Float64Array },
): LoadSet {
  const table = singleCheckCases(surfaces, insideCoefficients);
  const needed = table.count * caseStride;
  if (scratch.numbers.length < needed) scratch.numbers = new Float64Array(needed);
  writeCases(surfaces, insideCoefficients, scratch.numbers);
  const rows = { count: table.count, components: scratch.numbers };
  const governing = checkHolds(holds, table, rows);
  const { covering, ends } = surfaces;
  return {
    surfaces,
    holds,
    least,
    covering,
    ends,
    insideCoefficients,
    table,
    governing,
  };
}

function frameTubes(house: House): FrameTubes {
  let [dragArea, x, y, z] = [0, 0, 0, 0];
  for (const bar of frameBars(house.parts)) {
    const { x: px, y: py, z: pz } = bar;
    const each = bareDragAreaOf(bar);
    dragArea += each;
    x += each * px;
    y += each * py;
    z += each * pz;
  }
  return { dragArea, x: x / dragArea, y: y / dragArea, z: z / dragArea };
}
