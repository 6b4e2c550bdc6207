import { type CheckId, checkIds } from "./base-line.ts";

const parts = 6;
const places = Object.fromEntries(checkIds.map((check, index) => [check, index * parts])) as Record<
  CheckId,
  number
>;

const { NEGATIVE_INFINITY: least, POSITIVE_INFINITY: most } = Number;
const nothingYet = checkIds.flatMap(() => [least, 0, most, most, 0, least]);

/**
 * The worst ratio and the lowest limit of every check so far, and the numbers of the outcomes they
 * belong to: plain numbers, because of thousands of outcomes few are ever read.
 */
export class WorstOfChecks {
  /** By check: ratio, its outcome, its limit; limit, its outcome, its ratio. */
  private readonly kept = nothingYet.slice();

  /** Takes in outcome number `at`. Of equal ratios the lower limit is the worse, and the reverse. */
  take(check: CheckId, ratio: number, limit: number, at: number): void {
    const { kept } = this;
    const place = places[check];
    const worst = kept[place] as number;
    if (ratio > worst || (ratio === worst && limit < (kept[place + 2] as number))) {
      kept[place] = ratio;
      kept[place + 1] = at;
      kept[place + 2] = limit;
    }
    const lowest = kept[place + 3] as number;
    if (limit < lowest || (limit === lowest && ratio > (kept[place + 5] as number))) {
      kept[place + 3] = limit;
      kept[place + 4] = at;
      kept[place + 5] = ratio;
    }
  }

  ratio(check: CheckId): number {
    return this.kept[places[check]] as number;
  }

  ratioAt(check: CheckId): number {
    return this.kept[places[check] + 1] as number;
  }

  limit(check: CheckId): number {
    return this.kept[places[check] + 3] as number;
  }

  limitAt(check: CheckId): number {
    return this.kept[places[check] + 4] as number;
  }
}
