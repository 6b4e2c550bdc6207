/**
 * The multiples of some columns whose sum comes nearest to a target, by Householder reflections; null
 * where columns depend on each other: then no single sum is nearest.
 */
export function leastSquares(
  columns: readonly Float64Array[],
  target: Float64Array,
): Float64Array | null {
  const rows = target.length;
  const matrix = columns.map((column) => column.slice());
  const rest = target.slice();
  const diagonal = new Float64Array(columns.length);
  for (const [step, column] of matrix.entries()) {
    let size = 0;
    for (let row = step; row < rows; row += 1) size = Math.hypot(size, column[row] as number);
    if (size < leastSize) return null;
    const turned = (column[step] as number) > 0 ? -size : size;
    const mirror = column.slice();
    mirror[step] = (mirror[step] as number) - turned;
    diagonal[step] = turned;
    for (const other of [...matrix.slice(step + 1), rest]) reflect(other, mirror, step);
  }
  const answer = new Float64Array(columns.length);
  for (let step = columns.length - 1; step >= 0; step -= 1) {
    let value = rest[step] as number;
    for (let other = step + 1; other < columns.length; other += 1) {
      value -= ((matrix[other] as Float64Array)[step] as number) * (answer[other] as number);
    }
    answer[step] = value / (diagonal[step] as number);
  }
  return answer;
}

/** Columns are near 1 in size; what is left of one below this is rounding. */
const leastSize = 1e-11;

function reflect(vector: Float64Array, mirror: Float64Array, from: number): void {
  let [dot, square] = [0, 0];
  for (let row = from; row < vector.length; row += 1) {
    dot += (vector[row] as number) * (mirror[row] as number);
    square += (mirror[row] as number) ** 2;
  }
  const scale = (2 * dot) / square;
  for (let row = from; row < vector.length; row += 1) {
    vector[row] = (vector[row] as number) - scale * (mirror[row] as number);
  }
}
