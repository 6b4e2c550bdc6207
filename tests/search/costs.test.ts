import { expect, test } from "vitest";
import { costOf } from "../../packages/house/src/compare/cost.ts";
import { cutListOf } from "../../packages/house/src/compare/stock/cut-lists.ts";
import { tubeGroups } from "../../packages/house/src/compare/stock/house-pieces.ts";
import { priceList } from "../../packages/house/src/compare/stock/price-list.ts";
import { DesignCosts } from "../../packages/house/src/design-search/design/design-cost.ts";
import { exampleWith } from "../compare/today.ts";
import { rangeOf, wide } from "./searched-house.ts";

const unknown = { hoop: null, rail: null };
const screws = [18, 6, -6, -18].flatMap((along) =>
  ["left", "right"].map((side) => ({
    name: `${side}${along}`,
    side,
    along: `${along} ft`,
    kind: "screw",
  })),
);
const stock = (hoops: number, rails: number) => [
  { for: "hoops.tube", length: "32 ft", price: hoops },
  { for: "rails.tube", length: "44 ft", price: rails },
];
const prices = (changes: Record<string, unknown> = {}) => ({
  currency: "USD",
  stock: stock(90, 350),
  anchors: [{ kind: "screw", price: 64 }],
  ...changes,
});
const costOfDesign = (changes: Record<string, unknown>): number | null => {
  const { house, input } = exampleWith({ anchors: screws, ...changes });
  return new DesignCosts(input, unknown).of(house, input);
};

test("nine hoops of one stick each at 90, rails of 44 ft at 350, eight screws at 64", () => {
  // A hoop of 18 ft span and 8 ft 6 in rise on 6 in legs is 28 ft of tube: one stick of 32 ft each.
  // Two rails of 41 ft leave 3 ft of each stick, and 2 ft 4 in of it make two noses of 14 in.
  const rails = {
    length: "41 ft",
    tube: { size: "HSS4X3X3/16", grade: "A500 C" },
    noses: { front: "14 in", back: "14 in" },
  };
  expect(costOfDesign({ prices: prices(), rails })).toBe(9 * 90 + 2 * 350 + 8 * 64);
});

test("without a price for the hoops or for the rails there is none for the design", () => {
  expect(costOfDesign({ prices: prices({ stock: stock(90, 350).slice(1) }) })).toBeNull();
  expect(costOfDesign({ prices: prices({ stock: stock(90, 350).slice(0, 1) }) })).toBeNull();
});

test("a design costs what the side-by-side table says of the same house", () => {
  const { house, input } = exampleWith({});
  const list = priceList(input);
  const cuts = tubeGroups(house, input).map((group) => cutListOf(group, list, unknown));
  expect(new DesignCosts(input, unknown).of(house, input)).toBe(costOf(house, cuts, list)?.total);
});

test("cost is compared only where every tube and the anchors of the range have a price", () => {
  const said = (search: unknown, changes: Record<string, unknown> = {}) => {
    const { today, range } = rangeOf(search, changes);
    return new DesignCosts(today.input, unknown).notCompared(range)?.join("") ?? null;
  };
  const priced = { hoops: { counts: [8, 9] }, anchors: { kind: "screw", per_rail: [4] } };
  expect(said(priced)).toBeNull();
  expect(said(priced, { prices: undefined })).toMatch(/no prices/);
  expect(said({ ...priced, anchors: { kind: "deadman", per_rail: [4] } })).toMatch(
    /no price for anchors \(deadman\)/,
  );
  expect(said(wide)).toMatch(/no price for .*HSS2\.375X0\.125.* and 1 more/);
});
