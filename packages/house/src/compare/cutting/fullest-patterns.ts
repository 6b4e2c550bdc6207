import type { CutProblem, Pattern } from "./cut-problem.ts";

/** Ways to begin a stick that are followed for each way that is kept. */
const triedForEach = 20;

/**
 * Every way to cut one stick that takes the longest piece left and to which no other piece left can
 * be added; least waste first. Of the best plans one is made of such sticks only: a piece that fits
 * an earlier stick can always be moved there.
 *
 * @param most ways after which the list ends
 * @returns the ways, and whether these are all
 */
export function fullestPatterns(
  { size, cuts }: CutProblem,
  left: ArrayLike<number>,
  most: number,
): { patterns: Pattern[]; all: boolean } {
  const found: { pattern: Pattern; waste: number }[] = [];
  const taken = cuts.map(() => 0);
  const first = cuts.findIndex((_, place) => (left[place] as number) > 0);
  let all = true;
  let tried = 0;
  const lengthOf = (place: number): number => (cuts[place] as CutProblem["cuts"][number]).length;
  // `shortestOut`: of the lengths gone by, the shortest of which a piece is left; it must not fit.
  const fill = (place: number, room: number, shortestOut: number): void => {
    tried += 1;
    if (found.length >= most || tried > triedForEach * most) {
      all = false;
      return;
    }
    if (place === cuts.length) {
      if (room < shortestOut) found.push({ pattern: taken.slice(), waste: room });
      return;
    }
    const length = lengthOf(place);
    const count = left[place] as number;
    const fit = Math.min(count, Math.floor(room / length));
    const least = place === first ? 1 : 0;
    for (let take = fit; take >= least; take -= 1) {
      taken[place] = take;
      const rest = room - take * length;
      fill(place + 1, rest, take < count ? Math.min(shortestOut, length) : shortestOut);
    }
    taken[place] = 0;
  };
  if (first >= 0) fill(first, size, Number.POSITIVE_INFINITY);
  found.sort((one, other) => one.waste - other.waste);
  return { patterns: found.map(({ pattern }) => pattern), all };
}
