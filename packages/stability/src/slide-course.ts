import type { LineTerms } from "./holding.ts";
import { pullsSideways } from "./holding.ts";
import type { SlidingTerms, SlidingWind } from "./slide.ts";
import { kinks } from "./straight-slide.ts";

/** A number that grows evenly with the pressure: at no pressure, and per unit of it. */
export type Line = readonly [number, number];

/** Pressure at which two lines meet; not a number or infinite where they do not. */
export const meeting = (one: Line, other: Line): number =>
  (other[0] - one[0]) / (one[1] - other[1]);

/** What turning asks of a rail's tethers, before it is held to none (0) and all (1). */
export const asked = (
  { weightMoment, anchorMoment, slopeMoment }: LineTerms,
  turn: number,
): Line => [(slopeMoment - weightMoment) / anchorMoment, Math.max(0, turn) / anchorMoment];

/** Slanted tethers of one side that pull alike. */
export interface Tether {
  /** Left of the rails' middle (-1), on it (0), or right of it (1). */
  readonly side: number;
  /** Their factored level pull, N. */
  readonly x: number;
  readonly y: number;
}

/** Multiples of the design pressure at which a path is cut, so that a root is not looked for far off. */
const cuts = [1 / 16, 1 / 4, 1, 4, 16, 1024];

/** What of a case's slide no direction of the slope changes. */
export class SlideCourse {
  readonly tethers: readonly Tether[];
  /** Pressures at which the contact or a rail's need changes its part, and where a path is cut, Pa, rising. */
  readonly stations: readonly number[];
  /** Where a path ends, Pa. */
  readonly end: number;

  constructor(
    readonly sliding: SlidingTerms,
    readonly wind: SlidingWind,
    readonly design: number,
  ) {
    this.tethers = tethersOf(sliding);
    const found = kinks(sliding, wind);
    if (this.tethers.some(({ side }) => side === 0)) found.push(this.needsMeet());
    const cut = cuts.map((multiple) => multiple * design);
    this.end = Math.max(...cut);
    this.stations = [...found.filter((q) => q > 0 && q < this.end), ...cut].sort((a, b) => a - b);
  }

  /** Pressure at which both rails need their tethers alike. */
  private needsMeet(): number {
    const { right, left, terms } = this.sliding;
    const { wind: factor } = terms.combination;
    const { turnRight, turnLeft } = this.wind;
    return meeting(asked(right, factor * turnRight), asked(left, factor * turnLeft));
  }
}

function tethersOf({ terms: { holding, combination } }: SlidingTerms): Tether[] {
  const alike = new Map<string, Tether>();
  for (const { x: place, pull, toward } of holding.anchors) {
    if (!pullsSideways({ toward })) continue;
    const side = Math.sign(place);
    const key = `${side} ${toward[0]} ${toward[1]}`;
    const { x, y } = alike.get(key) ?? { x: 0, y: 0 };
    const factored = combination.anchor * pull;
    alike.set(key, { side, x: x + factored * toward[0], y: y + factored * toward[1] });
  }
  return [...alike.values()];
}
