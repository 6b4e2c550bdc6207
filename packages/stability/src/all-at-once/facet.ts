import type { Basis } from "./basis.ts";
import type { JointSystem } from "./joint-system.ts";

/**
 * A proof that a right side cannot be answered: of any that can, the sum of products with `normal`
 * is at most `most`.
 */
export interface Facet {
  readonly normal: Float64Array;
  readonly most: number;
}

export function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let row = 0; row < one.length; row += 1) {
    sum += (one[row] as number) * (other[row] as number);
  }
  return sum;
}

/**
 * The facet of a row whose unknown lies outside its bounds (above: `sign` 1, below: -1) and which
 * no column can bring back: what tethers alone can add to it, all of them that add at their caps.
 */
export function facetOf(system: JointSystem, row: Float64Array, sign: 1 | -1): Facet {
  const normal = row.map((one) => sign * one);
  const { caps, singles } = system;
  let most = 0;
  for (let tether = 0; tether < caps.length; tether += 1) {
    most += Math.max(0, dot(normal, singles[tether] as Float64Array)) * (caps[tether] as number);
  }
  return { normal, most };
}

/** What rounding may make of a facet, in units near 1: nearer than this it proves nothing. */
const clear = 1e-7;

/** Whether a right side lies clearly beyond a facet: then nothing answers it. */
export function beyond({ normal, most }: Facet, right: Float64Array): boolean {
  const size = normal.reduce((sum, one) => Math.max(sum, Math.abs(one)), 1);
  return dot(normal, right) - most > clear * size;
}

/** A row of a basis' inverse. */
export const rowOf = ({ inverse, members: { length } }: Basis, row: number): Float64Array =>
  inverse.subarray(row * length, (row + 1) * length);
