import { catalogue } from "./catalogue.ts";
import { longestName, plainName } from "./plain-name.ts";
import type { CatalogueSize } from "./size.ts";

/**
 * The catalogue sizes spelled most like a name, for a suggestion beside a refusal.
 *
 * @param name designation as typed
 * @param count how many at most
 * @returns sizes, nearest first; equally near ones in catalogue order
 * @example nearestSizes("HSS4X3X3/61", 1)[0]?.name // "HSS4X3X3/16"
 */
export function nearestSizes(name: string, count: number): readonly CatalogueSize[] {
  const typed = plainName(name.slice(0, longestName));
  return catalogue
    .map((size) => ({ size, distance: nearest(typed, size) }))
    .sort((one, other) => one.distance - other.distance)
    .slice(0, count)
    .map(({ size }) => size);
}

const nearest = (typed: string, size: CatalogueSize): number =>
  Math.min(...[size.name, ...size.aliases].map((spelling) => edits(typed, plainName(spelling))));

/** Cost of a character left out: designations are typed short more often than wrong. */
const leftOut = 0.1;

/** Cost of turning one text into another: 1 for a character too many, a wrong one, or a swap. */
function edits(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, place) => place * leftOut);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1];
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + leftOut,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (swapped) least = Math.min(least, (beforeLast[column - 2] ?? 0) + 1);
      current.push(least);
    }
    beforeLast = last;
    last = current;
  }
  return last[to.length] ?? 0;
}
