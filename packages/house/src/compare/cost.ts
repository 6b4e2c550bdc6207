import type { Cost, CutList } from "@hoopstay/core";
import type { House } from "../model/house-model.ts";
import type { PriceList } from "./stock/price-list.ts";

/** What is no tube, or is sold by no stick. */
const neverPriced = "bolts, clamps, plates, boards, cover, end walls, work";

/** Anchors fitted of each kind; null stands for those whose pull was entered. */
function anchorCounts({ anchors }: House): Map<string | null, number> {
  const counts = new Map<string | null, number>();
  for (const { kind } of anchors) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return counts;
}

/** What steel and anchors cost by the prices told; null where none are. Nothing is guessed. */
export function costOf(house: House, cuts: readonly CutList[], prices: PriceList): Cost | null {
  const { currency } = prices;
  if (currency === null) return null;
  const unpriced: string[] = [];
  let total = 0;
  for (const { tube, price } of cuts) {
    if (price === null) unpriced.push(tube);
    else total += price;
  }
  for (const [kind, count] of anchorCounts(house)) {
    const price = prices.anchors.get(kind);
    if (price === undefined) unpriced.push(kind === null ? "anchors" : `anchors (${kind})`);
    else total += count * price;
  }
  return { currency, total, unpriced: [...unpriced, neverPriced] };
}
