import { asd, type LineTerms, type SlidingTerms, slideAt } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";

const calm = { fx: 0, fy: 0, fz: 0, turnRight: 0, turnLeft: 0 };
/** Asks all of its tethers as soon as anything turns the house. */
const atOnce: LineTerms = { weightMoment: 0, anchorMoment: 0, slopeMoment: 0 };

/** Level part of 500 N toward +x, 866 N down. */
const downwind = (x: number) =>
  ({ x, y: 0, pull: 1000, toward: [0.5, 0, -Math.sqrt(0.75)] }) as const;
const upwind = { ...downwind(-2), toward: [-0.5, 0, -Math.sqrt(0.75)] } as const;

/** 6000 N on level ground with a friction of 0.5, on tethers aslant. */
function sliding(anchors: SlidingTerms["terms"]["holding"]["anchors"]): SlidingTerms {
  const weight = { name: "low" as const, W: 1, x: 0, y: 0, z: 1 };
  const holding = { weight, anchors, slope: null, friction: 0.5 };
  const level = { deadNormal: 6000, downslope: 0, anchorDown: 0, sideways: true };
  return { terms: { ...level, holding, combination: asd }, right: atOnce, left: atOnce };
}

describe("sliding on slanted tethers at one pressure, by hand", () => {
  test("in a calm nothing is asked, and friction alone is there", () => {
    expect(slideAt(sliding([downwind(-2), upwind]), calm, 100)).toEqual({
      demand: 0,
      contact: 6000,
      tether: 0,
      resistance: 3000,
    });
    const lifting = slideAt(sliding([downwind(-2)]), { ...calm, fz: 50 }, 100);
    expect(lifting.resistance).toBeCloseTo(0.5 * (6000 - 0.6 * 5000), 9);
  });

  test.each([
    ["on both rails alike", [-2, 2], 1000],
    ["on a rail and between", [-2, 0], 1000],
    ["on the other and between", [2, 0], 1000],
    ["on all three", [-2, 0, 2], 1500],
  ])("tethers that pull along %s count each", (_, places, along) => {
    const wind = { ...calm, fx: 10, turnRight: 1, turnLeft: 1 };
    const { tether, resistance } = slideAt(sliding([upwind, ...places.map(downwind)]), wind, 100);
    expect(tether).toBeCloseTo(500 - along, 9);
    expect(resistance).toBeCloseTo(3000 + 500 - along, 9);
  });
});
