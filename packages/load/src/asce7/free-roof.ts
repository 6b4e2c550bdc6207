import { cite, judged } from "@hoopstay/core";

export const freeRoofCitation = cite(
  "bnbc-2020",
  "figure 6.2.18(b) (ASCE 7-16 figures 27.3-5 and 27.3-7)",
  "read",
);
export const freeRoofJudgement = judged(
  "no arched free roof is published: pitched rows at atan(2 r), 37.5 deg at most, on the half spans",
);

/** One of the four coefficient sets: wind flow clear or obstructed, load case A or B. */
export interface FreeRoofSet {
  readonly id: "clear-A" | "clear-B" | "obstructed-A" | "obstructed-B";
  readonly words: string;
}
export const freeRoofSets: readonly FreeRoofSet[] = [
  { id: "clear-A", words: "open, clear flow, case A" },
  { id: "clear-B", words: "open, clear flow, case B" },
  { id: "obstructed-A", words: "open, obstructed flow, case A" },
  { id: "obstructed-B", words: "open, obstructed flow, case B" },
];

/** Rows by angle: windward and leeward C_N for the four sets in their order. */
const rows: readonly (readonly [number, ...(readonly [number, number])[]])[] = [
  [7.5, [1.1, -0.3], [0.2, -1.2], [-1.6, -1.0], [-0.9, -1.7]],
  [15, [1.1, -0.4], [0.1, -1.1], [-1.2, -1.0], [-0.6, -1.6]],
  [22.5, [1.1, 0.1], [-0.1, -0.8], [-1.2, -1.2], [-0.8, -1.7]],
  [30, [1.3, 0.3], [-0.1, -0.9], [-0.7, -0.7], [-0.2, -1.1]],
  [37.5, [1.3, 0.6], [-0.2, -0.6], [-0.6, -0.6], [-0.3, -0.9]],
];

/** The pitch, deg, at which the rows are read for a rise ratio. */
export const freeRoofAngle = (riseRatio: number): number =>
  Math.min(37.5, Math.max(7.5, (Math.atan(2 * riseRatio) * 180) / Math.PI));

/** C_N of windward and leeward half for one set (0 to 3), linear between the rows. */
export function freeRoofAcross(
  riseRatio: number,
  set: number,
): { windward: number; leeward: number } {
  const angle = freeRoofAngle(riseRatio);
  const upper = Math.max(
    1,
    rows.findIndex(([rowAngle]) => rowAngle >= angle - 1e-12),
  );
  const [lowAngle, ...lowSets] = rows[upper - 1] as (typeof rows)[number];
  const [highAngle, ...highSets] = rows[upper] as (typeof rows)[number];
  const share = (angle - lowAngle) / (highAngle - lowAngle);
  const low = lowSets[set] as readonly [number, number];
  const high = highSets[set] as readonly [number, number];
  return {
    windward: low[0] + share * (high[0] - low[0]),
    leeward: low[1] + share * (high[1] - low[1]),
  };
}

/** C_N along the ridge up to h, h to 2h and beyond, for the four sets in their order. */
export const freeRoofAlong: readonly (readonly [number, number, number])[] = [
  [-0.8, -0.6, -0.3],
  [0.8, 0.5, 0.3],
  [-1.2, -0.9, -0.6],
  [0.5, 0.5, 0.3],
];
