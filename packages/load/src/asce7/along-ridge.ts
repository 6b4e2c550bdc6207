import { cite, formula, judged } from "@hoopstay/core";

export const alongRidgeCitation = cite(
  "bnbc-2020",
  "figure 6.2.6, wind parallel to ridge (ASCE 7-16 figure 27.3-1)",
  "read",
);
export const alongZoneCitation = judged(
  "zones laid out with the crown height, since the standard gives no eave here; safe side",
);

export const alongZoneLength = formula({
  id: "along-zone-length",
  symbol: "l",
  name: "length of a zone along the ridge, from k_1 to k_2 crown heights behind the windward end",
  measure: "length",
  arguments: [
    ["k_1", "where the zone begins, in crown heights", "ratio"],
    ["k_2", "where it ends, in crown heights; the far end of the house at the latest", "ratio"],
    ["z_c", "height of the crown: stands for h of the figure", "length"],
    ["L", "length of the shell", "length"],
  ],
  expression: "min(k_2 * z_c, L) - min(k_1 * z_c, L)",
  citation: alongZoneCitation,
  evaluate: (near, far, crown, length) =>
    Math.min(far * crown, length) - Math.min(near * crown, length),
});

/** A stretch of roof along the wind: where it begins, in crown heights, and its coefficient. */
export interface AlongStretch {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly coefficient: number;
}

const low = [-0.9, -0.9, -0.5, -0.3] as const;
const high = [-1.3, -0.7, -0.7, -0.7] as const;

/**
 * Suction along the ridge by distance from the windward end, in multiples of the crown height;
 * linear in h/L between 0.5 and 1, zone by zone.
 *
 * @param heightRatio mean roof height over covered length
 */
export function alongStretches(heightRatio: number): AlongStretch[] {
  const share = Math.min(1, Math.max(0, (heightRatio - 0.5) / 0.5));
  const value = (zone: 0 | 1 | 2 | 3): number => low[zone] + share * (high[zone] - low[zone]);
  return [
    { name: "roof to h/2", from: 0, to: 0.5, coefficient: value(0) },
    { name: "roof h/2 to h", from: 0.5, to: 1, coefficient: value(1) },
    { name: "roof h to 2h", from: 1, to: 2, coefficient: value(2) },
    { name: "roof beyond 2h", from: 2, to: Number.POSITIVE_INFINITY, coefficient: value(3) },
  ];
}

/** The second value of the figure, everywhere. */
export const lightSuction = -0.18;
