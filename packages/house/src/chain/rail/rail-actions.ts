import { type PlanResponse, planAt } from "@hoopstay/frame";
import type { RailSide } from "../../rail-pull/case-on-rails.ts";
import type { Evaluation, LoadSet } from "../../review/evaluate.ts";
import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import { nearness } from "../greatest.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import type { HoopDead } from "../hoop/hoop-dead.ts";
import type { HoopRuns } from "../hoop/hoop-runs.ts";
import type { RailedRun } from "../hoop/hoops-on-rails.ts";
import { inMap } from "../in-map.ts";
import { type PlanLines, RailAction } from "./rail-action.ts";
import { type RailVertical, railVertical } from "./rail-vertical.ts";

/** Share asked of a rail that is not held, by its anchors or by the ground: no bound. */
export const notHeld = Number.POSITIVE_INFINITY;

/** What one rail carries at K_d q_h = `q`; null where it is not held: the whole-house checks tell of that. */
export type RailAt = (q: number, combination: LinkCombination) => RailAction | null;

/** One rail in one case, by the rail solver, or the same but for rounding. */
export interface RailInCase {
  readonly exactly: RailAt;
  readonly nearly: RailAt;
}

type RatioAt = (q: number, combination: LinkCombination) => number;

/** A bound out of what is nearly right. */
export const atMost =
  (nearly: RatioAt): RatioAt =>
  (q, combination) =>
    (1 + nearness) * nearly(q, combination);

/** The rails of a house under its cases. */
export interface RailActions {
  readonly vertical: RailVertical;
  readonly places: RailVertical["places"];
  readonly in: (windCase: ChainCase, set: LoadSet, side: RailSide) => RailInCase;
}

/** Both sides of a jump are looked at. */
const sides = ["before", "behind"] as const;

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
  const made = (
    how: "exactly" | "nearly",
    windCase: ChainCase,
    set: LoadSet,
    side: RailSide,
  ): RailAt => {
    const index = windCase.sets.get(set) as number;
    const inPlan = () =>
      railed.map((run) => ({
        still: lines(run, null, side),
        blown: lines(run, windCase, side),
      }));
    let runs: ReturnType<typeof inPlan> | undefined;
    return (q, combination) => {
      const up = vertical[how](set, index, side, q, combination);
      if (!up) return null;
      runs ??= inPlan();
      const d = factoredDead(dead, windCase, combination);
      return new RailAction(up, runs, d, combination.wind * q);
    };
  };
  const known = new Map<ChainCase, Map<LoadSet, Map<RailSide, RailInCase>>>();
  return {
    vertical,
    places: vertical.places,
    in: (windCase, set, side) => {
      const ofCase = inMap(known, windCase, () => new Map<LoadSet, Map<RailSide, RailInCase>>());
      const ofSet = inMap(ofCase, set, () => new Map<RailSide, RailInCase>());
      return inMap(ofSet, side, () => ({
        exactly: lately(made("exactly", windCase, set, side)),
        nearly: lately(made("nearly", windCase, set, side)),
      }));
    },
  };
}

/** How many answers of each combination are kept: as many as a row looks at, and the crossing sought. */
const keptCount = 8;

/** Keeps what was asked lately: the rows of one case ask for the same winds one after another. */
function lately(at: RailAt): RailAt {
  const known = new Map<LinkCombination, Map<number, RailAction | null>>();
  return (q, combination) => {
    const own = inMap(known, combination, () => new Map<number, RailAction | null>());
    let found = own.get(q);
    if (found === undefined) {
      found = at(q, combination);
      if (own.size >= keptCount) own.delete(own.keys().next().value as number);
      own.set(q, found);
    }
    return found;
  };
}

/** Plan moment, torque and shear of a run at both sides of every place, for weight or for a case. */
function planLines(front: number, places: RailVertical["places"]) {
  const known = new Map<PlanResponse, Map<RailSide, PlanLines>>();
  return (run: RailedRun, windCase: ChainCase | null, side: RailSide): PlanLines => {
    const response = windCase ? run.planWind(windCase) : run.planDead();
    const own = inMap(known, response, () => new Map<RailSide, PlanLines>());
    return inMap(own, side, () => {
      const plan = run.plan(windCase);
      const points = places[side].flatMap((y) =>
        sides.map((which) => planAt(plan, response, side, front - y, which)),
      );
      return {
        moment: Float64Array.from(points, ({ moment }) => moment),
        torque: Float64Array.from(points, ({ torque }) => torque),
        shear: Float64Array.from(points, ({ shear }) => shear),
      };
    });
  };
}
