import { greaterFirst } from "../review/greater-first.ts";

/** Part of a value that a quick one may differ by, a thousand times its rounding. */
export const nearness = 1e-6;

/**
 * The first of the greatest of some items; null for none. Those that rounding alone tells apart count
 * as equal, so that the same one is found on every machine.
 *
 * @param atMost a quick bound
 * @param exactly asked of those alone that may be the greatest
 */
export function greatestOf<Item>(
  items: readonly Item[],
  atMost: (item: Item) => number,
  exactly: (item: Item) => number,
): Item | null {
  const bounds = Float64Array.from(items, atMost);
  let likely = 0;
  for (let at = 1; at < bounds.length; at += 1) {
    if ((bounds[at] as number) > (bounds[likely] as number)) likely = at;
  }
  if (items.length === 0) return null;
  const least = exactly(items[likely] as Item);
  let found: Item | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < items.length; at += 1) {
    if ((bounds[at] as number) < least * (1 - nearness)) continue;
    const own = exactly(items[at] as Item);
    if (greaterFirst(own, most) < 0) {
      found = items[at] as Item;
      most = own;
    }
  }
  return found;
}
