import type { BentRail } from "./bent-rail.ts";
import { type RailExtremes, railExtremes } from "./extremes.ts";
import type { Rail, RailLoads, RailOutcome, RailSupport, SupportPart } from "./rail.ts";
import { checkLoads, checkRail } from "./rail-input.ts";
import { RailSolver } from "./rail-solver.ts";

/** A rail in equilibrium on its supports. */
export interface RailSolution {
  readonly outcome: "held";
  readonly rail: Rail;
  readonly loads: RailLoads;
  readonly supports: readonly SolvedSupport[];
  readonly bent: BentRail;
  readonly extremes: RailExtremes;
}

/** A support with what it does in a solution. */
export interface SolvedSupport extends RailSupport {
  readonly part: SupportPart;
  /** Force on the rail, N, up positive: an anchor's tension is its negative. */
  readonly reaction: number;
  /** Deflection of the rail there, m, up positive. */
  readonly deflection: number;
}

/** A solution, or why there is none. */
export type RailResult = RailSolution | { readonly outcome: Exclude<RailOutcome, "held"> };

/**
 * A straight rail under a uniform load, forces and couples at any places, on two-way supports, on
 * anchors that only pull and on ground that only pushes: reactions, deflections, moments, shears,
 * exact within Euler-Bernoulli theory of small deflections. Left out: shear deformation, axial
 * force, torsion, the rail's own yielding. For many load cases on one rail use `RailSolver`.
 *
 * @throws Refusal for an input outside what can be computed, with every complaint
 */
export function railReactions(
  rail: Rail,
  loads: RailLoads,
  supports: readonly RailSupport[],
): RailResult {
  checkRail(rail, supports);
  checkLoads(rail, loads);
  const places = [...loads.forces, ...loads.couples].map(({ x }) => x);
  const solver = new RailSolver(rail, places, supports);
  const forces = [...loads.forces.map(({ force }) => force), ...loads.couples.map(() => 0)];
  const couples = [...loads.forces.map(() => 0), ...loads.couples.map(({ couple }) => couple)];
  const outcome = solver.solve(loads.uniform, forces, couples);
  if (outcome !== "held") return { outcome };
  const parts = solver.parts();
  const { bent } = solver;
  return {
    outcome,
    rail,
    loads,
    supports: supports.map((support, i) => ({
      ...support,
      part: parts[i] as SupportPart,
      reaction: solver.reactions[i] as number,
      deflection: solver.deflections[i] as number,
    })),
    bent,
    extremes: railExtremes(bent),
  };
}
