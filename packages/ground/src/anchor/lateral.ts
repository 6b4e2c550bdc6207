import { Chapter, formula, judged } from "@hoopstay/core";
import type { ClayAtWork, GroundAtWork, SandAtWork } from "../soil/ground-at-work.ts";
import { refuse, requirePositive, requireSize, requireWithin } from "../soil/require.ts";
import type { Shaft, Stabiliser } from "./anchor.ts";
import { lowerForce } from "./common-formulas.ts";
import * as clay from "./lateral-clay.ts";
import * as sand from "./lateral-sand.ts";
import { sandCoefficients } from "./meyerhof-adams.ts";
import { momentLeft, plateForceInBending, shaftMoments } from "./shaft-bending.ts";

/** Pull at which the ground fails, N, and the pull that bends the shaft to a moment (N·m). */
interface GroundHold {
  readonly ground: number;
  readonly bending: (moment: number, factor: number) => number;
}

/** Sideways capacity of a shaft or stake, N. */
export interface LateralCapacity {
  readonly ultimate: number;
  readonly allowable: number;
  readonly model: string;
}

const allowablePull = formula({
  id: "lateral-allowable",
  symbol: "H_lat",
  name: "allowable sideways pull",
  measure: "force",
  arguments: [
    ["H_u", "pull at which the ground fails", "force"],
    ["FS", "safety factor on the ground", "ratio"],
    ["H_m", "pull that bends the shaft to M_p/1.67", "force"],
  ],
  expression: "min(H_u / FS, H_m)",
  citation: judged(
    "the ground's strength is divided by FS where the shaft's moment is found, so the moment is " +
      "taken deeper than with the full strength: safe side",
  ),
  evaluate: (hold, factor, bending) => Math.min(hold / factor, bending),
});

/**
 * Sideways capacity by Broms 1964, rigid shaft with free head: clay 9 c_u d below 1.5 d, sand
 * 3 K_p gamma' z d. A stabiliser acts over its own depth with 3 c_u or 3 K_p gamma' z, in place of
 * the shaft there; where the shaft alone holds more, the stabiliser is left out. The allowable is
 * the lower of the ground's over the factor and the pull whose greatest moment is M_p/1.67.
 * Deeper never holds less.
 *
 * Left out: movement under load, layers, a sloping surface, a shaft that is not near upright.
 *
 * @param depth vertical depth of the shaft's end, m
 * @param safety safety factor on the ground
 * @throws Refusal `not-positive`, `sizes-disagree`, or `ground-outside`
 */
export function lateralCapacity(
  shaft: Shaft,
  depth: number,
  stabiliser: Stabiliser | undefined,
  ground: GroundAtWork,
  safety: number,
  chapter: Chapter,
): LateralCapacity {
  check(shaft, depth, stabiliser);
  const bare = tried(shaft, depth, undefined, ground, safety);
  const plated = stabiliser && tried(shaft, depth, stabiliser, ground, safety);
  const best = plated && plated.allowable > bare.allowable ? plated : bare;
  chapter.steps.push(...best.own.steps);
  const { ultimate, allowable, model } = best;
  return { ultimate, allowable, model };
}

function tried(
  shaft: Shaft,
  depth: number,
  stabiliser: Stabiliser | undefined,
  ground: GroundAtWork,
  safety: number,
) {
  const own = new Chapter("lateral", "sideways pull");
  const hold =
    ground.likeness === "clay"
      ? holdInClay(shaft, depth, stabiliser, ground, own)
      : holdInSand(shaft, depth, stabiliser, ground, own);
  const moments = shaftMoments(shaft, own);
  const atFailure = hold.bending(moments.plastic, 1);
  const ultimate = own.work(lowerForce, [hold.ground, atFailure], { symbol: "H_n" });
  const bending = hold.bending(moments.allowable, safety);
  const allowable = own.work(allowablePull, [hold.ground, safety, bending]);
  const limit = hold.ground / safety > allowable ? "the shaft bends" : "the ground gives way";
  return { own, ultimate, allowable, model: `sideways, Broms 1964: ${limit}` };
}

function check(shaft: Shaft, depth: number, stabiliser: Stabiliser | undefined): void {
  requireSize(shaft.diameter, "a shaft diameter");
  requireSize(Math.cbrt(shaft.plasticModulus), "the cube root of a plastic section modulus");
  requireSize(depth, "a depth");
  if (shaft.yieldStress !== undefined) requirePositive(shaft.yieldStress, "a yield stress");
  const toTether = "Measure from the ground up to the tether.";
  requireWithin(shaft.pullHeight, [0, 10], "a height of pull in m", toTether, "out-of-range");
  if (!stabiliser) return;
  const { breadth, top, height } = stabiliser;
  requireSize(breadth, "a stabiliser breadth");
  requireSize(height, "a stabiliser height");
  const mend = "Measure the stabiliser again.";
  requireWithin(top, [0, depth], "the top of a stabiliser in m", mend, "sizes-disagree");
  if (breadth <= shaft.diameter || top + height >= depth) {
    const right = "a stabiliser wider than the shaft and above its end";
    refuse("sizes-disagree", right, `${breadth} m wide`, mend);
  }
}

function holdInClay(
  { diameter, pullHeight }: Shaft,
  depth: number,
  stabiliser: Stabiliser | undefined,
  { sidewaysStrength: strength }: ClayAtWork,
  chapter: Chapter,
): GroundHold {
  const bottom = stabiliser ? stabiliser.top + stabiliser.height : 0;
  const middle = stabiliser ? stabiliser.top + stabiliser.height / 2 : 0;
  const start = chapter.work(clay.clayStart, [diameter, bottom]);
  if (start >= depth) {
    const mend = "Set the shaft deeper, or test it.";
    refuse("ground-outside", "a shaft that reaches below 1.5 times its diameter", depth, mend);
  }
  let force = 0;
  if (stabiliser) {
    const { breadth, height } = stabiliser;
    const full = chapter.work(clay.clayPlate, [strength, breadth, height]);
    const level = [strength, diameter, pullHeight, start, depth, middle] as const;
    force = chapter.work(clay.clayPlateUsed, [full, ...level]);
  }
  const shaft = [strength, diameter, pullHeight, start] as const;
  const ground = chapter.work(clay.clayLateral, [...shaft, depth, force, middle]);
  const bending = (moment: number, factor: number): number => {
    const plate = plateInBending(force, factor, moment, pullHeight, middle, chapter);
    return chapter.work(clay.clayShaftPull, [moment, ...shaft, plate, middle, factor]);
  };
  return { ground, bending };
}

function holdInSand(
  { diameter, pullHeight }: Shaft,
  depth: number,
  stabiliser: Stabiliser | undefined,
  { frictionAngle, unitWeight }: SandAtWork,
  chapter: Chapter,
): GroundHold {
  // The range of phi is that of the uplift factors; nothing is rated beyond it.
  sandCoefficients(frictionAngle, new Chapter("range", "range"));
  const passive = chapter.work(sand.passiveCoefficient, [frictionAngle]);
  const rate = chapter.work(sand.sandReactionRate, [passive, unitWeight, diameter]);
  let [force, acts] = [0, 0];
  if (stabiliser) {
    const { breadth, top, height } = stabiliser;
    const bottom = top + height;
    force = chapter.work(sand.sandPlate, [rate, diameter, breadth, top, bottom]);
    acts = chapter.work(sand.sandPlateDepth, [top, bottom]);
  }
  const ground = chapter.work(sand.sandLateral, [rate, pullHeight, depth, force, acts]);
  const bending = (moment: number, factor: number): number => {
    const plate = plateInBending(force, factor, moment, pullHeight, acts, chapter);
    const left = chapter.work(momentLeft, [moment, plate, pullHeight, acts]);
    // The plate alone takes the pull as far as the shaft can.
    if (left === 0) return plate;
    const cube = chapter.work(sand.sandMomentCube, [left, factor, rate]);
    return chapter.work(sand.sandShaftPull, [left, cube, pullHeight, plate]);
  };
  return { ground, bending };
}

function plateInBending(
  force: number,
  factor: number,
  moment: number,
  pullHeight: number,
  acts: number,
  chapter: Chapter,
): number {
  if (force === 0) return 0;
  return chapter.work(plateForceInBending, [force, factor, moment, pullHeight, acts]);
}
