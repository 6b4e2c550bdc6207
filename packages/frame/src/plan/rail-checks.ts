import type { Base, RailInPlan } from "./base.ts";
import { momentAt } from "./plan-equations.ts";
import type { PlanResponse, RailResponse } from "./response.ts";

/** Imbalance allowed to a result, as a part of the sum of the sizes of all forces. */
const allowed = 1e-9;

/**
 * Whether a response passes the checks from the outside: nothing is left behind the rear ends,
 * moments are those that were solved, and both rails have the shape of their moments.
 *
 * @param size sum of the sizes of all forces, N; moments count with the span as their lever
 */
export function railsAgree(
  base: Base,
  y: Float64Array,
  solved: Float64Array,
  { left, right, evenHold }: PlanResponse,
  size: number,
): boolean {
  const way = greatestWay(left, right);
  for (let rail = 0; rail < 2; rail += 1) {
    const [one, shape] = rail === 0 ? [base.left, left] : [base.right, right];
    const agrees =
      leftBehind(shape.shear) <= allowed * size &&
      leftBehind(shape.torque) <= allowed * size * base.span &&
      momentGap(rail, solved, shape) <= allowed * size * base.length &&
      shapeGap(one, y, evenHold, shape, way, size * base.length) <= allowed;
    if (!agrees) return false;
  }
  return true;
}

/** What is left of a sum along a rail behind its rear end, by size. */
const leftBehind = (sums: Float64Array): number => Math.abs(sums[sums.length - 1] as number);

/** Greatest gap between the moments summed along a rail and those solved from its slopes, N m. */
export function momentGap(rail: number, solved: Float64Array, { moment }: RailResponse): number {
  let greatest = 0;
  for (let station = 1; station < moment.length; station += 1) {
    const gap = (moment[station] as number) - (solved[momentAt(rail, station)] as number);
    greatest = Math.max(greatest, Math.abs(gap));
  }
  return greatest;
}

/** Greatest way of both rails at the stations, m. */
export function greatestWay(left: RailResponse, right: RailResponse): number {
  let greatest = 0;
  for (let station = 0; station < left.deflection.length; station += 1) {
    const [one, other] = [left.deflection[station] as number, right.deflection[station] as number];
    greatest = Math.max(greatest, Math.abs(one), Math.abs(other));
  }
  return greatest;
}

/**
 * How far a rail's shape misses that of its moments: the greatest gap between its slope at a station
 * and that carried on from the station before by curvature. Over the span it is a way; it counts as
 * a part of the greatest way and of what a moment bends the span by.
 *
 * @param way greatest way of both rails, m
 * @param moment size of the moments at work, N m
 */
export function shapeGap(
  { bending }: RailInPlan,
  y: Float64Array,
  evenHold: Float64Array,
  { slope, moment: moments, shear }: RailResponse,
  way: number,
  moment: number,
): number {
  const middle = (y[y.length - 1] as number) / 2;
  const rise = evenHold[1] as number;
  let greatest = 0;
  for (let station = 0; station + 1 < y.length; station += 1) {
    const start = y[station] as number;
    const h = (y[station + 1] as number) - start;
    const q = (evenHold[0] as number) + rise * (start - middle);
    const [m, v] = [moments[station] as number, shear[station] as number];
    const turned = (h / bending) * (m + h * (v / 2 + h * (q / 6 + (h * rise) / 24)));
    const gap = Math.abs((slope[station] as number) + turned - (slope[station + 1] as number));
    if (gap !== 0) greatest = Math.max(greatest, (gap * h) / (way + (moment * h * h) / bending));
  }
  return greatest;
}
