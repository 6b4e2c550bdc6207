/** A symmetric band matrix: entry (i, i + k), k from 0 to `reach`, at i (reach + 1) + k. */
export interface Band {
  readonly size: number;
  readonly reach: number;
  readonly entries: Float64Array;
}

export const bandOf = (size: number, reach: number): Band => ({
  size,
  reach,
  entries: new Float64Array(size * (reach + 1)),
});

/** Adds to entry (row, column) and so to its mirror image. */
export function addTo({ reach, entries }: Band, row: number, column: number, value: number): void {
  const first = Math.min(row, column);
  const place = first * (reach + 1) + Math.abs(column - row);
  entries[place] = (entries[place] as number) + value;
}

/** Makes an unknown zero: its row and column become those of the unit matrix. */
export function pin({ size, reach, entries }: Band, unknown: number): void {
  const width = reach + 1;
  for (let k = 0; k <= reach; k += 1) {
    if (unknown + k < size) entries[unknown * width + k] = k === 0 ? 1 : 0;
    if (k > 0 && unknown - k >= 0) entries[(unknown - k) * width + k] = 0;
  }
}

/** What is left of the right-hand side: `rest` = `given` - matrix times `unknown`. */
export function residual(
  { size, reach, entries }: Band,
  given: Float64Array,
  unknown: Float64Array,
  rest: Float64Array,
): void {
  const width = reach + 1;
  rest.set(given);
  for (let i = 0; i < size; i += 1) {
    const row = i * width;
    const here = unknown[i] as number;
    const last = Math.min(reach, size - 1 - i);
    let sum = (entries[row] as number) * here;
    for (let k = 1; k <= last; k += 1) {
      const entry = entries[row + k] as number;
      sum += entry * (unknown[i + k] as number);
      rest[i + k] = (rest[i + k] as number) - entry * here;
    }
    rest[i] = (rest[i] as number) - sum;
  }
}
