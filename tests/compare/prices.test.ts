import { FOOT, showWords } from "@hoopstay/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { costOf } from "../../packages/house/src/compare/cost.ts";
import { cutListOf } from "../../packages/house/src/compare/stock/cut-lists.ts";
import {
  type HouseBending,
  type TubeGroup,
  tubeGroups,
} from "../../packages/house/src/compare/stock/house-pieces.ts";
import { jointPlaces } from "../../packages/house/src/compare/stock/joint-places.ts";
import { priceComplaints } from "../../packages/house/src/compare/stock/price-complaints.ts";
import { priceList } from "../../packages/house/src/compare/stock/price-list.ts";
import { exampleDocument, exampleWith, today } from "./today.ts";

const unknown: HouseBending = { hoop: null, rail: null };
const withPrices = (prices: unknown) => exampleWith({ prices });

const cutsOf = ({ house, input }: typeof today, bending = unknown) =>
  tubeGroups(house, input).map((group) => cutListOf(group, priceList(input), bending));
const rails = { for: "rails.tube", length: "24 ft" };

describe("what it costs, by hand", () => {
  test("four sticks of 24 ft make two rails of 41 ft and four noses of 14 in", () => {
    // Spliced 3 ft 6 in from the middle: 24 ft and 17 ft; 17 ft and four noses of 14 in leave 2 ft 4 in.
    const house = withPrices({ currency: "EUR", stock: [{ ...rails, price: 100 }] });
    const cut = cutsOf(house).find(({ tube }) => tube.startsWith("HSS4X3X3/16"));
    expect(cut).toMatchObject({ stock: 24 * FOOT, price: 400, fewest: true });
    expect(cut?.sticks).toHaveLength(4);
  });

  test("steel of 4 times 100 and eight anchors of 20, and nothing that has no price", () => {
    const house = withPrices({
      currency: "EUR",
      stock: [{ ...rails, price: 100 }],
      anchors: [{ price: 20 }],
    });
    const cost = costOf(house.house, cutsOf(house), priceList(house.input));
    expect(cost).toMatchObject({ currency: "EUR", total: 560 });
    expect(cost?.unpriced).toContain("2.375 in x 14 ga, galvanized");
    expect(cost?.unpriced.join()).toMatch(/bolts/);
    expect(cost?.unpriced).not.toContain("anchors");
  });

  test("anchors of a kind have the price of their kind; without one they are named", () => {
    const anchors = [
      { name: "A", side: "left", along: "18 ft", kind: "screw" },
      { name: "B", side: "right", along: "18 ft", kind: "screw" },
      { name: "C", side: "left", along: "-18 ft", kind: "deadman" },
    ];
    const prices = { currency: "USD", anchors: [{ kind: "screw", price: 64.5 }] };
    const house = exampleWith({ anchors, prices });
    const cost = costOf(house.house, [], priceList(house.input));
    expect(cost?.total).toBe(129);
    expect(cost?.unpriced).toContain("anchors (deadman)");
  });

  test("without prices there is no cost, and a cut list of assumed sticks that says so", () => {
    const house = withPrices(undefined);
    expect(costOf(house.house, cutsOf(house), priceList(house.input))).toBeNull();
    for (const { price, findings } of cutsOf(house)) {
      expect(price).toBeNull();
      expect(findings.map((words) => showWords(words, "us")).join()).toContain(
        "Sticks of 24 ft are assumed",
      );
    }
  });

  test("of two stick lengths the cheaper plan is taken", () => {
    // Two sticks of 45 ft: 41 ft in two pieces and two noses each.
    const long = { ...rails, length: "45 ft", price: 210 };
    const priceWith = (price: number): number | null | undefined =>
      cutsOf(withPrices({ currency: "USD", stock: [{ ...rails, price }, long] })).find(({ tube }) =>
        tube.startsWith("HSS4X3X3/16"),
      )?.price;
    expect(priceWith(100)).toBe(400);
    expect(priceWith(110)).toBe(420);
  });
});

describe("the cut lists of a house", () => {
  test("law: every member has its whole length in pieces, for any stick", () => {
    const groups = tubeGroups(today.house, today.input);
    const lengthOf = ({ members }: TubeGroup): number =>
      members.reduce((sum, { length, count }) => sum + length * count, 0);
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 60 }), (feet) => {
        const list = {
          ...priceList(today.input),
          stock: groups.map(({ tube }) => ({ tube, length: feet * FOOT, price: null })),
        };
        for (const group of groups) {
          const { sticks, stock, waste } = cutListOf(group, list, unknown);
          const cut = sticks.flatMap(({ pieces }) => pieces.map(({ length }) => length));
          const total = cut.reduce((sum, length) => sum + length, 0);
          expect(total).toBeCloseTo(lengthOf(group), 6);
          expect(Math.max(...cut)).toBeLessThanOrEqual(stock * (1 + 1e-12));
          expect(waste).toBeCloseTo(1 - total / (stock * sticks.length), 9);
        }
      }),
      { seed: 20240601, numRuns: 40 },
    );
  });

  test("law: a joint stands where the member bends no more than half of its most, or where least", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6.1, max: 20, noNaN: true }),
        fc.double({ min: 0.3, max: 5, noNaN: true }),
        (length, waves) => {
          const bending = (along: number): number =>
            Math.abs(Math.sin((waves * Math.PI * along) / length));
          for (const { joints, lengths, share } of jointPlaces(length, 6, bending)) {
            expect(lengths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(length, 9);
            expect(share).toBeCloseTo(Math.max(...joints.map(bending)), 12);
          }
          const shares = jointPlaces(length, 6, bending).map(({ share }) => share ?? 1);
          expect(shares.length === 1 || Math.max(...shares) <= 0.5).toBe(true);
        },
      ),
      { seed: 20240601 },
    );
  });
});

describe("prices that contradict themselves", () => {
  test.each([
    ["neither tube nor key", { stock: [{ length: "24 ft" }] }, "key-missing"],
    ["both", { stock: [{ ...rails, tube: { size: "HSS4X3X1/8" } }] }, "sizes-disagree"],
    ["a key that is no tube", { stock: [{ for: "rails.length", length: "24 ft" }] }, "wrong-kind"],
    [
      "a tube that is not there",
      { stock: [{ for: "truss_bars.tube", length: "24 ft" }] },
      "key-missing",
    ],
    [
      "a tube of no such size",
      { stock: [{ tube: { size: "HSS9X9X9" }, length: "24 ft" }] },
      "size-unknown",
    ],
    ["a kind that is not there", { anchors: [{ kind: "scerw", price: 5 }] }, "wrong-kind"],
    [
      "a kind twice",
      {
        anchors: [
          { kind: "screw", price: 5 },
          { kind: "screw", price: 6 },
        ],
      },
      "key-duplicate",
    ],
    ["no kind twice", { anchors: [{ price: 5 }, { price: 6 }] }, "key-duplicate"],
  ])("%s", (_, prices, code) => {
    const { input } = withPrices({ currency: "USD", ...prices });
    expect(priceComplaints(input).map((one) => one.code)).toEqual([code]);
  });

  test("those of the example are sound", () => {
    expect(exampleDocument.prices).toBeDefined();
    expect(priceComplaints(today.input)).toEqual([]);
  });
});
