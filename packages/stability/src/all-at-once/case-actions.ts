import { type ActionTable, stride } from "../outcome.ts";
import { slopeAgainst } from "../slide.ts";
import type { JointProblem } from "./joint-problem.ts";
import { forceAt } from "./joint-system.ts";

/** Directions tried where the downhill direction is unknown, the wind's own first. */
const slopeDirections = 16;

/** What acts on one house in one case, N and N m about the origin on the ground. */
export interface CaseActions {
  /** Six sums of the factored wind at the wind factor 1. */
  readonly wind: Float64Array;
  /** Six sums of the factored downslope part of the weight. */
  readonly slope: Float64Array;
}

/** The factored wind of a row at the wind factor 1. */
export function windOf({ terms, pressure }: JointProblem, table: ActionTable, row: number) {
  const factor = terms.combination.wind * pressure;
  const wind = table.components.slice(row * stride, row * stride + 6);
  for (let part = 0; part < 6; part += 1) wind[part] = factor * (wind[part] as number);
  return wind;
}

/**
 * The downslope forces a wind has to be met with: one where the downhill direction is known or the
 * ground level. Where it is unknown, the wind's direction and 15 more; those that turn uphill, once
 * their part against the wind is dropped, lie between the two straight across the wind, and what
 * holds with both of those holds between them, so nine remain. A wind without any horizontal part
 * relieves nothing: the whole downslope force, and all sixteen.
 */
export function slopesOf({ terms }: JointProblem, fx: number, fy: number): Float64Array[] {
  const { downslope, holding } = terms;
  const { weight, slope } = holding;
  const sums = (sx: number, sy: number): Float64Array => forceAt(6, sx, sy, 0, weight);
  if (downslope === 0) return [new Float64Array(6)];
  const turn = (2 * Math.PI) / slopeDirections;
  const known = slope?.downhill;
  if (fx === 0 && fy === 0) {
    if (known) return [sums(downslope * known[0], downslope * known[1])];
    return Array.from({ length: slopeDirections }, (_, place) =>
      sums(downslope * Math.cos(turn * place), downslope * Math.sin(turn * place)),
    );
  }
  if (known) return [sums(...slopeAgainst(terms, fx, fy))];
  const quarter = slopeDirections / 4;
  const found: Float64Array[] = [];
  for (let place = 0; place <= quarter; place += 1) {
    found.push(sums(...slopeAgainst(terms, fx, fy, turn * place)));
    if (place > 0) found.push(sums(...slopeAgainst(terms, fx, fy, -turn * place)));
  }
  return found;
}
