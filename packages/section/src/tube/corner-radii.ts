import type { Convention } from "./tube.ts";

/** Slack, m, by which a wall read from text may miss a band edge through rounding. */
const edge = 1e-9;

/**
 * Outside and inside corner radius over wall, used to calculate a square or rectangular tube.
 *
 * AISC and ASTM conventions: 2 and 1 at any wall. EN 10210-2: 1.5 and 1. EN 10219-2: 2 and 1 to
 * 6 mm, 2.5 and 1.5 to 10 mm, 3 and 2 above. The band is that of the nominal wall, also where the
 * section is computed at a tolerance wall.
 *
 * Left out: the radii a mill delivers (EN 10219-2 allows 1.6 to 2.4 t outside up to 6 mm).
 *
 * Source: EN 10219-2:2006 and EN 10210-2:2006, annex B [memory; confirmed against published rows];
 * AISC Shapes Database v15.0 [reproduces 146 rows].
 *
 * @param convention rule of the section
 * @param nominalWall nominal wall, m
 * @returns outside and inside radius over the wall
 * @example cornerRadii("EN 10219-2", 0.008).outside // 2.5, the row 100x100x8.0
 */
export function cornerRadii(convention: Convention, nominalWall: number): CornerRadii {
  if (convention === "EN 10210-2") return hotFinished;
  if (convention !== "EN 10219-2" || nominalWall <= 0.006 + edge) return twoWalls;
  return nominalWall <= 0.01 + edge ? coldFormedTo10 : coldFormedAbove10;
}

/** Corner radii as multiples of the wall. */
export interface CornerRadii {
  readonly outside: number;
  readonly inside: number;
}

const twoWalls: CornerRadii = { outside: 2, inside: 1 };
const coldFormedTo10: CornerRadii = { outside: 2.5, inside: 1.5 };
const coldFormedAbove10: CornerRadii = { outside: 3, inside: 2 };
const hotFinished: CornerRadii = { outside: 1.5, inside: 1 };
