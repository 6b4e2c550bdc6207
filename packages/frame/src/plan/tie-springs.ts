import type { CrossMember, HoopOnRails } from "./base.ts";

/** Numbers a tie. */
export const springsEach = 6;

/**
 * The stiffness of each tie between the rails, hoops first and cross members after them, in the
 * three movements that strain it: its feet moving apart s = u_right - u_left, and the turns of its
 * left and right foot. Six numbers a tie: s s, s left, s right, left left, left right, right right.
 * What rounding left in a hoop's stiffness of asymmetry or of force under sway is averaged out, so
 * that a swaying hoop brings exactly none.
 */
export function springsOf(
  hoops: readonly HoopOnRails[],
  crossMembers: readonly CrossMember[],
  span: number,
): Float64Array {
  const springs = new Float64Array(springsEach * (hoops.length + crossMembers.length));
  hoops.forEach(({ stiffness }, hoop) => {
    const k = (row: number, column: number): number =>
      ((stiffness[4 * row + column] as number) + (stiffness[4 * column + row] as number)) / 2;
    const place = springsEach * hoop;
    springs[place] = (k(0, 0) - 2 * k(0, 2) + k(2, 2)) / 4;
    springs[place + 1] = (k(2, 1) - k(0, 1)) / 2;
    springs[place + 2] = (k(2, 3) - k(0, 3)) / 2;
    springs[place + 3] = k(1, 1);
    springs[place + 4] = k(1, 3);
    springs[place + 5] = k(3, 3);
  });
  crossMembers.forEach(({ axial, bending }, member) => {
    const place = springsEach * (hoops.length + member);
    const turn = bending / span;
    springs[place] = axial / span;
    springs[place + 3] = 4 * turn;
    springs[place + 4] = 2 * turn;
    springs[place + 5] = 4 * turn;
  });
  return springs;
}

/**
 * How far a foot stiffness is from symmetry and from freedom to sway, as a part of its greatest
 * entry; turns are weighed with the span as their lever.
 */
export function strayOf(stiffness: ArrayLike<number>, span: number): number {
  const lever = (i: number): number => (i % 2 === 0 ? span : 1);
  const scaled = (row: number, column: number): number =>
    (stiffness[4 * row + column] as number) * lever(row) * lever(column);
  let [greatest, stray] = [0, 0];
  for (let row = 0; row < 4; row += 1) {
    stray = Math.max(stray, Math.abs(scaled(row, 0) + scaled(row, 2)));
    for (let column = 0; column < 4; column += 1) {
      greatest = Math.max(greatest, Math.abs(scaled(row, column)));
      stray = Math.max(stray, Math.abs(scaled(row, column) - scaled(column, row)));
    }
  }
  return greatest === 0 ? 0 : stray / greatest;
}
