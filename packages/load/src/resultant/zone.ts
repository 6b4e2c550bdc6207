import type { Point } from "../shell/zones.ts";
import { zoneDrag, zoneDragMoment, zoneUplift, zoneUpliftMoment } from "./zone-force.ts";

export type ZonePart = "windward strip" | "leeward strip" | "arch";

/**
 * A piece of the shell under one pressure: the curve from `a` to `b` of the cross section, from
 * `from` to `to` along the house, both in wind coordinates, m. `coefficient` is the pressure toward
 * the surface per unit of K_d q_h (G C_p, or G C_N).
 */
export interface Zone {
  readonly name: string;
  readonly part: ZonePart;
  readonly a: Point;
  readonly b: Point;
  readonly from: number;
  readonly to: number;
  readonly shapeCoefficient: number;
  readonly coefficient: number;
}

/**
 * What a set of zones adds up to per unit of K_d q_h, in wind coordinates: downwind, up, and the
 * moment that tips downwind about the middle of the house, its horizontal and vertical parts apart.
 */
export interface RoofForce {
  readonly drag: number;
  readonly archDrag: number;
  readonly uplift: number;
  readonly dragMoment: number;
  readonly upliftMoment: number;
}

/** Sum over zones when the wind blows across the ridge. m2 and m3 (per unit pressure). */
export function sumAcross(zones: readonly Zone[]): RoofForce {
  let drag = 0;
  let archDrag = 0;
  let uplift = 0;
  let dragMoment = 0;
  let upliftMoment = 0;
  for (const { part, a, b, from, to, coefficient } of zones) {
    const length = to - from;
    const zone = zoneDrag.evaluate(coefficient, length, a.z, b.z);
    drag += zone;
    if (part === "arch") archDrag += zone;
    uplift += zoneUplift.evaluate(coefficient, length, a.x, b.x);
    dragMoment += zoneDragMoment.evaluate(coefficient, length, a.z, b.z);
    upliftMoment += zoneUpliftMoment.evaluate(coefficient, length, a.x, b.x);
  }
  return { drag, archDrag, uplift, dragMoment, upliftMoment };
}

/**
 * Sum over zones when the wind blows along the ridge: every zone spans the whole cross section, so
 * it only lifts, at the middle of its length.
 */
export function sumAlong(zones: readonly Zone[]): RoofForce {
  let uplift = 0;
  let upliftMoment = 0;
  for (const { part, a, b, from, to, coefficient } of zones) {
    if (part !== "arch") continue;
    const zone = zoneUplift.evaluate(coefficient, to - from, a.x, b.x);
    uplift += zone;
    upliftMoment -= ((from + to) / 2) * zone;
  }
  return { drag: 0, archDrag: 0, uplift, dragMoment: 0, upliftMoment };
}
