import {
  type CaseTable,
  type Covering,
  type Enclosure,
  type EndsPresent,
  enclosureOf,
  type FrameTubes,
  leastLoads,
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
} from "@hoopstay/load";
import {
  type CombinationId,
  combinations,
  extremesOf,
  type Governing,
  governingChecks,
} from "@hoopstay/stability";
import { frameBars } from "../model/frame-parts.ts";
import type { House } from "../model/house-model.ts";
import type { Belongs } from "../model/part.ts";
import type { Site } from "../model/site-model.ts";
import { grossAreas, type HouseState, statesOf } from "../state/states.ts";
import { type TakeOff, takeOff, weightsOf } from "../take-off/take-off.ts";
import { type Hold, type HoldId, holdsOf } from "./hold.ts";
import { type LeastOutcome, leastOutcomes } from "./least-check.ts";

/** One covering and arrangement of end walls: its wind, and what is left to hold the house. */
interface Arrangement {
  readonly surfaces: WindSurfaces;
  /** A missing wall or stripped film has no weight here. */
  readonly holds: readonly Hold[];
  readonly leastOutcomes: readonly LeastOutcome[];
}

/** States that the wind cannot tell apart share one load set. */
export interface LoadSet extends Arrangement {
  readonly covering: Covering;
  readonly ends: EndsPresent;
  readonly insideCoefficients: readonly number[];
  readonly table: CaseTable;
  /** Governing outcomes by hold and combination. */
  readonly governing: readonly {
    readonly hold: HoldId;
    readonly combination: CombinationId;
    readonly checks: readonly Governing[];
  }[];
}

export interface EvaluatedState {
  readonly state: HouseState;
  readonly enclosure: Enclosure | null;
  readonly set: LoadSet;
}

/** Every number of a review, without a word of it printed yet. */
export interface Evaluation {
  readonly house: House;
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
export function evaluate(house: House, site: Site): Evaluation {
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
  const roofs = new Map<Covering, RoofSets>();
  const arrangements = new Map<string, Arrangement>();
  const sets = new Map<string, LoadSet>();
  const arrange = (covering: Covering, state: HouseState): Arrangement => {
    const roof = roofs.get(covering) ?? roofSetsOf(body, covering);
    roofs.set(covering, roof);
    const gone = goneIn(state);
    const held = gone.length > 0 ? holdsWithout(gone) : holds;
    return {
      surfaces: windSurfaces(body, covering, state.ends, roof),
      holds: held,
      leastOutcomes: leastOutcomes(leastLoads(shell, covering, house.obstacles), held),
    };
  };
  const states = statesOf(house, shell).map((state): EvaluatedState => {
    const enclosure = state.filmOn ? enclosureOf(state.openings, gross) : null;
    const covering: Covering = !enclosure ? "bare" : enclosure.kind === "open" ? "open" : "covered";
    const inside = enclosure?.insideCoefficients ?? [0];
    const place = `${covering} ${state.ends.front} ${state.ends.back}`;
    const key = `${place} ${inside.join(" ")}`;
    let set = sets.get(key);
    if (!set) {
      const arrangement = arrangements.get(place) ?? arrange(covering, state);
      arrangements.set(place, arrangement);
      set = loadSet(arrangement, inside);
      sets.set(key, set);
    }
    return { state, enclosure, set };
  });
  return { house, site, shell, body, takeOff: weights, factors, pressure, holds, states };
}

function goneIn({ ends, filmOn }: HouseState): Belongs[] {
  const gone: Belongs[] = filmOn ? [] : ["film"];
  if (!ends.front) gone.push("front");
  if (!ends.back) gone.push("back");
  return gone;
}

function loadSet(arrangement: Arrangement, insideCoefficients: readonly number[]): LoadSet {
  const { surfaces, holds, leastOutcomes: least } = arrangement;
  const table = singleCheckCases(surfaces, insideCoefficients);
  const governing = holds.flatMap(({ id, terms, lines }) => {
    const extremes = extremesOf(table, lines);
    return combinations.map((combination) => ({
      hold: id,
      combination: combination.id,
      checks: governingChecks(terms[combination.id], table, extremes),
    }));
  });
  const { covering, ends } = surfaces;
  return {
    surfaces,
    holds,
    leastOutcomes: least,
    covering,
    ends,
    insideCoefficients,
    table,
    governing,
  };
}

function frameTubes(house: House): FrameTubes {
  let [area, x, y, z] = [0, 0, 0, 0];
  for (const { tube, count, length, x: px, y: py, z: pz } of frameBars(house.parts)) {
    const across =
      tube.kind === "round"
        ? tube.outside
        : tube.kind === "rectangular"
          ? Math.max(tube.depth, tube.width)
          : 0;
    const each = count * length * across;
    area += each;
    x += each * px;
    y += each * py;
    z += each * pz;
  }
  return { area, x: x / area, y: y / area, z: z / area };
}
