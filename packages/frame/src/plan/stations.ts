import type { Base } from "./base.ts";

/** Places nearer than this part of the length (0.03 mm on 30 m) are one station. */
const samePlace = 1e-6;

/** Places where something stands on the rails, and their ends; both rails have the same. */
export interface Stations {
  /** Places in rising order, m. */
  readonly y: Float64Array;
  /** Station of each tie between the rails: hoops first, cross members after them. */
  readonly ofTie: Int32Array;
  readonly ofAnchor: Int32Array;
}

export function stationsOf({ length, hoops, crossMembers, sideHold }: Base): Stations {
  const ties = [...hoops, ...crossMembers].map(({ y }) => y);
  const anchors = sideHold === "evenly" ? [] : sideHold.map(({ y }) => y);
  const near = samePlace * length;
  const all = [0, length, ...ties, ...anchors].sort((a, b) => a - b);
  const kept: number[] = [];
  for (const y of all) if (kept.length === 0 || y - (kept.at(-1) as number) > near) kept.push(y);
  kept[kept.length - 1] = length;
  const stationAt = (y: number): number => {
    let station = kept.length - 1;
    while ((kept[station] as number) > y + near) station -= 1;
    return station;
  };
  return {
    y: Float64Array.from(kept),
    ofTie: Int32Array.from(ties, stationAt),
    ofAnchor: Int32Array.from(anchors, stationAt),
  };
}
