import type { CombinationId } from "@hoopstay/stability";
import { greaterFirst } from "../review/greater-first.ts";
import { greatestOf } from "./greatest.ts";
import type { LinkRow } from "./link.ts";
import type { RowRating } from "./row-rating.ts";

type ByMethod = Readonly<Record<CombinationId, number>>;

/** The row of a group that gives way first, what it is asked at the design wind, and its limits. */
export interface RatedRow {
  readonly row: LinkRow;
  /** Of this row, as if its ties held. */
  readonly ratio: ByMethod;
  /** K_d q_h at the first failure of any row of the group, Pa. */
  readonly limit: ByMethod;
}

/**
 * The lowest limit of some ratings, and whose it is. The one that seems the weakest goes first; all
 * that carry what it does are passed by, and the few that are left go in order of their weakness.
 *
 * @param most beyond which no wind blows, Pa
 */
function lowest(
  ratings: readonly RowRating[],
  weakest: RowRating,
  method: CombinationId,
  most: number,
): readonly [number, RowRating] {
  const first = weakest.limit(method, most);
  let [limit, whose] = [first < most ? first : Number.POSITIVE_INFINITY, weakest];
  const reached = Math.min(limit, most);
  const left = ratings.filter((one) => one !== weakest && !one.carries(method, reached));
  for (const one of left.sort((a, b) => greaterFirst(a.weakness, b.weakness))) {
    const upTo = Math.min(limit, most);
    const own = one.limit(method, upTo);
    if (own >= upTo) continue;
    if (greaterFirst(limit, own) < 0) whose = one;
    limit = own;
  }
  return [limit, whose];
}

/**
 * The worst of a group; null for none. Each row is rated only as far as its groups need.
 *
 * @param most beyond which no wind blows, Pa
 */
export function worstRow(ratings: readonly RowRating[], most: number): RatedRow | null {
  const weakest = greatestOf(
    ratings,
    (one) => one.weaknessAtMost,
    (one) => one.weakness,
  );
  if (!weakest) return null;
  const [ASD, whose] = lowest(ratings, weakest, "ASD", most);
  const [LRFD] = lowest(ratings, weakest, "LRFD", most);
  const ratio = { ASD: whose.ratio("ASD"), LRFD: whose.ratio("LRFD") };
  return { row: whose.row, ratio, limit: { ASD, LRFD } };
}
