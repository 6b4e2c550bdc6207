import { type PlanResponse, planAt } from "@hoopstay/frame";
import type { RailSide } from "../../rail-pull/case-on-rails.ts";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import type { HoopDead } from "../hoop/hoop-dead.ts";
import type { HoopRuns } from "../hoop/hoop-runs.ts";
import type { RailedRun } from "../hoop/hoops-on-rails.ts";
import { inMap } from "../in-map.ts";
import { type RailVertical, railVertical } from "./rail-vertical.ts";

/** What a rail carries at each place looked at, each the greatest in size, N m and N. */
export interface RailAction {
  readonly vertical: Float64Array;
  readonly plan: Float64Array;
  readonly torque: Float64Array;
  readonly shear: Float64Array;
}

/** Share asked of a rail that is not held, by its anchors or by the ground: no bound. */
export const notHeld = Number.POSITIVE_INFINITY;

/** The rails of a house under its cases. */
export interface RailActions {
  readonly vertical: RailVertical;
  readonly places: RailVertical["places"];
  /** Null where the rail is not held down at this wind: the whole-house checks tell of that. */
  readonly at: (
    windCase: ChainCase,
    set: LoadSet,
    side: RailSide,
    q: number,
    combination: LinkCombination,
  ) => RailAction | null;
}

/** Both sides of a jump are looked at. */
const sides = ["before", "behind"] as const;

interface PlanLines {
  readonly moment: Float64Array;
  readonly torque: Float64Array;
  readonly shear: Float64Array;
}

export function railActions(
  evaluation: Evaluation,
  { railed }: HoopRuns,
  dead: HoopDead,
): RailActions {
  const { house } = evaluation;
  const { splices, crossMembers } = house.links;
  const also = [...(splices?.places ?? []), ...(crossMembers?.places ?? [])];
  const vertical = railVertical(evaluation, also);
  const lines = planLines(house.rail.front, vertical.places);
  const known: KnownActions = new Map();
  const at: RailActions["at"] = (windCase, set, side, q, combination) => {
    const { wind } = combination;
    const index = windCase.sets.get(set) as number;
    const up = vertical.at(set, index, side, q, combination);
    if (!up) return null;
    const count = up.moments.length;
    const action: RailAction = {
      vertical: up.moments,
      plan: new Float64Array(count),
      torque: new Float64Array(count),
      shear: up.shears.slice(),
    };
    const d = factoredDead(dead, windCase, combination);
    for (const run of railed) {
      const still = lines(run, null, side);
      const blown = lines(run, windCase, side);
      for (let place = 0; place < 2 * count; place += 1) {
        const own = place >> 1;
        const sum = (name: keyof PlanLines): number =>
          Math.abs(d * (still[name][place] as number) + wind * q * (blown[name][place] as number));
        action.plan[own] = Math.max(action.plan[own] as number, sum("moment"));
        action.torque[own] = Math.max(action.torque[own] as number, sum("torque"));
        const shear = Math.hypot(up.shears[own] as number, sum("shear"));
        action.shear[own] = Math.max(action.shear[own] as number, shear);
      }
    }
    return action;
  };
  return {
    vertical,
    places: vertical.places,
    at: (windCase, set, side, q, combination) => {
      const own = byPressure(known, windCase, set, side, combination);
      let found = own.get(q);
      if (found === undefined) {
        found = at(windCase, set, side, q, combination);
        own.set(q, found);
      }
      return found;
    },
  };
}

type ByPressure = Map<number, RailAction | null>;
type KnownActions = Map<
  ChainCase,
  Map<LoadSet, Map<LinkCombination, Record<RailSide, ByPressure>>>
>;

/** What is known of one side in one case, set and combination: many links ask the same. */
function byPressure(
  known: KnownActions,
  windCase: ChainCase,
  set: LoadSet,
  side: RailSide,
  combination: LinkCombination,
): ByPressure {
  const ofCase = inMap(known, windCase, () => new Map());
  const ofSet = inMap(ofCase, set, () => new Map());
  return inMap(ofSet, combination, () => ({ left: new Map(), right: new Map() }))[side];
}

/** Plan moment, torque and shear of a run at both sides of every place, for weight or for a case. */
function planLines(front: number, places: RailVertical["places"]) {
  const known = new Map<PlanResponse, Map<RailSide, PlanLines>>();
  return (run: RailedRun, windCase: ChainCase | null, side: RailSide): PlanLines => {
    const response = windCase ? run.planWind(windCase) : run.planDead();
    const own = known.get(response) ?? new Map<RailSide, PlanLines>();
    known.set(response, own);
    let found = own.get(side);
    if (!found) {
      const plan = run.plan(windCase);
      const points = places[side].flatMap((y) =>
        sides.map((which) => planAt(plan, response, side, front - y, which)),
      );
      found = {
        moment: Float64Array.from(points, ({ moment }) => moment),
        torque: Float64Array.from(points, ({ torque }) => torque),
        shear: Float64Array.from(points, ({ shear }) => shear),
      };
      own.set(side, found);
    }
    return found;
  };
}
