import { derived, type Formula, formula } from "@hoopstay/core";
import type { RailSolution, SolvedSupport } from "./rail-reactions.ts";

/** One line of working: a formula with the numbers put into it, SI. */
export interface WorkedFormula {
  readonly formula: Formula;
  readonly inputs: readonly number[];
}

export const anchorTension = formula({
  id: "anchor-tension",
  symbol: "T",
  name: "tension of an anchor on its spring",
  measure: "force",
  arguments: [
    ["T_ref", "pull that moves the anchor's head by d_ref", "force"],
    ["v", "lift of the rail at the anchor", "length"],
    ["d_ref", "movement of the anchor's head under T_ref", "length"],
  ],
  expression: "max(0, T_ref * v / d_ref)",
  citation: derived("linear spring that only pulls"),
  range: "up to the force at which the anchor gives",
  evaluate: (pull, lift, movement) => Math.max(0, (pull * lift) / movement),
});

export const givingAnchorTension = formula({
  id: "giving-anchor-tension",
  symbol: "T",
  name: "tension of an anchor that gives at a force",
  measure: "force",
  arguments: [
    ["T_ref", "pull that moves the anchor's head by d_ref", "force"],
    ["v", "lift of the rail at the anchor", "length"],
    ["d_ref", "movement of the anchor's head under T_ref", "length"],
    ["T_cap", "force at which the anchor gives", "force"],
  ],
  expression: "min(T_cap, max(0, T_ref * v / d_ref))",
  citation: derived("linear spring that only pulls, then constant force"),
  evaluate: (pull, lift, movement, cap) => Math.min(cap, Math.max(0, (pull * lift) / movement)),
});

export const momentAboutRailEnd = formula({
  id: "moment-about-rail-end",
  symbol: "M",
  name: "moment of a force about the rail's left end",
  measure: "moment",
  arguments: [
    ["F", "force, up positive", "force"],
    ["x", "its place from the rail's left end", "length"],
  ],
  expression: "F * x",
  citation: derived("lever"),
  evaluate: (force, place) => force * place,
});

/**
 * The spring law of each anchor: how its tension follows from the lift of the rail there. A rigid
 * anchor has none and is left out: its tension follows from equilibrium and the rail's bending.
 *
 * @param movement movement at which the pull of the spring is printed, m
 */
export function anchorSpringLaws(solution: RailSolution, movement: number): WorkedFormula[] {
  return anchorsOf(solution).flatMap(({ stiffness, deflection, cap }) => {
    if (stiffness === "rigid") return [];
    const inputs = [stiffness * movement, deflection, movement];
    return cap === undefined
      ? [{ formula: anchorTension as unknown as Formula, inputs }]
      : [{ formula: givingAnchorTension as unknown as Formula, inputs: [...inputs, cap] }];
  });
}

/** The anchors of a solution. */
export const anchorsOf = ({ supports }: RailSolution): SolvedSupport[] =>
  supports.filter(({ kind }) => kind === "anchor");
