import { shapeRail, sumAlongRail } from "./along-rails.ts";
import { type Band, residual } from "./band.ts";
import { type BandLU, factorise, substitute } from "./band-lu.ts";
import type { Base, LooseMotion, PlanOutcome } from "./base.ts";
import { checkBase } from "./base-input.ts";
import { type EvenLoad, evenLoad } from "./even-load.ts";
import { levelOut } from "./level-out.ts";
import { looseMotionsOf } from "./loose-motions.ts";
import { planEquations } from "./plan-equations.ts";
import { loadPlan } from "./plan-loads.ts";
import { actOnRails, type RailActions, railActions } from "./rail-actions.ts";
import { railsAgree } from "./rail-checks.ts";
import { type PlanResponse, planResponse } from "./response.ts";
import { type Stations, stationsOf } from "./stations.ts";
import { forcesEach, tieForces } from "./tie-forces.ts";
import { springsOf } from "./tie-springs.ts";

/**
 * The two rails of a house in plan and in twist, with all hoops and cross members on them at once:
 * prepared once and solved for many loads. Small deflections, Euler-Bernoulli bending, Saint-Venant
 * twist. Left out: bending of cross members in plan (safe side for the rails, which then bend
 * freely between ties), warping, axial force of the rails, and what the cross members' end shears
 * (the sum of their end moments over the span) do to the rails vertically.
 *
 * @throws Refusal for a base outside what can be computed
 */
export class BasePlan {
  /** Places of the stations, from the front end, m. */
  readonly y: Float64Array;
  /** Motions that nothing holds; a base with any is not solved. */
  readonly loose: readonly LooseMotion[];
  private readonly stations: Stations;
  private readonly springs: Float64Array;
  private readonly equations: Band;
  private readonly factors: BandLU;
  private readonly even: EvenLoad;
  private readonly given: Float64Array;
  private readonly solved: Float64Array;
  private readonly rest: Float64Array;
  private readonly ties: Float64Array;
  private readonly rails: readonly [RailActions, RailActions];

  constructor(readonly base: Base) {
    checkBase(base);
    const { hoops, crossMembers, span, sideHold } = base;
    this.stations = stationsOf(base);
    this.y = this.stations.y;
    this.springs = springsOf(hoops, crossMembers, span);
    this.loose = looseMotionsOf(this.stations, this.springs, sideHold);
    this.equations = planEquations(base, this.stations, this.springs);
    this.factors = factorise(this.equations);
    const { size } = this.equations;
    this.even = evenLoad(base, this.y, size);
    this.given = new Float64Array(size);
    this.solved = new Float64Array(size);
    this.rest = new Float64Array(size);
    this.ties = new Float64Array(forcesEach * this.stations.ofTie.length);
    this.rails = [railActions(this.y.length), railActions(this.y.length)];
  }

  /** An empty response of this base's size, to be filled by `respond` or `combinePlanResponses`. */
  response(): PlanResponse {
    const { hoops, crossMembers } = this.base;
    return planResponse(
      hoops.length,
      crossMembers.length,
      this.stations.ofAnchor.length,
      this.y.length,
    );
  }

  /**
   * Solves one load. Nothing is allocated; the response is full of NaN unless the base is held.
   *
   * @param fixedEnd what clamps would do to each hoop at its feet: H, M left, H, M right, a hoop
   * after the other, N and N m, in the senses of u and theta
   * @throws Refusal where a load is not a finite number
   */
  respond(fixedEnd: ArrayLike<number>, into: PlanResponse): PlanOutcome {
    const { base, stations, given, even, loose } = this;
    loadPlan(base, stations, even, fixedEnd, given, into.evenHold);
    let outcome: PlanOutcome = loose.length > 0 ? "not-held" : "held";
    if (outcome === "held") {
      this.solve();
      const sound = this.write(fixedEnd, into) || this.refined(fixedEnd, into);
      if (!sound) outcome = "unsettled";
    }
    if (outcome !== "held") into.values.fill(Number.NaN);
    return outcome;
  }

  private solve(): void {
    this.solved.set(this.given);
    substitute(this.factors, this.solved);
  }

  /** Takes the equations' residual off: it matters where stations stand within a millimetre. */
  private refined(fixedEnd: ArrayLike<number>, into: PlanResponse): boolean {
    const { equations, factors, given, solved, rest } = this;
    residual(equations, given, solved, rest);
    substitute(factors, rest);
    for (let i = 0; i < solved.length; i += 1) {
      solved[i] = (solved[i] as number) + (rest[i] as number);
    }
    return this.write(fixedEnd, into);
  }

  /** Writes the response, and says whether it passes the checks from the outside. */
  private write(fixedEnd: ArrayLike<number>, into: PlanResponse): boolean {
    const { base, stations, springs, solved, ties, rails, y } = this;
    tieForces(stations.ofTie, springs, solved, ties);
    const size = actOnRails(base, stations, fixedEnd, solved, ties, rails, into);
    for (let rail = 0; rail < 2; rail += 1) {
      const [one, shape] = rail === 0 ? [base.left, into.left] : [base.right, into.right];
      sumAlongRail(y, rails[rail] as RailActions, into.evenHold, shape);
      shapeRail(rail, one, y, into.evenHold, solved, shape);
    }
    const sound = railsAgree(base, y, solved, into, size);
    if (base.sideHold === "evenly") levelOut(y, stations.ofTie, into);
    return sound;
  }
}
