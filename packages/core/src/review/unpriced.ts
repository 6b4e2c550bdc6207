import type { VariantReview } from "./compare-review.ts";

type Priced = Pick<VariantReview, "cost">;

/** What has no price in any of the houses that have a cost: it is left out of all of them alike. */
export function unpricedInAll(houses: readonly Priced[]): readonly string[] {
  const lists = houses.flatMap(({ cost }) => (cost ? [cost.unpriced] : []));
  const [first = [], ...others] = lists;
  return first.filter((what) => others.every((list) => list.includes(what)));
}

/** What of a house has no price besides: its cost is not to be set against the others. */
export const unpricedOnlyHere = ({ cost }: Priced, inAll: readonly string[]): readonly string[] =>
  (cost?.unpriced ?? []).filter((what) => !inAll.includes(what));
