/** Inverts a symmetric 3 by 3 matrix, row by row, in place. */
export function invertSymmetric(matrix: Float64Array): void {
  const [a, b, c] = [matrix[0] as number, matrix[1] as number, matrix[2] as number];
  const [d, e, f] = [matrix[4] as number, matrix[5] as number, matrix[8] as number];
  // L D L^T from the last row up: the last, a turn, is the softest.
  const e1 = e / f;
  const c1 = c / f;
  const d2 = d - e * e1;
  const b2 = b - c * e1;
  const b1 = b2 / d2;
  const a2 = a - c * c1 - b2 * b1;
  const xx = 1 / a2;
  const xz = -b1 * xx;
  const zz = 1 / d2 - b1 * xz;
  const xm = -c1 * xx - e1 * xz;
  const zm = -c1 * xz - e1 * zz;
  const mm = 1 / f - c1 * xm - e1 * zm;
  matrix[0] = xx;
  matrix[1] = matrix[3] = xz;
  matrix[2] = matrix[6] = xm;
  matrix[4] = zz;
  matrix[5] = matrix[7] = zm;
  matrix[8] = mm;
}
