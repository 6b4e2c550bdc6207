import type { Band } from "./band.ts";

/**
 * Factors of a band matrix whose rows were exchanged for the best pivots. Entry (i, j) stands at
 * i width + j - i + reach: below the diagonal what was taken of row j, the rest in upper form.
 */
export interface BandLU {
  readonly size: number;
  readonly reach: number;
  readonly width: number;
  readonly entries: Float64Array;
  /** Row that was exchanged with row i before column i was eliminated. */
  readonly exchanged: Int32Array;
  /** Last column of each row of the upper form. */
  readonly end: Int32Array;
  /** Least pivot as a part of the greatest entry of its row: zero where the matrix is singular. */
  readonly least: number;
}

/** Factorises a symmetric band; pivots are picked by their part of the greatest entry of their row. */
export function factorise({ size, reach, entries: given }: Band): BandLU {
  const width = 3 * reach + 1;
  const entries = new Float64Array(size * width);
  const exchanged = new Int32Array(size);
  const end = new Int32Array(size);
  const scale = new Float64Array(size);
  let least = 1;
  for (let i = 0; i < size; i += 1) {
    end[i] = Math.min(size - 1, i + reach);
    for (let j = i; j <= Math.min(size - 1, i + reach); j += 1) {
      const entry = given[i * (reach + 1) + j - i] as number;
      entries[i * width + j - i + reach] = entry;
      entries[j * width + i - j + reach] = entry;
      scale[i] = Math.max(scale[i] as number, Math.abs(entry));
      scale[j] = Math.max(scale[j] as number, Math.abs(entry));
    }
  }
  for (let column = 0; column < size; column += 1) {
    const last = Math.min(size - 1, column + reach);
    let pivot = column;
    let greatest = -1;
    for (let row = column; row <= last; row += 1) {
      const part =
        Math.abs(entries[row * width + column - row + reach] as number) / (scale[row] as number);
      if (part > greatest) {
        greatest = part;
        pivot = row;
      }
    }
    exchanged[column] = pivot;
    least = Math.min(least, greatest);
    if (pivot !== column) exchange(entries, width, reach, end, scale, column, pivot);
    const own = column * width + reach;
    const upTo = end[column] as number;
    for (let row = column + 1; row <= last; row += 1) {
      const at = row * width + column - row + reach;
      const entry = entries[at] as number;
      if (entry === 0) continue;
      const part = entry / (entries[own] as number);
      entries[at] = part;
      const shift = at - own;
      for (let k = own + 1; k <= own + upTo - column; k += 1) {
        entries[k + shift] = (entries[k + shift] as number) - part * (entries[k] as number);
      }
      if (upTo > (end[row] as number)) end[row] = upTo;
    }
  }
  return { size, reach, width, entries, exchanged, end, least };
}

/** Exchanges two rows from a column on. */
function exchange(
  entries: Float64Array,
  width: number,
  reach: number,
  end: Int32Array,
  scale: Float64Array,
  column: number,
  pivot: number,
): void {
  const upTo = Math.max(end[column] as number, end[pivot] as number);
  const shift = (pivot - column) * (width - 1);
  for (let k = column * width + reach; k <= column * width + upTo - column + reach; k += 1) {
    const kept = entries[k] as number;
    entries[k] = entries[k + shift] as number;
    entries[k + shift] = kept;
  }
  [end[column], end[pivot]] = [end[pivot] as number, end[column] as number];
  [scale[column], scale[pivot]] = [scale[pivot] as number, scale[column] as number];
}

/** Solves with the factors; the right-hand side becomes the solution. */
export function substitute(
  { size, reach, width, entries, exchanged, end }: BandLU,
  unknown: Float64Array,
): void {
  for (let i = 0; i < size; i += 1) {
    const pivot = exchanged[i] as number;
    const here = unknown[pivot] as number;
    unknown[pivot] = unknown[i] as number;
    unknown[i] = here;
    const last = Math.min(size - 1, i + reach);
    for (let row = i + 1; row <= last; row += 1) {
      const part = entries[row * width + i - row + reach] as number;
      unknown[row] = (unknown[row] as number) - part * here;
    }
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    const own = i * width + reach;
    let here = unknown[i] as number;
    for (let j = i + 1; j <= (end[i] as number); j += 1) {
      here -= (entries[own + j - i] as number) * (unknown[j] as number);
    }
    unknown[i] = here / (entries[own] as number);
  }
}
