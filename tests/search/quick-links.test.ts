import { evaluate, type House, houseSchema, readHouseModel, type Site } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { chainRows } from "../../packages/house/src/chain/chain-rows.ts";
import { designCombinations } from "../../packages/house/src/chain/combination.ts";
import { chainContext } from "../../packages/house/src/chain/context.ts";
import { QuickLinks } from "../../packages/house/src/chain/quick/quick-links.ts";
import { takeOff } from "../../packages/house/src/take-off/take-off.ts";
import { exampleDocument } from "../compare/today.ts";
import { level, sloping } from "../hold-down/example-house.ts";

type Block = Record<string, unknown>;

const document = exampleDocument as Record<string, Block>;

const houseWith = (changes: Block): House => {
  const house = readHouseModel(houseSchema.parse({ ...document, ...changes }), []);
  if (!house) throw new Error("the changed house is refused");
  return house;
};

const bareEnds = { ...document, cross_members: undefined, collar_ties: undefined };
const designs: readonly (readonly [string, Block, Site])[] = [
  ["today's house on the hill", {}, sloping.site],
  [
    "thin hoops and few of them",
    {
      hoops: { ...document.hoops, spacing: "80 in", tube: { size: "HSS2.375X0.125" } },
      collar_ties: undefined,
    },
    level.site,
  ],
  [
    "thin rails, a hoop every 40 in",
    {
      hoops: { ...document.hoops, spacing: "40 in" },
      rails: { ...document.rails, tube: { size: "HSS4X3X1/8" } },
    },
    sloping.site,
  ],
  ["no cross members: one foot is free to spread", bareEnds, sloping.site],
  [
    "no purlins, no boards, no bolts, no weld",
    {
      purlins: undefined,
      base_boards: undefined,
      hip_boards: undefined,
      stubs: { ...document.stubs, bolts: undefined, weld: undefined },
    },
    level.site,
  ],
];

describe.each(designs)("%s", (_, changes, site) => {
  const house = houseWith(changes);
  const evaluation = evaluate({ ...house, anchors: [] }, site);
  const links = new QuickLinks();
  const limit = links.limit(evaluation, house, takeOff(house));

  test("what the quick form promises is no less than is true: a row of the whole load path fails there", () => {
    const { rows } = chainRows(chainContext(evaluation));
    expect(limit).toBeGreaterThan(0);
    const fails = rows.some((row) =>
      designCombinations("ASD").some((one) => row.ratio(limit * (1 + 1e-9), one) > 1),
    );
    expect(fails).toBe(true);
  });

  test("asked again, or by another, the answer is the same", () => {
    expect(links.limit(evaluation, house, takeOff(house))).toBe(limit);
    expect(new QuickLinks().limit(evaluation, house, takeOff(house))).toBe(limit);
  });
});
