/**
 * Factorises a symmetric positive definite matrix of half bandwidth 2 in place, L D L^T without
 * pivoting (stable for such matrices). What the arrays hold beyond the unknowns is not used.
 *
 * @param size number of unknowns
 * @param diagonal main diagonal; becomes D
 * @param next entries (i, i + 1); become those of L^T
 * @param second entries (i, i + 2); become those of L^T
 */
export function factorise(
  size: number,
  diagonal: Float64Array,
  next: Float64Array,
  second: Float64Array,
): void {
  for (let i = 0; i < size; i += 1) {
    const pivot = diagonal[i] as number;
    const a = next[i] as number;
    const b = second[i] as number;
    const one = a / pivot;
    const two = b / pivot;
    next[i] = one;
    second[i] = two;
    diagonal[i + 1] = (diagonal[i + 1] as number) - one * a;
    next[i + 1] = (next[i + 1] as number) - one * b;
    diagonal[i + 2] = (diagonal[i + 2] as number) - two * b;
  }
}

/** Solves with the factors from `factorise`; the right-hand side becomes the solution. */
export function substitute(
  size: number,
  diagonal: Float64Array,
  next: Float64Array,
  second: Float64Array,
  unknown: Float64Array,
): void {
  for (let i = 0; i < size; i += 1) {
    const here = unknown[i] as number;
    unknown[i + 1] = (unknown[i + 1] as number) - (next[i] as number) * here;
    unknown[i + 2] = (unknown[i + 2] as number) - (second[i] as number) * here;
    unknown[i] = here / (diagonal[i] as number);
  }
  for (let i = size - 2; i >= 0; i -= 1) {
    const far = i + 2 < size ? (second[i] as number) * (unknown[i + 2] as number) : 0;
    unknown[i] = (unknown[i] as number) - (next[i] as number) * (unknown[i + 1] as number) - far;
  }
}
