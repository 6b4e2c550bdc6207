import type { Judged } from "./unbeaten.ts";

/** Squares across and up; one design of each is drawn. */
const squares = 40;

/** Designs looked at, thinned so that a plot of them still shows where they lie: steel N, gust m/s. */
export function cloudOf({ count, steel, gust }: Judged): (readonly [number, number])[] {
  const ends = (values: ArrayLike<number>): { low: number; size: number } => {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let place = 0; place < count; place += 1) {
      const value = values[place] as number;
      if (!Number.isFinite(value)) continue;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return { low, size: high - low || 1 };
  };
  const [across, up] = [ends(steel), ends(gust)];
  const square = (value: number, { low, size }: typeof across): number =>
    Math.min(squares - 1, Math.floor((squares * (value - low)) / size));
  const drawn = new Map<number, readonly [number, number]>();
  for (let place = 0; place < count; place += 1) {
    const point = [steel[place] as number, gust[place] as number] as const;
    if (!Number.isFinite(point[1])) continue;
    const key = square(point[0], across) * squares + square(point[1], up);
    if (!drawn.has(key)) drawn.set(key, point);
  }
  return [...drawn.values()];
}
