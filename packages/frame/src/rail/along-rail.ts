import type { BentRail } from "./bent-rail.ts";

/** Which side of a place is meant where a force or a couple makes a jump. */
export type Side = "left" | "right";

/** Deflection (m), slope, moment (N m) and shear (N) of a rail at one place. */
export interface RailPoint {
  readonly x: number;
  readonly deflection: number;
  readonly slope: number;
  readonly moment: number;
  readonly shear: number;
}

/**
 * The rail at any place, exactly. Outside the rail its ends are continued: the caller keeps to it.
 *
 * @param side which side of a jump, the right one if not said
 */
export function railAt(bent: BentRail, x: number, side: Side = "right"): RailPoint {
  let node = bent.x.length - 1;
  while (node > 0 && ((bent.x[node] as number) > x || (side === "left" && bent.x[node] === x))) {
    node -= 1;
  }
  return pointBeyond(bent, node, x - (bent.x[node] as number));
}

/** The rail a way `h` right of a node, not beyond the next one. */
export function pointBeyond(bent: BentRail, node: number, h: number): RailPoint {
  const { stiffness: bending, uniform: q } = bent;
  const [d, t] = [bent.deflection[node] as number, bent.slope[node] as number];
  const [m, v] = [bent.moment[node] as number, bent.shear[node] as number];
  return {
    x: (bent.x[node] as number) + h,
    deflection: d + h * (t + (h / bending) * (m / 2 + h * (v / 6 + (h * q) / 24))),
    slope: t + (h / bending) * (m + h * (v / 2 + (h * q) / 6)),
    moment: m + h * (v + (h * q) / 2),
    shear: v + h * q,
  };
}
