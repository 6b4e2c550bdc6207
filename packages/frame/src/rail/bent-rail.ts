/** A rail in equilibrium: where it lies and what it carries, at its nodes. */
export interface BentRail {
  /** Places of the nodes, m. */
  readonly x: Float64Array;
  /** Bending stiffness E I, N m2. */
  readonly stiffness: number;
  /** Uniform load, N/m, up positive. */
  uniform: number;
  /** Deflection, m, up positive. */
  readonly deflection: Float64Array;
  readonly slope: Float64Array;
  /** Bending moment just right of each node, N m, sagging positive. */
  readonly moment: Float64Array;
  /** Shear just right of each node, N: the sum of all upward forces up to there. */
  readonly shear: Float64Array;
  /** Force of what holds the node, N, up positive; zero where nothing does. */
  readonly reaction: Float64Array;
}

export const bentRail = (x: Float64Array, stiffness: number): BentRail => ({
  x,
  stiffness,
  uniform: 0,
  deflection: new Float64Array(x.length),
  slope: new Float64Array(x.length),
  moment: new Float64Array(x.length),
  shear: new Float64Array(x.length),
  reaction: new Float64Array(x.length),
});
