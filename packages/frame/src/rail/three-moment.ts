import { factorise, substitute } from "./banded.ts";
import { bendSpans, kink } from "./bend-spans.ts";
import type { BentRail } from "./bent-rail.ts";
import type { HeldNodes } from "./held-nodes.ts";
import { leftEnd, rightEnd, spanLoads } from "./span-loads.ts";
import type { ThreeMomentSpace } from "./three-moment-space.ts";

/**
 * Bends a rail on a given set of two-way holds, exactly within Euler-Bernoulli theory: the
 * three-moment equations on supports that sink, with the moments at the inner held nodes as
 * unknowns, and integration of the loads from node to node. No shear deformation, small
 * deflections.
 *
 * @param space loads at the nodes and room for the solution
 * @param held what holds the nodes; at least two must be held
 * @param preload part of the springs' preload that is at work, 0 to 1
 * @returns `bent`, filled
 */
export function bendRail(
  space: ThreeMomentSpace,
  held: HeldNodes,
  preload: number,
  bent: BentRail,
): BentRail {
  const { applied, force } = space;
  for (let node = 0; node < force.length; node += 1) {
    applied[node] = (force[node] as number) + (held.constant[node] as number);
  }
  leftEnd(space, held, bent);
  rightEnd(space, held);
  spanLoads(space, held);
  innerMoments(space, held, bent.stiffness, preload);
  bendSpans(space, held, preload, bent);
  return bent;
}

/** Solves the equations of equal slope at the inner held nodes, and refines the solution once. */
function innerMoments(
  space: ThreeMomentSpace,
  held: HeldNodes,
  bending: number,
  preload: number,
): void {
  const { moment, diagonal, next, second, unknown } = space;
  const inner = held.count - 2;
  equations(space, held, bending);
  factorise(inner, diagonal, next, second);
  for (let i = 0; i < inner; i += 1) moment[i + 1] = 0;
  // The second pass matters where springs stand within millimetres of each other.
  for (let pass = 0; pass < 2; pass += 1) {
    slopeGaps(space, held, preload);
    substitute(inner, diagonal, next, second, unknown);
    for (let i = 0; i < inner; i += 1) {
      moment[i + 1] = (moment[i + 1] as number) + (unknown[i] as number);
    }
  }
}

/** What a moment at each inner held node does to the slopes at it and its neighbours. */
function equations(
  { span, give, diagonal, next, second }: ThreeMomentSpace,
  { count, nodes, stiffness }: HeldNodes,
  bending: number,
): void {
  for (let i = 0; i < count; i += 1) {
    give[i] = bending / (stiffness[nodes[i] as number] as number);
  }
  for (let i = 1; i + 1 < count; i += 1) {
    const h = span[i - 1] as number;
    const g = span[i] as number;
    const b = 1 / h;
    const c = 1 / g;
    const own = give[i] as number;
    const aft = give[i + 1] as number;
    const beyond = i + 2 < count ? 1 / (span[i + 1] as number) : 0;
    diagonal[i - 1] =
      (h + g) / 3 + (give[i - 1] as number) * b * b + own * (b + c) * (b + c) + aft * c * c;
    next[i - 1] = g / 6 - own * (b + c) * c - aft * c * (c + beyond);
    second[i - 1] = aft * c * beyond;
  }
}

/** E I times the gap of slopes that the moments at hand leave at each inner held node. */
function slopeGaps(space: ThreeMomentSpace, { count, nodes, preload }: HeldNodes, part: number) {
  const { span, moment, free, give, slopeLeft, slopeRight, sag, unknown } = space;
  const last = count - 1;
  for (let i = 0; i < count; i += 1) {
    const reaction = (free[i] as number) + kink(moment, span, i, last);
    const pressed = part * (preload[nodes[i] as number] as number) - reaction;
    sag[i] = (give[i] as number) * pressed;
  }
  for (let i = 1; i < last; i += 1) {
    const h = span[i - 1] as number;
    const g = span[i] as number;
    const here = moment[i] as number;
    const bent =
      (h * ((moment[i - 1] as number) + 2 * here) + g * (2 * here + (moment[i + 1] as number))) / 6;
    unknown[i - 1] =
      kink(sag, span, i, last) - bent - (slopeRight[i - 1] as number) + (slopeLeft[i] as number);
  }
}
