import { chainContext, evaluate, type House } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { sideHold, withoutPushing } from "../../packages/house/src/chain/hoop/side-hold.ts";
import { anchorsLink } from "../../packages/house/src/chain/links/anchors.ts";
import { house, site } from "./example-chain.ts";

/** The example held by lateral anchors at some places on each side, m from its middle. */
function heldAt(places: readonly number[]): House {
  const anchors = places.flatMap((y) =>
    house.anchors
      .filter(({ toward }) => Math.abs(toward[0]) > 1e-9)
      .filter(({ side }, at, all) => all.findIndex((one) => one.side === side) === at)
      .map((anchor) => ({ ...anchor, y, name: `${anchor.name} ${y}` })),
  );
  return { ...house, anchors };
}

const across = (held: House) => {
  const { cases, runs } = chainContext(evaluate(held, site));
  return cases
    .filter(({ direction }) => direction === "+x" || direction === "-x")
    .flatMap((windCase) => runs.railed.map((run) => ({ windCase, run })));
};

describe("anchors that hold the rails sideways", () => {
  test.each([
    ["evenly placed", [-5, -2, 2, 5], 4],
    ["near the front, where springs that push would hold as well", [0, 3, 5.9], 2],
  ] as const)("%s: tethers only pull, against the wind", (_, places, most) => {
    let looked = 0;
    for (const { windCase, run } of across(heldAt(places))) {
      const { anchorForce } = run.planWind(windCase);
      const { sideHold: on } = run.plan(windCase).base;
      const count = on === "evenly" ? 0 : on.length;
      expect(anchorForce).toHaveLength(count);
      expect(count).toBeLessThanOrEqual(most);
      looked += count;
      const against = windCase.direction === "+x" ? -1 : 1;
      for (const force of anchorForce) expect(force * against).toBeGreaterThanOrEqual(0);
    }
    expect(looked).toBeGreaterThan(0);
  });

  test("that some would push is told, and only then", () => {
    const told = (places: readonly number[]): boolean => {
      const { findings } = anchorsLink(chainContext(evaluate(heldAt(places), site)));
      return findings.some(([first]) => String(first).startsWith("Tethers that wind across"));
    };
    expect(told([-5, -2, 2, 5])).toBe(false);
    expect(told([0, 3, 5.9])).toBe(true);
  });

  test("an anchor that pushes is left out; at one place left the ground holds evenly", () => {
    const hold = sideHold(heldAt([-5, 0, 5]), "+x");
    expect(hold.anchors).toHaveLength(3);
    expect(withoutPushing(hold, Float64Array.of(-1, -2, -3), "+x")).toBe(hold);
    const two = withoutPushing(hold, Float64Array.of(-1, 2, -3), "+x");
    expect(two.anchors).toEqual([hold.anchors?.[0], hold.anchors?.[2]]);
    expect(withoutPushing(hold, Float64Array.of(-1, 2, 3), "+x").anchors).toBeNull();
  });
});
