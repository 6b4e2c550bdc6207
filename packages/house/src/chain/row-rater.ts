import type { CombinationId } from "@hoopstay/stability";
import { designCombinations } from "./combination.ts";
import { carries, firstFailure } from "./limit.ts";
import type { LinkRow } from "./link.ts";

type ByMethod = Readonly<Record<CombinationId, number>>;

/** The row of a group that gives way first, what it is asked at the design wind, and its limits. */
export interface RatedRow {
  readonly row: LinkRow;
  /** Of this row, as if its ties held. */
  readonly ratio: ByMethod;
  /** K_d q_h at the first failure of any row of the group, Pa. */
  readonly limit: ByMethod;
}

/** Part of the design pressure at which rows are put in order: at half the speed few are beyond all bounds. */
const guessAt = 0.25;

/** Rates rows, each as far as its groups need: most are only shown to carry what a weaker one cannot. */
export class RowRater {
  private readonly guesses = new Map<LinkRow, number>();
  private readonly carried = { ASD: new Map<LinkRow, number>(), LRFD: new Map<LinkRow, number>() };
  private readonly limits = { ASD: new Map<LinkRow, number>(), LRFD: new Map<LinkRow, number>() };

  /**
   * @param design K_d q_h at the design speed, Pa
   * @param most beyond which no wind blows, Pa
   */
  constructor(
    private readonly design: number,
    private readonly most: number,
  ) {}

  /** Demand over resistance, the greater of a method's combinations. */
  private ratio(row: LinkRow, method: CombinationId, q: number): number {
    let worst = 0;
    for (const combination of designCombinations(method)) {
      const { demand, resistance } = row.asked(q, combination);
      if (demand > 0) worst = Math.max(worst, demand / resistance);
    }
    return worst;
  }

  /** A guess at which rows are the weaker ones. */
  private weakness(row: LinkRow): number {
    let found = this.guesses.get(row);
    if (found === undefined) {
      found = this.ratio(row, "ASD", guessAt * this.design);
      this.guesses.set(row, found);
    }
    return found;
  }

  /** Whether a row is known, or now found, to carry every wind up to `q`. */
  private carries(row: LinkRow, method: CombinationId, q: number): boolean {
    const known = this.carried[method];
    if ((known.get(row) ?? -1) >= q) return true;
    if (!designCombinations(method).every((one) => carries(row, q, one))) return false;
    known.set(row, q);
    return true;
  }

  private limit(row: LinkRow, method: CombinationId, most: number): number {
    const known = this.limits[method];
    let found = known.get(row);
    if (found === undefined) {
      found = firstFailure(row, method, most);
      if (Number.isFinite(found)) known.set(row, found);
    }
    return found;
  }

  /** The lowest limit of rows in order of their weakness, and whose it is. */
  private lowest(rows: readonly LinkRow[], method: CombinationId): [number, LinkRow] {
    let [lowest, whose] = [Number.POSITIVE_INFINITY, rows[0] as LinkRow];
    for (const row of rows) {
      const most = Math.min(lowest, this.most);
      const known = this.limits[method].get(row);
      const own = known ?? (this.carries(row, method, most) ? most : this.limit(row, method, most));
      if (own < most) [lowest, whose] = [own, row];
    }
    return [lowest, whose];
  }

  /** The worst of a group; null for none. */
  worst(rows: readonly LinkRow[]): RatedRow | null {
    if (rows.length === 0) return null;
    const sorted = rows.toSorted((a, b) => this.weakness(b) - this.weakness(a));
    const [ASD, row] = this.lowest(sorted, "ASD");
    const [LRFD] = this.lowest(sorted, "LRFD");
    const ratio = {
      ASD: this.ratio(row, "ASD", this.design),
      LRFD: this.ratio(row, "LRFD", this.design),
    };
    return { row, ratio, limit: { ASD, LRFD } };
  }
}

/** Rows by a key, each list in its order. */
export function grouped<Row, Key>(rows: readonly Row[], keyOf: (row: Row) => Key): Map<Key, Row[]> {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const list = groups.get(key);
    if (list) list.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}
