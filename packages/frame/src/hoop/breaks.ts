import type { Hoop, HoopLoad } from "./hoop.ts";
import { jointPlaces, samePlace } from "./hoop-input.ts";
import type { HoopLine } from "./hoop-line.ts";

/** Greatest turn between two breaks, rad: up to there the quadrature is exact to 15 digits. */
const greatestTurn = Math.PI / 2;

/**
 * The places between which a hoop is smooth: ends of its pieces, joints, ends of loads, and more of
 * them on long arcs. Rising; of places that are one, that of the piece or the joint is kept.
 */
export function breakPlaces(hoop: Hoop, loads: readonly HoopLoad[]): Float64Array {
  const near = samePlace * hoop.line.length;
  const kept: number[] = [];
  const add = (s: number): void => {
    for (const other of kept) if (Math.abs(other - s) <= near) return;
    kept.push(s);
  };
  for (const s of hoop.line.start) add(s);
  for (const s of jointPlaces(hoop)) add(s);
  for (const load of loads) {
    if (load.kind === "point") add(load.s);
    if (load.kind !== "normal") continue;
    add(load.from);
    add(load.to);
  }
  kept.sort((a, b) => a - b);
  return splitArcs(hoop.line, kept);
}

function splitArcs({ start, curvature }: HoopLine, places: readonly number[]): Float64Array {
  const split: number[] = [];
  let piece = 0;
  for (let i = 0; i + 1 < places.length; i += 1) {
    const from = places[i] as number;
    const length = (places[i + 1] as number) - from;
    while ((start[piece + 1] as number) <= from) piece += 1;
    const turn = length * (curvature[piece] as number);
    const parts = Math.max(1, Math.ceil(turn / greatestTurn - 1e-9));
    for (let part = 0; part < parts; part += 1) split.push(from + (length * part) / parts);
  }
  split.push(places[places.length - 1] as number);
  return Float64Array.from(split);
}

/** The break at a place that is one. */
export function breakAt(places: Float64Array, s: number): number {
  let [low, high] = [0, places.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((places[middle] as number) <= s) low = middle;
    else high = middle;
  }
  return s - (places[low] as number) <= (places[high] as number) - s ? low : high;
}
