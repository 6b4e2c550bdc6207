import { type Basis, basicValues, copyOf, exchange, isBasic } from "./basis.ts";
import { dot, type Facet, facetOf, rowOf } from "./facet.ts";
import { polygonCorners, polygonSides } from "./friction-polygon.ts";
import { columnAt } from "./joint-system.ts";
import { rebuild } from "./rebuild.ts";

/** What a basic unknown may lie outside its bounds by, in units near 1. */
const slack = 1e-12;
/** What the rows of an answer may miss their right side by: rounding of the inverse. */
const leastMiss = 3e-10;
const leastPivot = 1e-9;
/** What a basic unknown may lie outside by where no exchange can mend it: rounding. */
const rounding = 1e-10;
/** No walk met has a hundred, and none goes round in circles; one that did would be lost. */
const mostExchanges = 1000;
/** Exchanges after which rounding is taken out of the inverse; few walks are as long. */
const rebuiltEvery = 25;

/** A basis within its bounds at the right side; a facet beyond which it lies; or neither found. */
export interface Walked {
  readonly held: Basis | null;
  readonly facet: Facet | null;
}

const lost: Walked = { held: null, facet: null };

/** Whether a basis answers a right side with every unknown within its bounds. */
export function answers({ inverse, atCaps, caps }: Basis, right: Float64Array): boolean {
  const rows = right.length;
  for (let row = 0; row < rows; row += 1) {
    let value = 0;
    for (let of = 0; of < rows; of += 1) {
      value +=
        (inverse[row * rows + of] as number) * ((right[of] as number) - (atCaps[of] as number));
    }
    if (!(value >= -slack && value <= (caps[row] as number) + slack)) return false;
  }
  return true;
}

/**
 * From one basis to one that answers the right side: the unknown farthest outside its bounds leaves
 * for the one that moves it best. Where none moves it, its row is the facet. (The dual simplex
 * method without an objective.) The basis handed in stays as it is.
 */
export function walk(from: Basis, right: Float64Array): Walked {
  const basis = copyOf(from);
  const values = new Float64Array(right.length);
  let rebuilt = false;
  for (let turn = 0; turn < mostExchanges; turn += 1) {
    if (turn % rebuiltEvery === rebuiltEvery - 1) rebuild(basis);
    basicValues(basis, right, values);
    const row = farthestOutside(basis.caps, values);
    const sign = row >= 0 && (values[row] as number) > 0 ? 1 : -1;
    const entering = row >= 0 ? bestUnknown(basis, rowOf(basis, row), sign) : -1;
    if (row >= 0 && entering < 0 && !within(basis.caps, values, rounding)) {
      return { held: null, facet: facetOf(basis.system, rowOf(basis, row), sign) };
    }
    if (entering < 0) {
      if (missOf(basis, right, values) <= leastMiss) return { held: basis, facet: null };
      if (rebuilt) return lost;
      rebuild(basis);
      rebuilt = true;
      continue;
    }
    exchange(basis, row, entering, sign > 0);
    rebuilt = false;
  }
  return lost;
}

function within(caps: Float64Array, values: Float64Array, by: number): boolean {
  return values.every((value, row) => value >= -by && value <= (caps[row] as number) + by);
}

/** The row farthest outside its bounds. */
function farthestOutside(caps: Float64Array, values: Float64Array): number {
  let [found, most] = [-1, slack];
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row] as number;
    const outside = Math.max(-value, value - (caps[row] as number));
    if (outside > most) {
      most = outside;
      found = row;
    }
  }
  return found;
}

/** The unknown that moves a row's basic one most: down where `sign` is 1, up where it is -1. */
function bestUnknown({ system, standing }: Basis, row: Float64Array, sign: 1 | -1): number {
  const { singles, fans } = system;
  let [best, most] = [-1, leastPivot];
  for (let one = 0; one < singles.length; one += 1) {
    const stands = standing[one] as number;
    if (stands === isBasic) continue;
    const seen = sign * dot(row, singles[one] as Float64Array);
    const moves = stands === 0 ? seen : -seen;
    if (moves > most) {
      most = moves;
      best = one;
    }
  }
  for (const { first, base, alongX, alongY } of fans) {
    const x = sign * dot(row, alongX);
    const y = sign * dot(row, alongY);
    const side = nearestSide(x, y);
    const moves =
      sign * dot(row, base) +
      x * (polygonCorners[2 * side] as number) +
      y * (polygonCorners[2 * side + 1] as number);
    if (moves > most && standing[first + side] !== isBasic) {
      most = moves;
      best = first + side;
    }
  }
  return best;
}

/** The corner of the polygon farthest along a direction. */
const nearestSide = (x: number, y: number): number =>
  (Math.round((Math.atan2(y, x) * polygonSides) / (2 * Math.PI)) + polygonSides) % polygonSides;

/** What the unknowns at their values and at their caps miss the right side by, at most. */
function missOf(basis: Basis, right: Float64Array, values: Float64Array): number {
  const miss = right.slice();
  for (let row = 0; row < miss.length; row += 1) {
    miss[row] = (miss[row] as number) - (basis.atCaps[row] as number);
  }
  for (let of = 0; of < miss.length; of += 1) {
    const member = basis.members[of] as number;
    if (member < 0) continue;
    const value = values[of] as number;
    const column = columnAt(basis.system, member);
    for (let row = 0; row < miss.length; row += 1) {
      miss[row] = (miss[row] as number) - value * (column[row] as number);
    }
  }
  return miss.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
}
