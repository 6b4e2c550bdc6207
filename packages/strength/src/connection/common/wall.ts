import { refuse, requireLength, requireStrength } from "./require.ts";

/** A wall or plate that a connection loads: thickness to compute with, m, and steel, Pa. */
export interface Wall {
  /** Design wall of a tube (`designWallOf`), thickness of a plate. */
  readonly wall: number;
  /** F_y. */
  readonly yieldStrength: number;
  /** F_u. */
  readonly tensileStrength: number;
}

/** Refuses a wall that cannot exist. `what` names it: "the stub". */
export function requireWall({ wall, yieldStrength, tensileStrength }: Wall, what: string): void {
  requireLength(wall, `a wall of ${what}`);
  requireStrength(yieldStrength, `a yield strength of ${what}`);
  requireStrength(tensileStrength, `a tensile strength of ${what}`);
  if (tensileStrength >= yieldStrength) return;
  const expected = `a tensile strength of ${what} not below its yield strength`;
  refuse("sizes-disagree", expected, tensileStrength, "The two may have been exchanged.");
}
