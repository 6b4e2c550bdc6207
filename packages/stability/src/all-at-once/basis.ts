import { capAt, columnAt, type JointSystem } from "./joint-system.ts";

/**
 * One way of sharing: as many unknowns as rows answer for the right side, the others stand at
 * nought or at their cap. The basic unknowns depend linearly on the right side, through `inverse`.
 */
export interface Basis {
  readonly system: JointSystem;
  /** Basic unknown by row; a row not yet answered for has -1: an unknown that has to be nought. */
  readonly members: Int32Array;
  /** Caps of the basic unknowns. */
  readonly caps: Float64Array;
  /** Row by row. */
  readonly inverse: Float64Array;
  /** 0 at nought, 1 at the cap, 2 basic. */
  readonly standing: Uint8Array;
  /** What the unknowns at their caps add to the rows. */
  readonly atCaps: Float64Array;
}

export const standsAtCap = 1;
export const isBasic = 2;

/** The basis of no unknown at all. */
export function emptyBasis(system: JointSystem): Basis {
  const { rows, columns } = system;
  const inverse = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row += 1) inverse[row * rows + row] = 1;
  return {
    system,
    members: new Int32Array(rows).fill(-1),
    caps: new Float64Array(rows),
    inverse,
    standing: new Uint8Array(columns),
    atCaps: new Float64Array(rows),
  };
}

export const copyOf = ({ system, members, caps, inverse, standing, atCaps }: Basis): Basis => ({
  system,
  members: members.slice(),
  caps: caps.slice(),
  inverse: inverse.slice(),
  standing: standing.slice(),
  atCaps: atCaps.slice(),
});

/** Values of the basic unknowns at a right side, into `values`. */
export function basicValues(
  { inverse, atCaps }: Basis,
  right: Float64Array,
  values: Float64Array,
): void {
  const rows = values.length;
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (let of = 0; of < rows; of += 1) {
      sum +=
        (inverse[row * rows + of] as number) * ((right[of] as number) - (atCaps[of] as number));
    }
    values[row] = sum;
  }
}

/** A column seen from a basis: how much each basic unknown falls when the column's grows by one. */
export function seenFrom({ inverse }: Basis, column: Float64Array): Float64Array {
  const rows = column.length;
  const seen = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (let of = 0; of < rows; of += 1) {
      sum += (inverse[row * rows + of] as number) * (column[of] as number);
    }
    seen[row] = sum;
  }
  return seen;
}

/** Puts an unknown in the place of a row's basic one, which goes to nought or to its cap. */
export function exchange(basis: Basis, row: number, entering: number, leavesAtCap: boolean): void {
  const { system, members, caps, inverse, standing } = basis;
  const { rows } = system;
  const seen = seenFrom(basis, columnAt(system, entering));
  const pivot = seen[row] as number;
  for (let of = 0; of < rows; of += 1) {
    inverse[row * rows + of] = (inverse[row * rows + of] as number) / pivot;
  }
  for (let other = 0; other < rows; other += 1) {
    const share = seen[other] as number;
    if (other === row || share === 0) continue;
    for (let of = 0; of < rows; of += 1) {
      inverse[other * rows + of] =
        (inverse[other * rows + of] as number) - share * (inverse[row * rows + of] as number);
    }
  }
  if (standing[entering] === standsAtCap) addAtCaps(basis, entering, -1);
  const leaving = members[row] as number;
  if (leaving >= 0) standing[leaving] = leavesAtCap ? standsAtCap : 0;
  if (leaving >= 0 && leavesAtCap) addAtCaps(basis, leaving, 1);
  members[row] = entering;
  caps[row] = capAt(system, entering);
  standing[entering] = isBasic;
}

function addAtCaps({ system, atCaps }: Basis, tether: number, sign: 1 | -1): void {
  const column = columnAt(system, tether);
  const times = sign * capAt(system, tether);
  for (let row = 0; row < atCaps.length; row += 1) {
    atCaps[row] = (atCaps[row] as number) + times * (column[row] as number);
  }
}
