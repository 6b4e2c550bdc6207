/** Solves a dense system by elimination with row scaling and row pivots, refined twice. */
export function solveDense(
  rows: readonly (readonly number[])[],
  given: readonly number[],
): number[] {
  const scale = rows.map((row) => Math.max(...row.map(Math.abs)));
  const matrix = rows.map((row, i) => row.map((value) => value / (scale[i] as number)));
  const right = given.map((value, i) => value / (scale[i] as number));
  let found = eliminate(matrix, right);
  for (let pass = 0; pass < 2; pass += 1) {
    const rest = right.map(
      (value, i) =>
        value -
        (matrix[i] as number[]).reduce((sum, entry, j) => sum + entry * (found[j] as number), 0),
    );
    const more = eliminate(matrix, rest);
    found = found.map((value, i) => value + (more[i] as number));
  }
  return found;
}

function eliminate(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const count = rows.length;
  for (let pivot = 0; pivot < count; pivot += 1) {
    let best = pivot;
    for (let i = pivot + 1; i < count; i += 1) {
      if (Math.abs(rows[i]?.[pivot] as number) > Math.abs(rows[best]?.[pivot] as number)) best = i;
    }
    [rows[pivot], rows[best]] = [rows[best] as number[], rows[pivot] as number[]];
    const top = rows[pivot] as number[];
    for (let i = pivot + 1; i < count; i += 1) {
      const row = rows[i] as number[];
      const part = (row[pivot] as number) / (top[pivot] as number);
      for (let j = pivot; j <= count; j += 1) {
        row[j] = (row[j] as number) - part * (top[j] as number);
      }
    }
  }
  const found = new Array<number>(count).fill(0);
  for (let i = count - 1; i >= 0; i -= 1) {
    const row = rows[i] as number[];
    let sum = row[count] as number;
    for (let j = i + 1; j < count; j += 1) sum -= (row[j] as number) * (found[j] as number);
    found[i] = sum / (row[i] as number);
  }
  return found;
}
