import type { BaseLine } from "./base-line.ts";
import { type Anchor, pullsSideways } from "./holding.ts";
import { overturning } from "./lift-and-turn.ts";
import { type ActionTable, stride } from "./outcome.ts";
import { TetherRows } from "./tether-rows.ts";

/** A case, and its wind effect per unit of K_d q_h: greater than in any other case. m2 or m3. */
export interface Extreme {
  readonly index: number;
  readonly effect: number;
}

/** Horizontal wind and uplift of a row that may govern sliding, per unit of K_d q_h, m2. */
export interface SlideRow {
  /** Twice the case, and one more where the arch's horizontal part is left out. */
  readonly row: number;
  readonly h: number;
  readonly v: number;
}

/** What can govern in a table, whatever the weight and the combination. */
export interface Extremes {
  readonly uplift: Extreme;
  /** About each line. */
  readonly moments: readonly Extreme[];
  /**
   * Rows that no other beats both in horizontal wind and in uplift. On friction alone, and with the
   * slope along the wind, the others govern nothing: demand grows with the one, contact falls with
   * the other.
   */
  readonly slides: readonly SlideRow[];
  /** What slanted tethers do in every row, where there are any. */
  readonly tethers: TetherRows | null;
}

/**
 * For lift off and turning the resistance is the same in every case, so the case of greatest wind
 * effect governs.
 */
export function extremesOf(
  table: ActionTable,
  lines: readonly BaseLine[],
  anchors: readonly Anchor[] = [],
): Extremes {
  const moments = lines.map((line) => greatestMoment(table, line));
  const tethers = anchors.some(pullsSideways) ? new TetherRows(table, anchors) : null;
  return { uplift: greatestUplift(table), moments, slides: slideRows(table), tethers };
}

function greatestUplift({ components, count }: ActionTable): Extreme {
  let effect = Number.NEGATIVE_INFINITY;
  let found = 0;
  for (let index = 0, at = 2; index < count; index += 1, at += stride) {
    const fz = components[at] as number;
    if (fz > effect) {
      effect = fz;
      found = index;
    }
  }
  return { index: found, effect };
}

function greatestMoment({ components, count }: ActionTable, line: BaseLine): Extreme {
  const { nx, ny, distance } = line;
  let effect = Number.NEGATIVE_INFINITY;
  let found = 0;
  for (let index = 0, at = 2; index < count; index += 1, at += stride) {
    const moment = overturning.evaluate(
      nx,
      ny,
      components[at + 1] as number,
      components[at + 2] as number,
      components[at] as number,
      distance,
    );
    if (moment > effect) {
      effect = moment;
      found = index;
    }
  }
  return { index: found, effect };
}

function slideRows({ components, count }: ActionTable): SlideRow[] {
  const rows: number[] = [];
  const squares: number[] = [];
  const uplifts: number[] = [];
  let kept = 0;
  const offer = (row: number, square: number, v: number): void => {
    for (let place = kept - 1; place >= 0; place -= 1) {
      if ((squares[place] as number) >= square && (uplifts[place] as number) >= v) return;
    }
    let left = 0;
    for (let place = 0; place < kept; place += 1) {
      const otherSquare = squares[place] as number;
      const otherV = uplifts[place] as number;
      if (otherSquare <= square && otherV <= v) continue;
      rows[left] = rows[place] as number;
      squares[left] = otherSquare;
      uplifts[left] = otherV;
      left += 1;
    }
    rows[left] = row;
    squares[left] = square;
    uplifts[left] = v;
    kept = left + 1;
  };
  for (let index = 0, at = 0; index < count; index += 1, at += stride) {
    const fx = components[at] as number;
    const fy = components[at + 1] as number;
    const fz = components[at + 2] as number;
    const bare = components[at + 6] as number;
    offer(2 * index, fx * fx + fy * fy, fz);
    if (bare !== fx) offer(2 * index + 1, bare * bare + fy * fy, fz);
  }
  const found: SlideRow[] = [];
  for (let place = 0; place < kept; place += 1) {
    const h = Math.sqrt(squares[place] as number);
    found.push({ row: rows[place] as number, h, v: uplifts[place] as number });
  }
  return found;
}
