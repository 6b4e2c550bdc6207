import type { Judged } from "./found/unbeaten.ts";
import type { QuickDesign } from "./quick-design.ts";

/** Designs looked at, in numbers: which one, its steel, its gust, its cost. */
export class SearchedDesigns implements Judged {
  count = 0;
  readonly number: Float64Array;
  readonly steel: Float64Array;
  readonly gust: Float64Array;
  readonly cost: Float64Array | null;
  readonly anchors: Float64Array;

  /** @param most how many there may come to be */
  constructor(most: number, withCost: boolean) {
    this.number = new Float64Array(most);
    this.steel = new Float64Array(most);
    this.gust = new Float64Array(most);
    this.cost = withCost ? new Float64Array(most) : null;
    this.anchors = new Float64Array(most);
  }

  add(number: number, { steel, gust, house }: QuickDesign, cost: number | null): void {
    this.number[this.count] = number;
    this.steel[this.count] = steel;
    this.gust[this.count] = gust;
    if (this.cost) this.cost[this.count] = cost ?? Number.POSITIVE_INFINITY;
    this.anchors[this.count] = house.anchors.length;
    this.count += 1;
  }
}
