import type { Shell } from "../shell/shell.ts";
import { freeWallDrag, gustFactor } from "./constants.ts";
import type { EndsPresent, Sense } from "./parent-loads.ts";
import { leewardWall, sideWall, windwardWall } from "./walls.ts";
import type { Covering } from "./wind-surfaces.ts";

/**
 * What the wind on each end wall does about the ground, a moment about the x axis, per unit of
 * K_d q_h (m3). Nought where the wall is missing.
 */
export interface EndWallMoments {
  readonly front: number;
  readonly back: number;
}

/** Moments of pushes toward the front (+y), m2, on the walls that stand. */
function momentsOf(
  { endCentroid }: Shell,
  ends: EndsPresent,
  front: number,
  back: number,
): EndWallMoments {
  return {
    front: ends.front ? -endCentroid * front : 0,
    back: ends.back ? -endCentroid * back : 0,
  };
}

/**
 * Outside pressure on the end walls in one parent load: the part of its `mxHorizontal` that acts on
 * them. The rest acts on boxes, on the frame, or along the film.
 */
export function endWallMoments(
  shell: Shell,
  covering: Covering,
  ends: EndsPresent,
  axis: "across" | "along",
  sense: Sense,
): EndWallMoments {
  const { endArea } = shell;
  const G = gustFactor.value;
  if (covering === "bare") {
    const push = axis === "across" ? 0 : sense * freeWallDrag.value * endArea;
    return momentsOf(shell, ends, push, push);
  }
  if (axis === "across") {
    const suction = -G * sideWall.value * endArea;
    return momentsOf(shell, ends, suction, -suction);
  }
  const windward = sense * G * windwardWall.value * endArea;
  const leeward = -sense * G * leewardWall.evaluate(shell.L / shell.b) * endArea;
  return sense > 0
    ? momentsOf(shell, ends, leeward, windward)
    : momentsOf(shell, ends, windward, leeward);
}

/** Inside pressure on the end walls, per unit of GC_pi and of K_d q_h: outward on each. */
export const insideEndWallMoments = (shell: Shell, ends: EndsPresent): EndWallMoments =>
  momentsOf(shell, ends, shell.endArea, -shell.endArea);
