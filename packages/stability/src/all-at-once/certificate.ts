import type { CaseActions } from "./case-actions.ts";
import { polygonCorners, polygonSides } from "./friction-polygon.ts";
import type { Corner } from "./joint-problem.ts";
import type { Fan, JointSystem } from "./joint-system.ts";
import { leastTensions } from "./least-tensions.ts";

/** Everything that acts on a house in equilibrium, N and m. Anyone can add it up. */
export interface Certificate {
  /** Wind factor: the largest, or just below it (`leastTensions`). */
  readonly factor: number;
  /** Six sums of the factored wind about the origin on the ground, at that factor. */
  readonly wind: readonly number[];
  /** Factored weight: down, and along the ground where it slopes, at its centre. */
  readonly weight: {
    readonly down: number;
    readonly slopeX: number;
    readonly slopeY: number;
    readonly x: number;
    readonly y: number;
    readonly z: number;
  };
  readonly tethers: readonly Tether[];
  readonly pushes: readonly Push[];
  /** Friction that the contact left allows in all. */
  readonly frictionLimit: number;
}

/** One anchor: its tension toward `toward`, and what its shaft takes sideways besides. */
export interface Tether extends Corner {
  readonly toward: readonly [number, number, number];
  readonly tension: number;
  readonly most: number;
  readonly sideX: number;
  readonly sideY: number;
}

/** The ground's push on a corner of the base lines, and the friction on it. */
export interface Push extends Corner {
  readonly push: number;
  readonly frictionX: number;
  readonly frictionY: number;
}

/**
 * Of all equilibria at a case's wind factor the one with the least sum of tensions; null where the
 * factor is infinite or the house does not stand without wind.
 *
 * @throws SolverFault where the solver gives up or its answer does not balance
 */
export function certificateOf(
  system: JointSystem,
  actions: CaseActions,
  largest: number,
): Certificate | null {
  const found = leastTensions(system, actions, largest);
  if (!found) return null;
  const { factor, values } = found;
  const { terms } = system.problem;
  const { weight } = terms.holding;
  const wind = [...actions.wind].map((one) => factor * one);
  return {
    factor,
    wind,
    weight: {
      down: terms.deadNormal,
      slopeX: actions.slope[0] as number,
      slopeY: actions.slope[1] as number,
      x: weight.x,
      y: weight.y,
      z: weight.z,
    },
    tethers: tethersOf(found.system, values),
    pushes: pushesOf(found.system, values),
    frictionLimit: system.friction * Math.max(0, terms.deadNormal - (wind[2] as number)),
  };
}

/** Sum of a fan's unknowns, and their sums by direction, N. */
function sumsOf({ first }: Fan, values: Float64Array, force: number): [number, number, number] {
  let [sum, x, y] = [0, 0, 0];
  for (let side = 0; side < polygonSides; side += 1) {
    const value = force * (values[first + side] as number);
    sum += value;
    x += value * (polygonCorners[2 * side] as number);
    y += value * (polygonCorners[2 * side + 1] as number);
  }
  return [sum, x, y];
}

function tethersOf({ problem, shafts, force }: JointSystem, values: Float64Array): Tether[] {
  const { holding, combination } = problem.terms;
  return holding.anchors.map(({ x, y, pull, toward }, anchor) => {
    const shaft = shafts.find((one) => one.anchor === anchor);
    const [, sideX, sideY] = shaft ? sumsOf(shaft.fan, values, force) : [0, 0, 0];
    const tension = force * (values[anchor] as number);
    return { x, y, toward, tension, most: combination.anchor * pull, sideX, sideY };
  });
}

function pushesOf({ corners, fans, force, friction }: JointSystem, values: Float64Array): Push[] {
  return corners.map(({ x, y }, corner) => {
    const [push, sumX, sumY] = sumsOf(fans[corner] as Fan, values, force);
    return { x, y, push, frictionX: friction * sumX, frictionY: friction * sumY };
  });
}
