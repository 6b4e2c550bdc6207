import { formula, judged } from "@hoopstay/core";

export type TurnCheck = "tip-right" | "tip-left" | "tip-front" | "tip-back";
export type CheckId = "lift" | TurnCheck | "slide";

export const checkIds: readonly CheckId[] = [
  "lift",
  "tip-right",
  "tip-left",
  "tip-front",
  "tip-back",
  "slide",
];

/** A line on the ground the house could turn over: outward normal and distance from the origin, m. */
export interface BaseLine {
  readonly check: TurnCheck;
  readonly nx: 1 | 0 | -1;
  readonly ny: 1 | 0 | -1;
  readonly distance: number;
  /** Whether an end line stands at the rail's end or moved in to the middle of its bearing. */
  readonly moved: boolean;
}

/** Where the rails bear, m and Pa. Ends are measured from the middle of the house. */
export interface Bearing {
  readonly halfSpan: number;
  readonly front: number;
  readonly back: number;
  readonly railWidth: number;
  readonly allowable: number;
}

export const bearingInset = formula({
  id: "bearing-inset",
  symbol: "a_q",
  name: "inset of the end line: middle of the pressed length of both rails",
  measure: "length",
  arguments: [
    ["N", "low weight", "force"],
    ["w_r", "width of the rail", "length"],
    ["q_allow", "allowable bearing pressure", "pressure"],
  ],
  expression: "N / (4 * w_r * q_allow)",
  citation: judged("tubes sink in turf: the weight turns about the middle of the pressed length"),
  evaluate: (weight, width, allowable) => weight / (4 * width * allowable),
});

/**
 * The base lines of a house: the two rails' centre lines and the two ends of their bearing. The
 * ends are moved inward by the bearing inset; an anchored house runs the unmoved ends too.
 */
export function baseLines(bearing: Bearing, lowWeight: number, anchored: boolean): BaseLine[] {
  const { halfSpan, front, back, railWidth, allowable } = bearing;
  const inset = bearingInset.evaluate(lowWeight, railWidth, allowable);
  const lines: BaseLine[] = [
    { check: "tip-right", nx: 1, ny: 0, distance: halfSpan, moved: false },
    { check: "tip-left", nx: -1, ny: 0, distance: halfSpan, moved: false },
    { check: "tip-front", nx: 0, ny: 1, distance: front - inset, moved: true },
    { check: "tip-back", nx: 0, ny: -1, distance: back - inset, moved: true },
  ];
  if (anchored) {
    lines.push({ check: "tip-front", nx: 0, ny: 1, distance: front, moved: false });
    lines.push({ check: "tip-back", nx: 0, ny: -1, distance: back, moved: false });
  }
  return lines;
}
