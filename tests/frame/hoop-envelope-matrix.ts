/** A symmetric matrix kept row by row from its first entry on, and solved by L D L^T. */
export class EnvelopeMatrix {
  private readonly first: Int32Array;
  private readonly rows: Float64Array[];

  /** @param groups unknowns that meet in one element, for every element */
  constructor(size: number, groups: readonly (readonly number[])[]) {
    this.first = Int32Array.from({ length: size }, (_, i) => i);
    for (const group of groups) {
      const least = Math.min(...group);
      for (const i of group) this.first[i] = Math.min(this.first[i] as number, least);
    }
    this.rows = Array.from(this.first, (first, i) => new Float64Array(i - first + 1));
  }

  /** Adds to an entry of the lower part; above it nothing is kept. */
  add(row: number, column: number, value: number): void {
    if (column > row) return;
    const at = column - (this.first[row] as number);
    const entries = this.rows[row] as Float64Array;
    entries[at] = (entries[at] as number) + value;
  }

  /** Makes an unknown zero. */
  hold(unknown: number, right: Float64Array): void {
    (this.rows[unknown] as Float64Array).fill(0);
    for (let row = unknown + 1; row < this.rows.length; row += 1) {
      const at = unknown - (this.first[row] as number);
      if (at >= 0) (this.rows[row] as Float64Array)[at] = 0;
    }
    this.add(unknown, unknown, 1);
    right[unknown] = 0;
  }

  /** Solves once; the matrix is used up. */
  solve(right: Float64Array): Float64Array {
    const { first, rows } = this;
    const size = rows.length;
    const diagonal = new Float64Array(size);
    const solution = right.slice();
    for (let i = 0; i < size; i += 1) {
      const row = rows[i] as Float64Array;
      const from = first[i] as number;
      // Row i becomes that of L D, then of L.
      for (let j = from; j < i; j += 1) {
        const other = rows[j] as Float64Array;
        const otherFrom = first[j] as number;
        let value = row[j - from] as number;
        for (let k = Math.max(from, otherFrom); k < j; k += 1) {
          value -= (row[k - from] as number) * (other[k - otherFrom] as number);
        }
        row[j - from] = value;
      }
      let pivot = row[i - from] as number;
      for (let j = from; j < i; j += 1) {
        const entry = row[j - from] as number;
        const factor = entry / (diagonal[j] as number);
        pivot -= entry * factor;
        row[j - from] = factor;
      }
      diagonal[i] = pivot;
      let value = solution[i] as number;
      for (let j = from; j < i; j += 1)
        value -= (row[j - from] as number) * (solution[j] as number);
      solution[i] = value;
    }
    for (let i = 0; i < size; i += 1)
      solution[i] = (solution[i] as number) / (diagonal[i] as number);
    for (let i = size - 1; i >= 0; i -= 1) {
      const row = rows[i] as Float64Array;
      const from = first[i] as number;
      for (let j = from; j < i; j += 1) {
        solution[j] = (solution[j] as number) - (row[j - from] as number) * (solution[i] as number);
      }
    }
    return solution;
  }
}
