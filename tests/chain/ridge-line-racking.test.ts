import { rackBase } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { baseRacking } from "../../packages/house/src/chain/along/base-racking.ts";
import { rackedBase } from "../../packages/house/src/chain/along/racked-base.ts";
import { fitted } from "./fitted-house.ts";
import { fittedContext as context } from "./made-links.ts";

const cross = fitted.links.crossMembers;
if (!cross) throw new Error("the example has cross members");
const base = rackedBase(fitted, cross);

/** Moments of every cross member are straight lines: what crosses its middle along the house. */
function acrossMiddle(pull: number): number[] {
  const drag = { pull: { left: pull, right: 0 }, friction: pull, held: "left" } as const;
  const racked = rackBase(base, drag);
  if (racked.outcome !== "held") throw new Error(racked.outcome);
  return racked.ways.map(({ crossMembers }) =>
    crossMembers.reduce((sum, sections) => {
      const middle = sections.filter(({ at }) => at <= base.span / 2).at(-1);
      return sum + (middle?.shear ?? Number.NaN);
    }, 0),
  );
}

describe("the base dragged by one front corner", () => {
  test("half the pull crosses to the other rail: balance of the rail that is pulled", () => {
    for (const shear of acrossMiddle(9000)) expect(Math.abs(shear)).toBeCloseTo(4500, 5);
  });

  test("four corner braces stand in their corners, others are not counted", () => {
    expect(base.braces).toHaveLength(4);
    const { cornerBraces } = fitted.links;
    if (!cornerBraces) throw new Error("the example has corner braces");
    const links = { ...fitted.links, cornerBraces: { ...cornerBraces, count: 2 } };
    expect(rackedBase({ ...fitted, links }, cross).braces).toEqual([]);
  });

  test("both ways of racking are told with their pull, and what is left out", () => {
    const findings = baseRacking(context);
    expect(findings.map(([first]) => String(first))).toEqual([
      "Dragged by one front corner with ",
      "Dragged with ",
      expect.stringContaining("neither hoops nor a drawbar"),
    ]);
  });
});
