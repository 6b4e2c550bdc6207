import type { CombinationId } from "@hoopstay/stability";
import { designCombinations } from "./combination.ts";
import { carries, firstFailure } from "./limit.ts";
import type { LinkRow } from "./link.ts";

/** Part of the design pressure at which rows are put in order: at half the speed few are beyond all bounds. */
const guessAt = 0.25;

/** What is known so far of a row: as much as its groups needed. */
export class RowRating {
  private readonly carried = { ASD: -1, LRFD: -1 };
  private readonly limits = { ASD: Number.POSITIVE_INFINITY, LRFD: Number.POSITIVE_INFINITY };
  private guess: number | undefined;
  private guessAtMost: number | undefined;

  /** @param design K_d q_h at the design speed, Pa */
  constructor(
    readonly row: LinkRow,
    private readonly design: number,
  ) {}

  /** Demand over resistance, the greater of a method's combinations. */
  ratio(method: CombinationId, q = this.design): number {
    let worst = 0;
    for (const combination of designCombinations(method)) {
      const { demand, resistance } = this.row.asked(q, combination);
      if (demand > 0) worst = Math.max(worst, demand / resistance);
    }
    return worst;
  }

  /** A guess at which rows are the weaker ones. */
  get weakness(): number {
    this.guess ??= this.ratio("ASD", guessAt * this.design);
    return this.guess;
  }

  /** At most that, where that is quicker. */
  get weaknessAtMost(): number {
    const { atMost } = this.row;
    if (!atMost || this.guess !== undefined) return this.weakness;
    if (this.guessAtMost === undefined) {
      this.guessAtMost = 0;
      for (const one of designCombinations("ASD")) {
        this.guessAtMost = Math.max(this.guessAtMost, atMost(guessAt * this.design, one));
      }
    }
    return this.guessAtMost;
  }

  /** The limit, Pa, or `most` where it is known, or now found, to carry every wind up to that. */
  limit(method: CombinationId, most: number): number {
    const known = this.limits[method];
    if (known < Number.POSITIVE_INFINITY) return Math.min(known, most);
    if (this.carries(method, most)) return most;
    const found = firstFailure(this.row, method, most);
    this.limits[method] = found;
    return Math.min(found, most);
  }

  /** Whether it carries every wind up to `q`, Pa. */
  carries(method: CombinationId, q: number): boolean {
    const known = this.limits[method];
    if (known < Number.POSITIVE_INFINITY) return known >= q;
    if (this.carried[method] >= q) return true;
    for (const combination of designCombinations(method)) {
      if (!carries(this.row, q, combination)) return false;
    }
    this.carried[method] = q;
    return true;
  }
}
