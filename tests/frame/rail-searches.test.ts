import { type BentRail, railReactions } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { followPath } from "../../packages/frame/src/rail/contact-path.ts";
import { settleAtOnce } from "../../packages/frame/src/rail/settle.ts";
import { contactRail, seed } from "./arbitrary-rail.ts";
import { prepared } from "./prepared-rail.ts";

const greatest = (values: Float64Array) => Math.max(...values.map(Math.abs));
function expectSameShape(one: BentRail, other: BentRail): void {
  const most = greatest(other.deflection);
  const off = one.deflection.map((value, i) => Math.abs(value - (other.deflection[i] ?? NaN)));
  expect(greatest(off)).toBeLessThanOrEqual(1e-7 * most);
}

describe(`the two searches for the supports at work (seed ${seed})`, () => {
  test("the sure one alone tells what both tell, and the quick one's set is the same rail", () => {
    let [tried, quick, held] = [0, 0, 0];
    fc.assert(
      fc.property(contactRail, (one) => {
        const { outcome } = railReactions(one.rail, one.loads, one.supports);
        const sure = prepared(one);
        expect(followPath(sure)).toBe(outcome);
        tried += 1;
        if (outcome !== "held") return;
        held += 1;
        const settled = prepared(one);
        if (!settleAtOnce(settled)) return;
        quick += 1;
        expectSameShape(settled.bent, sure.bent);
      }),
      { seed, numRuns: 400 },
    );
    expect(held).toBeGreaterThan(tried / 5);
    expect(quick).toBeGreaterThan(held / 2);
  });

  test("a set at hand from another case is mended, not kept", () => {
    fc.assert(
      fc.property(contactRail, contactRail, (one, other) => {
        const fresh = prepared(one);
        if (!settleAtOnce(fresh)) return;
        const used = prepared(one);
        for (const i of used.set.keys()) used.set[i] = (other.supports.length + i) % 3;
        for (const [i, side] of used.table.side.entries()) if (side === 0) used.set[i] = 1;
        const capless = [...used.set.keys()].filter((i) => used.table.cap[i] === Infinity);
        for (const i of capless) if (used.set[i] === 2) used.set[i] = 0;
        if (settleAtOnce(used)) expectSameShape(used.bent, fresh.bent);
      }),
      { seed, numRuns: 200 },
    );
  });
});
