import type { ActionTable, BaseLine } from "@hoopstay/stability";
import { stride } from "@hoopstay/stability";

/** Some rows of a table, and where each stands in it. */
export interface SomeRows extends ActionTable {
  readonly places: readonly number[];
}

/**
 * The rows that can decide whether everything at once holds. A row that differs from another only by
 * a force straight down within the base lines is left out: what holds under the other holds under it,
 * the ground pushing that force back up where it stands, and friction only gaining by it.
 */
export function liftingRows(
  { components, count }: ActionTable,
  lines: readonly BaseLine[],
): SomeRows {
  const groups = new Map<number, number[]>();
  const at = (row: number, part: number): number => components[row * stride + part] as number;
  const base = innermost(lines);
  const isLess = (row: number, other: number): boolean => {
    const down = at(other, 2) - at(row, 2);
    if (!(down > 0) || at(row, 1) !== at(other, 1) || at(row, 5) !== at(other, 5)) return false;
    // A force `down` at (x, y) turns by -y down about x and by x down about y.
    const x = (at(row, 4) - at(other, 4)) / down;
    const y = (at(other, 3) - at(row, 3)) / down;
    return x <= base.right && -x <= base.left && y <= base.front && -y <= base.back;
  };
  for (let row = 0; row < count; row += 1) {
    const fx = at(row, 0);
    const group = groups.get(fx) ?? [];
    groups.set(fx, group);
    if (group.some((other) => isLess(row, other))) continue;
    const left = group.filter((other) => !isLess(other, row));
    left.push(row);
    groups.set(fx, left);
  }
  const places = [...groups.values()].flat().sort((a, b) => a - b);
  const kept = new Float64Array(places.length * stride);
  places.forEach((place, index) => {
    kept.set(components.subarray(place * stride, (place + 1) * stride), index * stride);
  });
  return { count: places.length, components: kept, places };
}

/** The nearest base line on each side, m from the middle. */
function innermost(lines: readonly BaseLine[]) {
  const nearest = (check: BaseLine["check"]): number =>
    Math.min(...lines.filter((line) => line.check === check).map((line) => line.distance));
  return {
    right: nearest("tip-right"),
    left: nearest("tip-left"),
    front: nearest("tip-front"),
    back: nearest("tip-back"),
  };
}
