/** A straight element between two ends, unloaded but for a uniform load. */
export interface StraightElement {
  /** Unknowns: x, z and turn at its start, then at its end. */
  readonly unknown: readonly number[];
  readonly length: number;
  readonly cos: number;
  readonly sin: number;
  readonly EA: number;
  readonly EI: number;
  /** Load per length in x and z. */
  readonly px: number;
  readonly pz: number;
}

/** Stiffness of a straight element for x, z and turn at its two ends. */
export function stiffnessIn({ length, cos, sin, EA, EI }: StraightElement): number[][] {
  const [axial, shear] = [EA / length, (12 * EI) / length ** 3];
  const [couple, near, far] = [(6 * EI) / length ** 2, (4 * EI) / length, (2 * EI) / length];
  const local = [
    [axial, 0, 0, -axial, 0, 0],
    [0, shear, couple, 0, -shear, couple],
    [0, couple, near, 0, -couple, far],
    [-axial, 0, 0, axial, 0, 0],
    [0, -shear, -couple, 0, shear, -couple],
    [0, couple, far, 0, -couple, near],
  ];
  const turn = (row: readonly number[]): number[] => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = row;
    return [a * cos - b * sin, a * sin + b * cos, c, d * cos - e * sin, d * sin + e * cos, f];
  };
  const half = local.map(turn);
  const columns = half[0]?.map((_, j) => turn(half.map((row) => row[j] as number))) ?? [];
  return columns[0]?.map((_, i) => columns.map((column) => column[i] as number)) ?? [];
}

/** Its load as forces and couples on its two ends. */
export function pushIn({ length, cos, sin, px, pz }: StraightElement): number[] {
  const across = pz * cos - px * sin;
  const couple = (across * length * length) / 12;
  const [x, z] = [(px * length) / 2, (pz * length) / 2];
  return [x, z, couple, x, z, -couple];
}
