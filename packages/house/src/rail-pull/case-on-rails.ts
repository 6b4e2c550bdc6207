import { derived, formula, judged } from "@hoopstay/core";
import {
  caseStride,
  diagonalShare,
  endWallMoments,
  insideEndWallMoments,
  type RoofLoad,
  type Sense,
  type Shell,
  type WindCase,
} from "@hoopstay/load";
import type { LoadSet } from "../review/evaluate.ts";

export type RailSide = "right" | "left";
export const railSides: readonly RailSide[] = ["right", "left"];

/** How the moments of the end walls about the ground reach the rails. */
export type EndMomentWay = "end bays" | "all hoops";
export const endMomentWays: readonly EndMomentWay[] = ["end bays", "all hoops"];
export const endMomentWaysCitation = judged(
  "end walls hand their moment to their own end bay, or over the frame to all hoops; worse kept",
);

export const railUplift = formula({
  id: "rail-uplift",
  symbol: "F_rail",
  name: "uplift of one rail: half of all, and the couple that tips the house across",
  measure: "force",
  arguments: [
    ["F_z", "uplift", "force"],
    ["n", "1 for the right rail, -1 for the left", "ratio"],
    ["M_y", "moment about the y axis", "moment"],
    ["b", "span, centre to centre of the feet", "length"],
  ],
  expression: "F_z / 2 - n * M_y / b",
  citation: derived("balance of two rails a span apart"),
  evaluate: (uplift, side, moment, span) => uplift / 2 - (side * moment) / span,
});

export const sideSign = { right: 1, left: -1 } as const satisfies Record<RailSide, number>;

/** A roof pressed by wind along the ridge, by zones. */
export interface RoofAlong {
  readonly roof: RoofLoad;
  readonly sense: Sense;
}

/**
 * One load case on the two rails, per unit of K_d q_h (m2, m3): what lies evenly along each rail, and
 * what both rails share by halves.
 */
export interface CaseOnRails {
  readonly even: Readonly<Record<RailSide, number>>;
  /** Uplift of the roof by its zones along the house; the half of it to each rail. */
  readonly roof: RoofAlong | null;
  /** Moment of boxes, frame and friction about the x axis: always over all hoops. */
  readonly rest: number;
  /** Moments of the end walls about the x axis. */
  readonly front: number;
  readonly back: number;
}

/**
 * A load case split to the rails. Its forces on both rails add up to the case's uplift and its
 * moments about the x and the y axis; side forces and drag are no load of this model.
 *
 * @param span centre to centre of the hoop feet, m
 */
export function caseOnRails(
  { surfaces, table, covering, ends }: LoadSet,
  shell: Shell,
  span: number,
  index: number,
): CaseOnRails {
  const one = table.cases[index] as WindCase;
  const at = index * caseStride;
  const [fz, mx, my] = [2, 3, 4].map((place) => table.components[at + place]) as [
    number,
    number,
    number,
  ];
  const share = one.number === 1 ? 1 : diagonalShare.value;
  const inside = insideEndWallMoments(shell, ends);
  let front = one.inside * (covering === "bare" ? 0 : inside.front);
  let back = one.inside * (covering === "bare" ? 0 : inside.back);
  for (const axis of ["across", "along"] as const) {
    const parent = one[axis];
    if (!parent) continue;
    const walls = endWallMoments(shell, covering, ends, axis, parent.sense);
    front += share * walls.front;
    back += share * walls.back;
  }
  const lifting = one.vertical === "along" ? one.along : null;
  const byZones = lifting?.set && lifting.set.zones.length > 1 ? lifting : null;
  const evenly = byZones ? one.inside * surfaces.inside.fz : fz;
  const zoned = byZones ? byZones.load.mxVertical : 0;
  return {
    even: {
      right: railUplift.evaluate(evenly, sideSign.right, my, span),
      left: railUplift.evaluate(evenly, sideSign.left, my, span),
    },
    roof: byZones?.set ? { roof: byZones.set, sense: byZones.sense } : null,
    rest: mx - zoned - front - back,
    front,
    back,
  };
}
