/** A quick value counts as equal to the exact one within this part of it, a thousand times its rounding. */
export const nearness = 1e-6;

/**
 * The first of the greatest of some items; null for none.
 *
 * @param nearly a quick value
 * @param exactly asked of those alone that may be the greatest
 */
export function greatestOf<Item>(
  items: readonly Item[],
  nearly: (item: Item) => number,
  exactly: (item: Item) => number,
): Item | null {
  const quick = Float64Array.from(items, nearly);
  const least = quick.reduce((most, one) => Math.max(most, one), 0) * (1 - nearness);
  let [found, most]: [Item | null, number] = [null, Number.NEGATIVE_INFINITY];
  for (const [at, item] of items.entries()) {
    if (!((quick[at] as number) >= least)) continue;
    const own = exactly(item);
    if (own > most) [found, most] = [item, own];
  }
  return found;
}
