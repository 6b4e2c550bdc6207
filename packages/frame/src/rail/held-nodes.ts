/**
 * What holds the nodes of a rail while no support changes its part: springs or rigid holds, forces
 * of supports that give at their cap, and forces that springs have before they are pressed.
 */
export interface HeldNodes {
  /** How many nodes are held against movement. */
  count: number;
  /** The held nodes, from left to right; only the first `count` count. */
  readonly nodes: Int32Array;
  /** Spring stiffness at each node, N/m; infinite where rigid, zero where not held. */
  readonly stiffness: Float64Array;
  /** Forces at each node that do not depend on its movement, N, up positive. */
  readonly constant: Float64Array;
  /** Force of each node's springs where the rail is undeflected, N, up positive. */
  readonly preload: Float64Array;
}

export const heldNodes = (count: number): HeldNodes => ({
  count: 0,
  nodes: new Int32Array(count),
  stiffness: new Float64Array(count),
  constant: new Float64Array(count),
  preload: new Float64Array(count),
});
