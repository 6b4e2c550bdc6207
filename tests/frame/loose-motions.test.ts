import { BasePlan } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { looseMotionsOf } from "../../packages/frame/src/plan/loose-motions.ts";
import { baseOf, stiffnessFrom } from "./plan-cases.ts";

/** A hoop that resists one movement of its feet only: so much spread, so much turn of each foot. */
const single = (y: number, movement: readonly number[], size = 1) => ({
  y,
  stiffness: stiffnessFrom(movement.map((a) => movement.map((b) => size * a * b))),
});
const movements: readonly [number, readonly number[]][] = [
  [3, [2, 3, -1]],
  [5, [3, -1, 2]],
  [8, [-2, 1, 4]],
  [11, [1, 2, 3]],
];
const hoops = (count: number, size = 1) =>
  movements.slice(0, count).map(([y, movement]) => single(y, movement, size));
const anchors = [
  { rail: "left", y: 2, stiffness: 3 },
  { rail: "right", y: 7, stiffness: 5 },
  { rail: "left", y: 10, stiffness: 2 },
] as const;

describe("each support that resists one movement takes one way to move", () => {
  const counts = [0, 1, 2, 3, 4];

  test.each(counts)("%d hoops, the side held evenly: of four ways", (count) => {
    expect(new BasePlan(baseOf({ hoops: hoops(count) })).loose).toHaveLength(4 - count);
  });

  test.each(counts.flatMap((count) => [1, 2].map((held) => [count, held] as const)))(
    "%d hoops and %d side springs: of six",
    (count, held) => {
      const base = baseOf({ hoops: hoops(count), sideHold: anchors.slice(0, held) });
      expect(new BasePlan(base).loose).toHaveLength(6 - count - held);
    },
  );

  test("a third side spring resists what another hoop would", () => {
    const base = baseOf({ hoops: hoops(3), sideHold: anchors });
    expect(new BasePlan(base).loose).toEqual([]);
    expect(new BasePlan({ ...base, hoops: hoops(2) }).loose).toHaveLength(1);
  });

  test.each([1e-9, 1e9])("whatever their stiffness is counted in: %d", (size) => {
    for (const count of counts) {
      const of = (by: number) => new BasePlan(baseOf({ hoops: hoops(count, by) })).loose;
      expect(of(size)).toEqual(of(1));
    }
  });
});

test("springs a few hundredths of a millimetre about mid-length keep a base from turning about it", () => {
  const hoopsAcross = [1, 11].flatMap((y) => [single(y, [1, 0, 0]), single(y, [0, 1, 1])]);
  const turns = [single(1, [0, 1, -1])];
  const sideHold = [6 - 3e-5, 6 + 3e-5].map((y) => ({ rail: "left" as const, y, stiffness: 1e5 }));
  expect(new BasePlan(baseOf({ hoops: [...hoopsAcross, ...turns], sideHold })).loose).toEqual([]);
});

test("a ten-billionth of its own stiffness left against a motion is none", () => {
  const stations = {
    y: Float64Array.from([0, 12]),
    ofTie: Int32Array.from([0, 1]),
    ofAnchor: Int32Array.from([]),
  };
  // The right foot turns against 1e10, of which all but `left` goes with the left foot's turn.
  const loose = (left: number) => {
    const shared = 1e10 - left;
    const springs = [1, 0, 0, shared, shared, 1e10, 1, 0, 0, 0, 0, 0];
    return looseMotionsOf(stations, Float64Array.from(springs), "evenly");
  };
  expect(loose(0)).toEqual(["twist-right"]);
  expect(loose(1)).toEqual(["twist-right"]);
  expect(loose(2)).toEqual([]);
});
