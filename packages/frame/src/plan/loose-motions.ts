import { type LooseMotion, looseMotions, type SideHold } from "./base.ts";
import type { Stations } from "./stations.ts";
import { springsEach } from "./tie-springs.ts";

/** Stiffness against a motion below this part of its own diagonal entry is none. */
const rounding = 1e-10;
const count = looseMotions.length;

/**
 * Ways in which the base can move with its rails stiff: what ties and anchors do against the six
 * motions, eliminated with the stiffest first. It depends on nothing that bends, so it tells sharply
 * whether a base is held. Where the side is held evenly, sway and turn are not asked: the line load
 * balances every force in them.
 */
export function looseMotionsOf(
  { y, ofTie, ofAnchor }: Stations,
  springs: Float64Array,
  sideHold: SideHold,
): LooseMotion[] {
  const matrix = new Float64Array(count * count);
  const add = (i: number, j: number, value: number): void => {
    matrix[i * count + j] = (matrix[i * count + j] as number) + value;
    if (i !== j) matrix[j * count + i] = (matrix[j * count + i] as number) + value;
  };
  const along = (station: number): number =>
    (2 * (y[station] as number)) / (y[y.length - 1] as number) - 1;
  ofTie.forEach((station, tie) => {
    const t = along(station);
    const k = (i: number): number => springs[springsEach * tie + i] as number;
    add(2, 2, k(0));
    add(2, 3, t * k(0));
    add(3, 3, t * t * k(0));
    add(2, 4, k(1));
    add(3, 4, t * k(1));
    add(2, 5, k(2));
    add(3, 5, t * k(2));
    add(4, 4, k(3));
    add(4, 5, k(4));
    add(5, 5, k(5));
  });
  if (sideHold === "evenly") return eliminate(matrix, [2, 3, 4, 5]);
  sideHold.forEach(({ rail, stiffness }, anchor) => {
    const t = along(ofAnchor[anchor] as number);
    const half = rail === "left" ? -0.5 : 0.5;
    const moved = [1, t, half, half * t];
    for (let i = 0; i < moved.length; i += 1) {
      for (let j = i; j < moved.length; j += 1) {
        add(i, j, stiffness * (moved[i] as number) * (moved[j] as number));
      }
    }
  });
  return eliminate(matrix, [0, 1, 2, 3, 4, 5]);
}

/** Eliminates motion after motion; those left when no stiffness remains are loose. */
function eliminate(matrix: Float64Array, left: number[]): LooseMotion[] {
  const at = (i: number, j: number): number => matrix[i * count + j] as number;
  const own = looseMotions.map((_, i) => at(i, i));
  while (left.length > 0) {
    const parts = left.map((i) => ((own[i] as number) > 0 ? at(i, i) / (own[i] as number) : 0));
    const greatest = Math.max(...parts);
    if (greatest <= rounding) break;
    const [pivot = 0] = left.splice(parts.indexOf(greatest), 1);
    for (const i of left) {
      const part = at(i, pivot) / at(pivot, pivot);
      for (const j of left) matrix[i * count + j] = at(i, j) - part * at(pivot, j);
    }
  }
  return left.map((i) => looseMotions[i] as LooseMotion);
}
