import { type Band, bandOf, pin, residual } from "../band.ts";
import { type BandLU, factorise, substitute } from "../band-lu.ts";
import { balanceOf } from "./frame-balance.ts";
import { clampedForces, type FrameElement, frameElements, fromMember } from "./frame-element.ts";
import { addElement, addToNode, heldUnknowns, reachOf, unknownsOf } from "./frame-equations.ts";
import { checkFrame } from "./frame-input.ts";
import type { FrameLoads, FrameMember, FrameNode, FrameResult, NodeLoad } from "./plan-frame.ts";

/** A pivot below this part of the greatest entry of its row is a mechanism. */
const looseness = 1e-11;
/** Imbalance allowed to a result, as a part of the greatest force at any member's end. */
const allowed = 1e-9;

/**
 * A plane frame of beams joined rigidly and of pinned bars, by stiffness: small displacements,
 * Euler-Bernoulli bending. Left out: shear deformation, buckling, joints that give.
 *
 * @throws Refusal for a frame or loads outside what can be computed
 */
export function solvePlanFrame(
  nodes: readonly FrameNode[],
  members: readonly FrameMember[],
  loads: FrameLoads,
): FrameResult {
  checkFrame(nodes, members, loads);
  const elements = frameElements(nodes, members, loads.members);
  const unknowns = unknownsOf(nodes);
  const band = bandOf(3 * nodes.length, reachOf(members, unknowns));
  for (const element of elements) addElement(band, element, unknowns);
  const held = heldUnknowns(nodes, members, unknowns);
  for (const unknown of held) pin(band, unknown);
  const factors = factorise(band);
  if (!(factors.least > looseness)) return { outcome: "not-held" };

  const applied = nodeLoads(loads.nodes, unknowns, band.size);
  const solved = solve(band, factors, applied, elements, unknowns, held);
  const { balance, greatest, sections } = balanceOf(elements, unknowns, applied, solved);
  const astray = balance.some(
    (force, unknown) => !held.has(unknown) && !(Math.abs(force) <= allowed * greatest),
  );
  if (astray) return { outcome: "unsettled" };
  const reactions = balance.map((force, unknown) => (held.has(unknown) ? force : 0));
  const inOrder = (values: Float64Array): Float64Array =>
    values.map((_, i) => values[(unknowns[Math.floor(i / 3)] as number) + (i % 3)] as number);
  return {
    outcome: "held",
    displacements: inOrder(solved),
    reactions: inOrder(reactions),
    sections,
  };
}

function nodeLoads(loads: readonly NodeLoad[], unknowns: Int32Array, size: number): Float64Array {
  const applied = new Float64Array(size);
  for (const { node, x, y, couple } of loads) {
    addToNode(applied, unknowns[node] as number, [x, y, couple], 0, 1);
  }
  return applied;
}

/** Movements of all nodes, refined once. */
function solve(
  band: Band,
  factors: BandLU,
  applied: Float64Array,
  elements: readonly FrameElement[],
  unknowns: Int32Array,
  held: ReadonlySet<number>,
): Float64Array {
  const given = applied.slice();
  for (const element of elements) {
    const clamped = fromMember(element, clampedForces(element));
    addToNode(given, unknowns[element.member.from] as number, clamped, 0, -1);
    addToNode(given, unknowns[element.member.to] as number, clamped, 3, -1);
  }
  for (const unknown of held) given[unknown] = 0;
  const solved = given.slice();
  const rest = new Float64Array(band.size);
  substitute(factors, solved);
  residual(band, given, solved, rest);
  substitute(factors, rest);
  return solved.map((movement, i) => movement + (rest[i] as number));
}
