/**
 * The rule by which a hollow section's wall, corners and torsion constants are computed.
 *
 * - `AISC`: electric-resistance-welded ASTM A500 tube and ASTM A53 pipe
 * - `ASTM A1085`, `ASTM A1065`: full nominal wall by the same specification
 * - `EN 10219-2` cold formed, `EN 10210-2` hot finished
 * - `other`: anything else; computed as `AISC` for caution and marked as not listed
 */
export type Convention =
  | "AISC"
  | "ASTM A1085"
  | "ASTM A1065"
  | "EN 10219-2"
  | "EN 10210-2"
  | "other";

/** Round tube or pipe. Outside diameter and nominal wall in m. */
export interface RoundTube {
  readonly kind: "round";
  readonly outside: number;
  readonly wall: number;
  readonly convention: Convention;
  readonly galvanized: boolean;
}

/** Square or rectangular tube. Outside depth (along y), width (along x), nominal wall, in m. */
export interface RectangularTube {
  readonly kind: "rectangular";
  readonly depth: number;
  readonly width: number;
  readonly wall: number;
  readonly convention: Convention;
  readonly galvanized: boolean;
}

/** Flat bar; the width stands along y. m. */
export interface FlatBar {
  readonly kind: "flat";
  readonly width: number;
  readonly thickness: number;
}

/** Angle. Legs in m: the first stands along y, the second lies along x. */
export interface Angle {
  readonly kind: "angle";
  readonly legs: readonly [upright: number, lying: number];
  readonly thickness: number;
}

/** Solid round bar. Diameter in m. */
export interface RoundBar {
  readonly kind: "bar";
  readonly diameter: number;
}

export type Tube = RoundTube | RectangularTube | FlatBar | Angle | RoundBar;
