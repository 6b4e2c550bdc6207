import { lineLoadRise } from "../plan-formulas.ts";
import { dragLoads } from "./drag-loads.ts";
import type { FrameNode } from "./plan-frame.ts";
import type { Drag, Racked, RackedBase, RackingResult } from "./racked-base.ts";
import { cornerSideForce, heldCornerForce, rackingTurn } from "./racking-formulas.ts";
import { rackingFrame } from "./racking-frame.ts";
import { checkRacking } from "./racking-input.ts";
import { readRacked } from "./read-racked.ts";
import { solvePlanFrame } from "./solve-plan-frame.ts";

/** Imbalance allowed to the frame's reactions, as a part of pull and friction. */
const allowed = 1e-9;

/**
 * The base in plan while it is dragged and one rear corner is held: rails and cross members as beams
 * welded to each other, braces as pinned bars, pull at the front ends, friction along both rails.
 * What turns the base is balanced by side forces of the ground; since nobody knows where the ground
 * holds, two ways are computed and the worse counts for each part. Left out: stiffness of the hoops
 * (safe side for the base), joints that give, friction that slips sideways.
 *
 * @throws Refusal for a base or a pull outside what can be computed
 */
export function rackBase(base: RackedBase, drag: Drag): RackingResult {
  checkRacking(base, drag);
  const { pull, friction, held } = drag;
  const heldForce = heldCornerForce.evaluate(pull.left, pull.right, friction);
  const heldAt = held === "left" ? 0 : base.span;
  const turning = rackingTurn.evaluate(pull.right, friction, heldForce, heldAt, base.span);
  const frame = rackingFrame(base);
  const across = drag.held === "left" ? "right" : "left";
  const corners = [frame.ends[drag.held][1], frame.ends[across][0]] as const;
  const nodes = frame.nodes.map((node, i): FrameNode => {
    if (i === corners[0]) return { ...node, held: { x: true, y: true } };
    return i === corners[1] ? { ...node, held: { x: true } } : node;
  });
  const ways: Racked[] = [];
  for (const hold of ["corners", "along"] as const) {
    const rise = hold === "along" ? lineLoadRise.evaluate(turning, base.length) : 0;
    const solved = solvePlanFrame(nodes, frame.members, dragLoads(frame, base, drag, rise));
    if (solved.outcome !== "held") return { outcome: solved.outcome };
    const side = hold === "corners" ? cornerSideForce.evaluate(turning, base.length) : 0;
    const expected = [side, heldForce, -side];
    const size = pull.left + pull.right + friction;
    const found = [3 * corners[0], 3 * corners[0] + 1, 3 * corners[1]];
    const balanced = found.every((place, i) => {
      const gap = (solved.reactions[place] as number) - (expected[i] as number);
      return Math.abs(gap) <= allowed * size;
    });
    if (!balanced) return { outcome: "unsettled" };
    ways.push(readRacked(hold, frame, solved));
  }
  return { outcome: "held", heldForce, turning, ways };
}
