import type { RoofForce } from "../resultant/zone.ts";
import type { Shell } from "../shell/shell.ts";
import {
  attachedBoxDrag,
  bareTubeDrag,
  filmFriction,
  freeWallDrag,
  gustFactor,
} from "./constants.ts";
import { leewardWall, sideWall, windwardWall } from "./walls.ts";

/**
 * Wind along one axis per unit of K_d q_h, in house axes about the origin (m2, m3): outside
 * pressure only. Moments of horizontal and of vertical pressure are kept apart, because diagonal
 * cases scale the one and not the other.
 */
export interface ParentLoad {
  readonly fx: number;
  /** The part of `fx` on the arch. */
  readonly fxArch: number;
  readonly fy: number;
  readonly fz: number;
  readonly mxHorizontal: number;
  readonly mxVertical: number;
  readonly myHorizontal: number;
  readonly myVertical: number;
  readonly mz: number;
}

/** A bin, tank or box that wind blows on: middle of its faces (m) and face areas (m2). */
export interface Obstacle {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly areaAcross: number;
  readonly areaAlong: number;
  /** Outside the shell it always counts, inside only with the film off. */
  readonly outside: boolean;
}

/** All bare tubes together: C_f times size times length, m2, and the centre of it, m. */
export interface FrameTubes {
  readonly dragArea: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface EndsPresent {
  readonly front: boolean;
  readonly back: boolean;
}

export type Sense = 1 | -1;

const G = gustFactor.value;

/** Wind across the ridge on a covered shell; `sense` +1 blows toward +x. */
export function acrossParent(
  shell: Shell,
  roof: RoofForce,
  sense: Sense,
  ends: EndsPresent,
  obstacles: readonly Obstacle[],
): ParentLoad {
  const suction = -G * sideWall.value * shell.endArea;
  const fy = (ends.front ? suction : 0) - (ends.back ? suction : 0);
  let fx = sense * roof.drag;
  let myHorizontal = sense * roof.dragMoment;
  let mz = 0;
  for (const { y, z, areaAcross, outside } of obstacles) {
    if (!outside) continue;
    const push = sense * G * attachedBoxDrag.value * areaAcross;
    fx += push;
    myHorizontal += z * push;
    mz -= y * push;
  }
  return {
    fx,
    fxArch: sense * roof.archDrag,
    fy,
    fz: roof.uplift,
    mxHorizontal: -shell.endCentroid * fy,
    mxVertical: 0,
    myHorizontal,
    myVertical: sense * roof.upliftMoment,
    mz,
  };
}

/** Drag of wind that blows through a shell without end walls, and its height. m2, m. */
export function throughDrag(shell: Shell): { frame: number; friction: number; height: number } {
  return {
    frame: bareTubeDrag.value * shell.hoopDiameter * shell.hoopLine * shell.hoopCount,
    friction: filmFriction.value * shell.hoopLine * shell.L,
    height: shell.hoopLineCentroid,
  };
}

/** Wind along the ridge on a covered shell; `sense` +1 blows toward +y, so the back is windward. */
export function alongParent(
  shell: Shell,
  roof: RoofForce,
  sense: Sense,
  ends: EndsPresent,
  obstacles: readonly Obstacle[],
): ParentLoad {
  const windwardEnd = sense > 0 ? ends.back : ends.front;
  const leewardEnd = sense > 0 ? ends.front : ends.back;
  let drag = 0;
  let tip = 0;
  if (windwardEnd || leewardEnd) {
    const leeward = leewardWall.evaluate(shell.L / shell.b);
    drag += windwardEnd ? G * windwardWall.value * shell.endArea : 0;
    drag -= leewardEnd ? G * leeward * shell.endArea : 0;
    tip += drag * shell.endCentroid;
  } else {
    const { frame, friction, height } = throughDrag(shell);
    drag += frame + friction;
    tip += drag * height;
  }
  let mz = 0;
  for (const { x, z, areaAlong, outside } of obstacles) {
    if (!outside) continue;
    const push = G * attachedBoxDrag.value * areaAlong;
    drag += push;
    tip += z * push;
    mz += sense * x * push;
  }
  return {
    fx: 0,
    fxArch: 0,
    fy: sense * drag,
    fz: roof.uplift,
    mxHorizontal: -sense * tip,
    mxVertical: -sense * roof.upliftMoment,
    myHorizontal: 0,
    myVertical: 0,
    mz,
  };
}

/** Wind on the bare frame, film off: tubes, boxes, and end walls left standing. No uplift. */
export function bareParent(
  shell: Shell,
  axis: "across" | "along",
  sense: Sense,
  ends: EndsPresent,
  frame: FrameTubes,
  obstacles: readonly Obstacle[],
): ParentLoad {
  const across = axis === "across";
  const { dragArea } = frame;
  let drag = dragArea;
  let tip = dragArea * frame.z;
  let twist = dragArea * (across ? -frame.y : frame.x);
  for (const { x, y, z, areaAcross, areaAlong } of obstacles) {
    const push = G * attachedBoxDrag.value * (across ? areaAcross : areaAlong);
    drag += push;
    tip += z * push;
    twist += push * (across ? -y : x);
  }
  if (!across) {
    const wall = freeWallDrag.value * shell.endArea;
    const walls = (ends.front ? wall : 0) + (ends.back ? wall : 0);
    drag += walls;
    tip += walls * shell.endCentroid;
  }
  return {
    fx: across ? sense * drag : 0,
    fxArch: 0,
    fy: across ? 0 : sense * drag,
    fz: 0,
    mxHorizontal: across ? 0 : -sense * tip,
    mxVertical: 0,
    myHorizontal: across ? sense * tip : 0,
    myVertical: 0,
    mz: sense * twist,
  };
}

/** Inside pressure per unit of GC_pi and of K_d q_h: it lifts the whole roof, floor or no floor. */
export interface InsideLoad {
  readonly fy: number;
  readonly fz: number;
  readonly mx: number;
}

/** Inside pressure pushes outward on every panel that is present; strips and arch sides cancel. */
export function insideLoad(shell: Shell, ends: EndsPresent): InsideLoad {
  const fy = ((ends.front ? 1 : 0) - (ends.back ? 1 : 0)) * shell.endArea;
  return { fy, fz: shell.b * shell.L, mx: -shell.endCentroid * fy };
}
