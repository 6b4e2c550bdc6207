import { polygonCorners, polygonSides } from "./friction-polygon.ts";
import type { Corner, JointProblem, LateralHold } from "./joint-problem.ts";

/** Rows of the system: six balances, vector sum of friction (two), its limit, then side pulls. */
const sumRow = 6;
export const limitRow = 8;
const fixedRows = 9;

/** Friction below this counts as none: beside the pushes it would be lost in rounding. */
const leastFriction = 2e-3;

/**
 * Unknowns that differ by direction only, one for each corner of the polygon: what one adds to the
 * rows is `base` and its direction times `alongX` and `alongY`. They have no cap.
 */
export interface Fan {
  readonly first: number;
  readonly base: Float64Array;
  readonly alongX: Float64Array;
  readonly alongY: Float64Array;
}

/** A shaft that takes side pull: its anchor, its row, and its fan of pulls. */
interface Shaft {
  readonly anchor: number;
  readonly row: number;
  readonly fan: Fan;
}

/**
 * The equilibrium of one house as columns times unknowns = right side, 0 <= unknown <= cap. Forces
 * are in units of `force`, lengths of `length`, so that the numbers are near 1.
 *
 * The unknowns in order: tension of each tether; what is left over of the friction limit, and of
 * each shaft's side pull; then the fans. A corner's fan is of pushes with friction mu times the
 * push (a push without friction is the mean of opposite ones); one fan is the summed friction over
 * mu; a shaft's fan is its side pull.
 */
export interface JointSystem {
  readonly problem: JointProblem;
  readonly corners: readonly Corner[];
  readonly force: number;
  readonly length: number;
  /** Friction coefficient that counts. */
  readonly friction: number;
  readonly rows: number;
  readonly columns: number;
  /** Columns of the unknowns before the fans. */
  readonly singles: readonly Float64Array[];
  readonly fans: readonly Fan[];
  /** Columns of the fans that have been asked for, by their place behind the singles. */
  readonly fanned: (Float64Array | undefined)[];
  readonly shafts: readonly Shaft[];
  /** Caps of the tethers; nothing else has one. */
  readonly caps: Float64Array;
  /** The right side without wind, slope and friction limit. */
  readonly still: Float64Array;
}

/** The six sums about the origin of a force at a point, in a column of so many rows. */
export function forceAt(
  rows: number,
  fx: number,
  fy: number,
  fz: number,
  at: { readonly x: number; readonly y: number; readonly z?: number },
): Float64Array {
  const { x, y, z = 0 } = at;
  const sums = new Float64Array(rows);
  sums[0] = fx;
  sums[1] = fy;
  sums[2] = fz;
  sums[3] = y * fz - z * fy;
  sums[4] = z * fx - x * fz;
  sums[5] = x * fy - y * fx;
  return sums;
}

/** The cap of an unknown. */
export const capAt = ({ caps }: JointSystem, column: number): number =>
  column < caps.length ? (caps[column] as number) : Number.POSITIVE_INFINITY;

/** What an unknown adds to the rows; not to be written to. */
export function columnAt(
  { singles, fans, fanned, rows }: JointSystem,
  column: number,
): Float64Array {
  if (column < singles.length) return singles[column] as Float64Array;
  const place = column - singles.length;
  const known = fanned[place];
  if (known) return known;
  const side = place % polygonSides;
  const { base, alongX, alongY } = fans[(place - side) / polygonSides] as Fan;
  const dx = polygonCorners[2 * side] as number;
  const dy = polygonCorners[2 * side + 1] as number;
  const made = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    made[row] = (base[row] as number) + dx * (alongX[row] as number) + dy * (alongY[row] as number);
  }
  fanned[place] = made;
  return made;
}

const unitRow = (rows: number, row: number, value = 1): Float64Array => {
  const column = new Float64Array(rows);
  column[row] = value;
  return column;
};

/** @param demand forces of this size act, N: above the weight they become the unit */
export function jointSystem(
  problem: JointProblem,
  corners: readonly Corner[],
  demand = 0,
): JointSystem {
  const { terms, laterals = [] } = problem;
  const { holding, combination, deadNormal } = terms;
  const { anchors, weight } = holding;
  const friction = holding.friction < leastFriction ? 0 : holding.friction;
  const strength = anchors.reduce((sum, { pull }) => sum + combination.anchor * pull, 0);
  const force = Math.max(demand, deadNormal) || strength || 1;
  const length = Math.max(...corners.map(({ x }) => Math.abs(x)));
  const scaled = ({ x, y }: Corner): Corner => ({ x: x / length, y: y / length });
  const sideways = anchors.flatMap((_, anchor) => {
    const lateral = laterals[anchor];
    return lateral && lateral.H > 0 ? [{ anchor, lateral }] : [];
  });
  const rows = fixedRows + sideways.length;
  const singles = anchors.map(({ toward, ...at }) => forceAt(rows, ...toward, scaled(at)));
  singles.push(unitRow(rows, limitRow));
  const first = singles.length + sideways.length;
  const fans: Fan[] = [];
  const addFan = (base: Float64Array, alongX: Float64Array, alongY: Float64Array): Fan => {
    const fan = { first: first + fans.length * polygonSides, base, alongX, alongY };
    fans.push(fan);
    return fan;
  };
  for (const corner of corners) {
    const at = scaled(corner);
    const alongX = forceAt(rows, friction, 0, 0, at);
    const alongY = forceAt(rows, 0, friction, 0, at);
    alongX[sumRow] = 1;
    alongY[sumRow + 1] = 1;
    addFan(forceAt(rows, 0, 0, 1, at), alongX, alongY);
  }
  addFan(unitRow(rows, limitRow), unitRow(rows, sumRow, -1), unitRow(rows, sumRow + 1, -1));
  const balance = { x: weight.x / length, y: weight.y / length };
  const still = forceAt(rows, 0, 0, deadNormal / force, balance);
  const shafts = sideways.map(({ anchor, lateral }, place): Shaft => {
    const row = fixedRows + place;
    const at = scaled(anchors[anchor] as (typeof anchors)[number]);
    (singles[anchor] as Float64Array)[row] = shareOfSide(lateral);
    singles.push(unitRow(rows, row));
    still[row] = (combination.anchor * lateral.H) / force;
    const alongX = forceAt(rows, 1, 0, 0, at);
    const fan = addFan(unitRow(rows, row), alongX, forceAt(rows, 0, 1, 0, at));
    return { anchor, row, fan };
  });
  return {
    problem,
    corners,
    force,
    length,
    friction,
    rows,
    columns: first + fans.length * polygonSides,
    singles,
    fans,
    fanned: [],
    shafts,
    caps: Float64Array.from(anchors, ({ pull }) => (combination.anchor * pull) / force),
    still,
  };
}

/**
 * What a tether's tension takes of its shaft's side pull, from T cos/Q + (T sin + h)/H <= 1. The
 * tether's own part across the shaft and the side pull are added as sizes: their vector sum is
 * never longer, so this is the cautious form.
 */
const shareOfSide = ({ Q, H, cosDelta, sinDelta }: LateralHold): number =>
  (H * cosDelta) / Q + sinDelta;
