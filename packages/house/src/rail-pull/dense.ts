/** A square matrix in L and U with its row order, ready to solve with. */
export interface Factors {
  readonly size: number;
  readonly rows: Float64Array;
  readonly order: Int32Array;
}

/** Smallest pivot, as a part of the greatest entry of its row, of a matrix that can be solved. */
const leastPivot = 1e-12;

let greatest = new Float64Array(0);

/** Factorises a matrix, row by row in `rows`, in place; null where it is singular. */
export function factorise(rows: Float64Array, size: number): Factors | null {
  const order = new Int32Array(size);
  if (greatest.length < size) greatest = new Float64Array(2 * size);
  for (let i = 0; i < size; i += 1) {
    order[i] = i;
    greatest[i] = 0;
    for (let j = 0; j < size; j += 1) {
      const entry = Math.abs(rows[i * size + j] as number);
      if (entry > (greatest[i] as number)) greatest[i] = entry;
    }
  }
  for (let step = 0; step < size; step += 1) {
    let best = step;
    for (let i = step + 1; i < size; i += 1) {
      const here = Math.abs(rows[i * size + step] as number);
      if (here > Math.abs(rows[best * size + step] as number)) best = i;
    }
    if (best !== step) swap(rows, size, order, step, best);
    const pivot = rows[step * size + step] as number;
    if (!(Math.abs(pivot) > leastPivot * (greatest[step] as number))) return null;
    for (let i = step + 1; i < size; i += 1) {
      const times = (rows[i * size + step] as number) / pivot;
      rows[i * size + step] = times;
      if (times === 0) continue;
      for (let j = step + 1; j < size; j += 1) {
        rows[i * size + j] =
          (rows[i * size + j] as number) - times * (rows[step * size + j] as number);
      }
    }
  }
  return { size, rows, order };
}

function swap(rows: Float64Array, size: number, order: Int32Array, a: number, b: number): void {
  for (let j = 0; j < size; j += 1) {
    const kept = rows[a * size + j] as number;
    rows[a * size + j] = rows[b * size + j] as number;
    rows[b * size + j] = kept;
  }
  for (const column of [order, greatest]) {
    const kept = column[a] as number;
    column[a] = column[b] as number;
    column[b] = kept;
  }
}

/** Solves for one right-hand side, into `unknown`. */
export function solve(
  { size, rows, order }: Factors,
  right: Float64Array,
  unknown: Float64Array,
): void {
  for (let i = 0; i < size; i += 1) {
    let sum = right[order[i] as number] as number;
    for (let j = 0; j < i; j += 1) sum -= (rows[i * size + j] as number) * (unknown[j] as number);
    unknown[i] = sum;
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = unknown[i] as number;
    for (let j = i + 1; j < size; j += 1) {
      sum -= (rows[i * size + j] as number) * (unknown[j] as number);
    }
    unknown[i] = sum / (rows[i * size + i] as number);
  }
}
