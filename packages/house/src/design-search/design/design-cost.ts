import type { Words } from "@hoopstay/core";
import { cutListOf } from "../../compare/stock/cut-lists.ts";
import { type HouseBending, type TubeGroup, tubeGroups } from "../../compare/stock/house-pieces.ts";
import { type PriceList, priceList, sticksOf } from "../../compare/stock/price-list.ts";
import { stockTube } from "../../compare/stock/stock-tube.ts";
import type { House } from "../../model/house-model.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { DesignRange, TubeChoice } from "../range/design-range.ts";

const signatureOf = ({ tube, members }: TubeGroup): string =>
  `${tube.id} ${members.map(({ what, length, count }) => `${what} ${length} ${count}`).join(" ")}`;

/** How many tubes without a price are named. */
const mostNamed = 3;

/** What the priced tubes and anchors of designs cost; the sticks of each list are worked once. */
export class DesignCosts {
  readonly prices: PriceList;
  private readonly known = new Map<string, number | null>();

  /** @param bending of today's hoop and rail: where designs are joined */
  constructor(
    input: HouseInput,
    private readonly bending: HouseBending,
  ) {
    this.prices = priceList(input);
  }

  private priceOf(group: TubeGroup): number | null {
    const key = signatureOf(group);
    let price = this.known.get(key);
    if (price === undefined) {
      price = cutListOf(group, this.prices, this.bending).price;
      this.known.set(key, price);
    }
    return price;
  }

  /** Cost of a house; null where its hoops, its rails or a kind of its anchors have no price. */
  of(house: House, input: HouseInput): number | null {
    let total = 0;
    for (const group of tubeGroups(house, input)) {
      const price = this.priceOf(group);
      const varied = group.members.some(({ what }) => what === "hoops" || what === "rails");
      if (price === null && varied) return null;
      total += price ?? 0;
    }
    for (const { kind } of house.anchors) {
      total += this.prices.anchors.get(kind) ?? 0;
    }
    return total;
  }

  /** Why cost is not compared over a range; null where it is. */
  notCompared({ hoops, rails, anchors }: DesignRange): Words | null {
    if (this.prices.currency === null)
      return ["Cost is not compared: the house file has no prices."];
    const noPrice = ({ input }: TubeChoice): boolean =>
      !sticksOf(this.prices, stockTube(input)).some(({ price }) => price !== null);
    const missing = [...hoops, ...rails].filter(noPrice).map(({ name }) => name);
    if (anchors && !this.prices.anchors.has(anchors.kind))
      missing.push(`anchors (${anchors.kind})`);
    if (missing.length === 0) return null;
    const names = [...new Set(missing)];
    const more = names.length > mostNamed ? ` and ${names.length - mostNamed} more` : "";
    return [`Cost is not compared: no price for ${names.slice(0, mostNamed).join("; ")}${more}.`];
  }
}
