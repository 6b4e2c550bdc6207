import { type Basis, emptyBasis } from "./basis.ts";
import { askAt, type Demand } from "./demand.ts";
import { beyond, dot, type Facet } from "./facet.ts";
import { type JointSystem, limitRow } from "./joint-system.ts";
import { answers, type Walked, walk } from "./walk.ts";

/** Bases of one system that have answered before, the latest first. */
export interface Pool {
  readonly system: JointSystem;
  readonly bases: Basis[];
  /** Whether the house stands on level ground without wind, friction and anchors. */
  readonly standsLevel: boolean;
}

/** More are not worth asking: a walk from the first is as quick. */
const mostBases = 12;
const mostFacets = 60;

export const poolOf = (system: JointSystem): Pool => ({
  system,
  bases: [],
  standsLevel: standsLevel(system),
});

/** On level ground a weight over the base stands on its four corners, each with its share. */
function standsLevel({ problem, corners }: JointSystem): boolean {
  const { downslope, holding } = problem.terms;
  const { x, y } = holding.weight;
  const within = (value: number, edges: readonly number[]): boolean =>
    value >= Math.min(...edges) && value <= Math.max(...edges);
  return (
    downslope === 0 &&
    within(
      x,
      corners.map((corner) => corner.x),
    ) &&
    within(
      y,
      corners.map((corner) => corner.y),
    )
  );
}

/**
 * Looks for an answer in the pool, then by walking from it; null where one is found. A facet that
 * rounding alone may have made is left out.
 */
function ask({ bases, system }: Pool, right: Float64Array): Walked | null {
  for (let place = 0; place < bases.length; place += 1) {
    const basis = bases[place] as Basis;
    if (!answers(basis, right)) continue;
    if (place > 0) {
      bases.splice(place, 1);
      bases.unshift(basis);
    }
    return null;
  }
  const walked = walk(bases[0] ?? emptyBasis(system), right);
  if (!walked.held) {
    return walked.facet && beyond(walked.facet, right) ? walked : { held: null, facet: null };
  }
  bases.unshift(walked.held);
  if (bases.length > mostBases) bases.pop();
  return null;
}

/**
 * The largest factor up to `most` below which a case is in equilibrium, by walking down from facet
 * to facet: each is a bound on the factor, and the first bound that is itself answered is the
 * factor; 0 where the house does not stand without wind. Null where a walk is lost.
 *
 * Equilibrium at 0, where contact ends and at the factor proves it for all between, as in
 * `jointFactor`. On level ground the end of contact need not be asked: without wind there is no
 * summed friction and beyond the end there is none, so any mixture of the two answers has none.
 */
export function factorUpTo(pool: Pool, demand: Demand, most: number): number | null {
  const { contactEnd } = demand;
  const right = new Float64Array(demand.right.length);
  let factor = most;
  if (!pool.standsLevel) {
    const still = ask(pool, askAt(demand, 0, right));
    if (still) return still.facet ? 0 : null;
    const missed = factor > contactEnd ? ask(pool, askAt(demand, contactEnd, right)) : null;
    if (missed) factor = boundBy(missed.facet, demand, false);
  }
  for (let turn = 0; turn < mostFacets; turn += 1) {
    const missed = ask(pool, askAt(demand, factor, right));
    if (!missed) return factor;
    const lifted = factor > contactEnd;
    const bound = Math.max(boundBy(missed.facet, demand, lifted), lifted ? contactEnd : 0);
    if (!(bound < factor)) return null;
    factor = bound;
  }
  return null;
}

/** The factor at which a case meets a facet; no number where there is no facet. */
function boundBy(facet: Facet | null, demand: Demand, lifted: boolean): number {
  if (!facet) return Number.NaN;
  const { right, perUnit, unit } = demand;
  const { normal, most } = facet;
  const ofLimit = lifted ? (normal[limitRow] as number) : 0;
  const still = dot(normal, right) - ofLimit * (right[limitRow] as number);
  const gained = dot(normal, perUnit) - ofLimit * (perUnit[limitRow] as number);
  return (unit * (most - still)) / gained;
}
