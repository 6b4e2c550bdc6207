import { houseSchema, readHouseModel } from "@hoopstay/house";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { withValueAt } from "../../packages/house/src/compare/changed-document.ts";
import { steelWeight } from "../../packages/house/src/compare/steel-weight.ts";
import { PreparedShells } from "../../packages/house/src/design-search/design/prepared-shell.ts";
import {
  designChanges,
  designWords,
} from "../../packages/house/src/design-search/found/design-words.ts";
import { takeOff } from "../../packages/house/src/take-off/take-off.ts";
import { exampleDocument } from "../compare/today.ts";
import { level } from "../hold-down/example-house.ts";
import { rangeOf, someDesigns, wide } from "./searched-house.ts";

const { today, range } = rangeOf(wide);
const { anchors: _, ...tubesOnly } = wide;
const plain = rangeOf(tubesOnly).range;
const shells = new PreparedShells(today.input, today.house, level.site, []);

test.each(someDesigns(plain, level.site, 4).map((design) => [design] as const))(
  "the keys to change, typed into the house file, make the house that was found",
  (design) => {
    const changes = designChanges(today.input, today.house.lines.hoopCount, design, undefined);
    const typed = changes.reduce<unknown>((file, { key, to }) => {
      const value = parse(to);
      return withValueAt(file, key.split("."), value);
    }, exampleDocument);
    const input = houseSchema.parse(typed);
    const house = readHouseModel(input, []);
    const shell = shells.of(design);
    if (!house || !shell) throw new Error("the design is refused");
    const found = shells.house(shell, design);
    expect(steelWeight(house, takeOff(house))).toEqual(steelWeight(found, takeOff(found)));
    expect(house.links).toEqual(found.links);
    expect(house.lines).toEqual(found.lines);
  },
);

test("a design in words tells hoops, rails and anchors", () => {
  const [first] = someDesigns(range, level.site, 1);
  if (!first) throw new Error("no design");
  expect(designWords(first, "eight-inch screw anchor")).toBe(
    "7 hoops of 2.375 in x 14 ga, galvanized; rails HSS4X3X3/16; on each rail 4 anchors (eight-inch screw anchor)",
  );
});
