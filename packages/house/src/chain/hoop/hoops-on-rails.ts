import { BasePlan, type HoopStations, type PlanResponse } from "@hoopstay/frame";
import { properties } from "@hoopstay/section";
import type { House } from "../../model/house-model.ts";
import type { ChainCase } from "../chain-case.ts";
import { steelOfTube } from "../steel.ts";
import { type FramedHoop, loadCount, weightLoad } from "./hoop-frame.ts";
import { actionOf, type HoopAction, type HoopRun, loadsOnHoop } from "./hoop-run.ts";
import { type SideHold, sideHold, withoutPushing } from "./side-hold.ts";

/** A run of all hoops together on the rails, and what the rails do in it. */
export interface RailedRun extends HoopRun {
  /** The rails in plan and in twist under a weight of 1 N per metre of every hoop. */
  readonly planDead: () => PlanResponse;
  /** The same under a case, per unit of K_d q_h. */
  readonly planWind: (windCase: ChainCase) => PlanResponse;
  /** The base a case acts on, or weight where there is none. */
  readonly plan: (windCase: ChainCase | null) => BasePlan;
}

/** Which of a frame's six foot movements the rails allow: ux and rotation of each foot. */
const free = [0, 2, 3, 5] as const;

/**
 * The frame's foot stiffness and forces stand at the rail's top face, about the view against y; the
 * rails' at their axes, about y: u_foot = u + e theta, rotation = -theta.
 */
function atAxis(lever: number): readonly (readonly number[])[] {
  return [
    [1, lever, 0, 0],
    [0, -1, 0, 0],
    [0, 0, 1, lever],
    [0, 0, 0, -1],
  ];
}

/** T' K T of the four movements the rails allow. */
function stiffnessAtAxis(full: ArrayLike<number>, T: readonly (readonly number[])[]): number[] {
  const made: number[] = [];
  for (let row = 0; row < 4; row += 1) {
    for (let column = 0; column < 4; column += 1) {
      let sum = 0;
      for (let i = 0; i < 4; i += 1) {
        for (let j = 0; j < 4; j += 1) {
          const k = full[6 * (free[i] as number) + (free[j] as number)] as number;
          sum += (T[i]?.[row] as number) * k * (T[j]?.[column] as number);
        }
      }
      made.push(sum);
    }
  }
  return made;
}

/** All hoops at once on both rails, which bend in plan and twist between the cross members. */
export function hoopsOnRails(
  about: Pick<HoopRun, "words" | "bound" | "tied">,
  house: House,
  framed: FramedHoop,
  stations: HoopStations,
  places: readonly number[],
  lineLoads: readonly number[],
): RailedRun {
  const { frame } = framed;
  const T = atAxis(house.rail.depth / 2);
  const stiffness = stiffnessAtAxis(frame.footStiffness, T);
  const plans = new Map<SideHold["id"], BasePlan>();
  const planFor = (hold: SideHold): BasePlan => {
    let plan = plans.get(hold.id);
    if (!plan) {
      plan = new BasePlan(baseOf(house, places, stiffness, hold));
      plans.set(hold.id, plan);
    }
    return plan;
  };
  const fixedEnd = (loads: readonly Float64Array[]): Float64Array => {
    const ends = new Float64Array(4 * places.length);
    loads.forEach((own, hoop) => {
      for (let column = 0; column < 4; column += 1) {
        let sum = 0;
        for (let row = 0; row < 4; row += 1) {
          const t = T[row]?.[column] as number;
          if (t === 0) continue;
          for (let load = 0; load < loadCount; load += 1) {
            const force = frame.fixedFootForces[6 * load + (free[row] as number)] as number;
            sum += t * force * (own[load] as number);
          }
        }
        ends[4 * hoop + column] = sum;
      }
    });
    return ends;
  };
  const solve = (plan: BasePlan, loads: readonly Float64Array[]): PlanResponse => {
    const response = plan.response();
    const outcome = plan.respond(fixedEnd(loads), response);
    if (outcome !== "held") throw new Error(`the rails in plan are ${outcome}`);
    return response;
  };
  const response = new Float64Array(frame.size);
  const moves = new Float64Array(6);
  const action = (loads: Float64Array, plan: PlanResponse, hoop: number): HoopAction => {
    for (let row = 0; row < 4; row += 1) {
      let sum = 0;
      for (let column = 0; column < 4; column += 1) {
        const moved = plan.footDisplacement[4 * hoop + column] as number;
        sum += (T[row]?.[column] as number) * moved;
      }
      moves[free[row] as number] = sum;
    }
    frame.respond(loads, moves, response);
    return actionOf(framed, stations, response);
  };
  const weights = places.map(() => {
    const loads = new Float64Array(loadCount);
    loads[weightLoad] = 1;
    return loads;
  });
  let deadPlan: PlanResponse | undefined;
  const planDead = () => (deadPlan ??= solve(planFor(sideHold(house, null)), weights));
  const deads: HoopAction[] = [];
  const winds = new Map<ChainCase, { loads: Float64Array[]; base: BasePlan; plan: PlanResponse }>();
  /** Slack tethers are left out, and stay so, until those that are left all pull. */
  const heldByPulling = ({ direction }: ChainCase, loads: readonly Float64Array[]) => {
    let hold = sideHold(house, direction);
    for (;;) {
      const base = planFor(hold);
      const plan = solve(base, loads);
      const left = withoutPushing(hold, plan.anchorForce, direction);
      if (left === hold) return { base, plan };
      hold = left;
    }
  };
  const windOf = (windCase: ChainCase) => {
    let known = winds.get(windCase);
    if (!known) {
      const loads = places.map((_, hoop) => loadsOnHoop(windCase, hoop, lineLoads[hoop] as number));
      known = { loads, ...heldByPulling(windCase, loads) };
      winds.set(windCase, known);
    }
    return known;
  };
  return {
    ...about,
    railed: true,
    framed,
    stations,
    dead: (hoop) => (deads[hoop] ??= action(weights[hoop] as Float64Array, planDead(), hoop)),
    wind: (windCase, hoop) => {
      const { loads, plan } = windOf(windCase);
      return action(loads[hoop] as Float64Array, plan, hoop);
    },
    planDead,
    planWind: (windCase) => windOf(windCase).plan,
    plan: (windCase) => (windCase ? windOf(windCase).base : planFor(sideHold(house, null))),
  };
}

function baseOf(
  { lines, rail, links }: House,
  places: readonly number[],
  stiffness: readonly number[],
  hold: SideHold,
): ConstructorParameters<typeof BasePlan>[0] {
  const { secondMomentY, torsionConstant } = properties(rail.tube);
  const { modulus, shearModulus } = steelOfTube(links.rail);
  const one = { bending: modulus * secondMomentY, twist: shearModulus * torsionConstant };
  const cross = links.crossMembers;
  const crossSection = cross ? properties(cross.tube) : null;
  const crossSteel = cross ? steelOfTube(cross) : null;
  const fromFront = (y: number): number => rail.front - y;
  return {
    length: rail.front + rail.back,
    span: lines.span,
    left: one,
    right: one,
    hoops: places.map((y) => ({ y: fromFront(y), stiffness })),
    crossMembers:
      cross && crossSection && crossSteel
        ? cross.places.map((y) => ({
            y: fromFront(y),
            axial: crossSteel.modulus * crossSection.area,
            bending: crossSteel.modulus * crossSection.secondMomentX,
          }))
        : [],
    sideHold: hold.anchors ?? "evenly",
  };
}
