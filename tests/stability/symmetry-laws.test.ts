import { type ActionTable, type CheckId, checkIds } from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  actions,
  between,
  combination,
  type HeldHouse,
  heldHouse,
  holds,
  pressure,
  seed,
  sloping,
  solve,
  unknownSlope,
} from "./arbitrary-holding.ts";

const slopes = fc.oneof(fc.constant(null), sloping);
const anyHouse = heldHouse({ anchors: "slanted", slope: slopes });

/** Each component of each row times its factor. */
function timesEach({ count, components }: ActionTable, factors: readonly number[]): ActionTable {
  return {
    count,
    components: components.map((value, place) => value * (factors[place % 7] ?? NaN)),
  };
}

const near = (a: number, b: number, within = 1e-9): boolean =>
  a === b ||
  (Number.isFinite(a - b) &&
    Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b)) + 1e-12);

type Axis = "x" | "y";
const partners: Record<Axis, Partial<Record<CheckId, CheckId>>> = {
  x: { "tip-right": "tip-left", "tip-left": "tip-right" },
  y: { "tip-front": "tip-back", "tip-back": "tip-front" },
};
const mirrorSigns: Record<Axis, number[]> = {
  x: [-1, 1, 1, 1, -1, -1, -1],
  y: [1, -1, 1, -1, 1, -1, 1],
};

function mirrored(house: HeldHouse, axis: Axis): HeldHouse {
  const [sx, sy] = axis === "x" ? [-1, 1] : [1, -1];
  const flip = <Place extends { x: number; y: number }>(one: Place): Place => ({
    ...one,
    x: sx * one.x,
    y: sy * one.y,
  });
  const { bearing, weights, anchors, slope, friction } = house;
  const [low, high] = weights;
  const { front, back } = bearing;
  return {
    friction,
    bearing: axis === "x" ? bearing : { ...bearing, front: back, back: front },
    weights: [flip(low), flip(high)],
    anchors: anchors.map((one) => ({
      ...flip(one),
      toward: [sx * one.toward[0], sy * one.toward[1], one.toward[2]],
    })),
    slope: slope?.downhill
      ? { ...slope, downhill: [sx * slope.downhill[0], sy * slope.downhill[1]] }
      : slope,
  };
}

describe(`laws of likeness (seed ${seed})`, () => {
  test("a mirrored house under mirrored wind has mirrored ratios and limits", () => {
    holds(
      fc.property(anyHouse, actions, combination, pressure, (house, table, by, q) => {
        const all = solve(house, table, by, q);
        for (const axis of ["x", "y"] as const) {
          const image = timesEach(table, mirrorSigns[axis]);
          const other = solve(mirrored(house, axis), image, by, q);
          for (const check of checkIds) {
            const twin = other[partners[axis][check] ?? check];
            expect(near(twin.byRatio.ratio, all[check].byRatio.ratio), check).toBe(true);
            expect(near(twin.byLimit.limit, all[check].byLimit.limit), check).toBe(true);
          }
        }
      }),
    );
  });

  test("lengths k, weights and pulls k2 at equal pressure: the same ratios and limits", () => {
    const law = [anyHouse, actions, combination, pressure, between(0.5, 2)] as const;
    holds(
      fc.property(...law, (house, table, by, q, k) => {
        const { bearing, weights, anchors } = house;
        const [low, high] = weights.map(({ name, W, x, y, z }) => ({
          name,
          W: k * k * W,
          x: k * x,
          y: k * y,
          z: k * z,
        }));
        if (!low || !high) throw new Error("two weights");
        const larger: HeldHouse = {
          ...house,
          bearing: {
            halfSpan: k * bearing.halfSpan,
            front: k * bearing.front,
            back: k * bearing.back,
            railWidth: k * bearing.railWidth,
            allowable: bearing.allowable,
          },
          weights: [low, high],
          anchors: anchors.map((one) => ({
            ...one,
            x: k * one.x,
            y: k * one.y,
            pull: k * k * one.pull,
          })),
        };
        const [f, m] = [k * k, k ** 3];
        const before = solve(house, table, by, q);
        const after = solve(larger, timesEach(table, [f, f, f, m, m, m, f]), by, q);
        for (const check of checkIds) {
          const [one, other] = [before[check], after[check]];
          expect(near(one.byRatio.ratio, other.byRatio.ratio, 1e-8), check).toBe(true);
          expect(near(one.byLimit.limit, other.byLimit.limit, 1e-8), check).toBe(true);
        }
      }),
    );
  });

  test("wind k times as strong: limits divided by k", () => {
    holds(
      fc.property(anyHouse, actions, combination, between(1, 4), (house, table, by, k) => {
        const stronger = timesEach(table, [k, k, k, k, k, k, k]);
        const [before, after] = [solve(house, table, by, k * 100), solve(house, stronger, by, 100)];
        for (const check of checkIds) {
          const [one, other] = [before[check], after[check]];
          expect(near(one.byRatio.ratio, other.byRatio.ratio), check).toBe(true);
          if (one.byLimit.limit > 1e-6) {
            expect(near(one.byLimit.limit, k * other.byLimit.limit), check).toBe(true);
          }
        }
      }),
    );
  });

  test("a slope of unknown direction is at least as bad as any known one", () => {
    const straight = fc.oneof(
      heldHouse({ slope: unknownSlope }),
      heldHouse({ anchors: "vertical", slope: unknownSlope }),
    );
    const turn = between(-Math.PI, Math.PI);
    holds(
      fc.property(straight, actions, combination, pressure, turn, (house, table, by, q, at) => {
        const worst = solve(house, table, by, q);
        const angle = house.slope?.angle ?? 0;
        const downhill = [Math.cos(at), Math.sin(at)] as const;
        const known = solve({ ...house, slope: { angle, downhill } }, table, by, q);
        for (const check of checkIds) {
          const [bad, some] = [worst[check], known[check]];
          expect(some.byRatio.ratio <= bad.byRatio.ratio * (1 + 1e-9) + 1e-12, check).toBe(true);
          expect(some.byLimit.limit >= bad.byLimit.limit * (1 - 1e-9) - 1e-12, check).toBe(true);
        }
      }),
    );
  });
});
