/** A pivot below this part of the stiffness it began as is none: rounding leaves about 1e-15. */
const leastPivot = 1e-13;

/**
 * Eliminates the first unknowns of a symmetric positive definite matrix in place, without pivoting
 * (stable for such matrices). Only its upper part, row by row, is read and written; what is left of
 * the last rows is the stiffness condensed to the last unknowns.
 *
 * @param size number of rows
 * @param free how many unknowns are eliminated
 * @returns whether every pivot was above rounding: false for a mechanism
 */
export function eliminate(matrix: Float64Array, size: number, free: number): boolean {
  const began = new Float64Array(free);
  for (let k = 0; k < free; k += 1) began[k] = matrix[k * size + k] as number;
  for (let k = 0; k < free; k += 1) {
    const row = k * size;
    const pivot = matrix[row + k] as number;
    if (!(pivot > leastPivot * (began[k] as number))) return false;
    for (let i = k + 1; i < size; i += 1) {
      const factor = (matrix[row + i] as number) / pivot;
      if (factor === 0) continue;
      const other = i * size;
      for (let j = i; j < size; j += 1) {
        matrix[other + j] = (matrix[other + j] as number) - factor * (matrix[row + j] as number);
      }
    }
  }
  return true;
}

/** Does to a right-hand side what `eliminate` did to its matrix; the last rows become condensed. */
export function reduce(
  matrix: Float64Array,
  size: number,
  free: number,
  right: Float64Array,
): void {
  for (let k = 0; k < free; k += 1) {
    const row = k * size;
    const value = (right[k] as number) / (matrix[row + k] as number);
    if (value === 0) continue;
    for (let i = k + 1; i < size; i += 1) {
      right[i] = (right[i] as number) - (matrix[row + i] as number) * value;
    }
  }
}

/** Finds the first unknowns from a reduced right-hand side; in its last rows stand the last ones. */
export function substituteBack(
  matrix: Float64Array,
  size: number,
  free: number,
  right: Float64Array,
): void {
  for (let k = free - 1; k >= 0; k -= 1) {
    const row = k * size;
    let value = right[k] as number;
    for (let j = k + 1; j < size; j += 1) {
      value -= (matrix[row + j] as number) * (right[j] as number);
    }
    right[k] = value / (matrix[row + k] as number);
  }
}
