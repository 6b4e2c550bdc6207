import type { Rail, RailSupport } from "./rail.ts";
import { samePlace } from "./rail-input.ts";

/** The nodes of a rail: its ends, and every place where it is loaded or supported. */
export interface RailNodes {
  /** Places in rising order, m. */
  readonly x: Float64Array;
  /** Node of each place where the rail may be loaded. */
  readonly ofPlace: Int32Array;
  /** Node of each support. */
  readonly ofSupport: Int32Array;
}

/** Makes the nodes; places nearer than a millionth of the length to the first of a node fall into it. */
export function railNodes(
  rail: Rail,
  places: readonly number[],
  supports: readonly RailSupport[],
): RailNodes {
  const near = samePlace * rail.length;
  const all = [0, rail.length, ...places, ...supports.map(({ x }) => x)].sort((a, b) => a - b);
  const kept: number[] = [];
  for (const x of all) if (kept.length === 0 || x - (kept.at(-1) as number) > near) kept.push(x);
  const nodeAt = (x: number): number => kept.findLastIndex((first) => first <= x);
  const nodes = Float64Array.from(kept);
  nodes[kept.length - 1] = rail.length;
  return {
    x: nodes,
    ofPlace: Int32Array.from(places, nodeAt),
    ofSupport: Int32Array.from(supports, ({ x }) => nodeAt(x)),
  };
}
