import { describe, expect, test } from "vitest";
import { shapeRail, sumAlongRail } from "../../packages/frame/src/plan/along-rails.ts";
import { actOnRails, railActions } from "../../packages/frame/src/plan/rail-actions.ts";
import {
  greatestWay,
  momentGap,
  railsAgree,
  shapeGap,
} from "../../packages/frame/src/plan/rail-checks.ts";
import { planResponse } from "../../packages/frame/src/plan/response.ts";
import { baseOf, limp } from "./plan-cases.ts";

const rail = (stations: number) => planResponse(0, 0, 0, stations).left;
const none = Float64Array.from([0, 0]);
const y = Float64Array.from([0, 2, 5, 9]);
const bending = 20;

describe("along a rail", () => {
  test("behind the rear end stands what does not balance", () => {
    const into = rail(4);
    const side = Float64Array.from([3, -5, 0, 10]);
    const torque = Float64Array.from([1, 2, -4, 8]);
    sumAlongRail(y, { side, torque }, none, into);
    expect([...into.shear]).toEqual([3, -2, -2, 8]);
    expect([...into.torque]).toEqual([-1, -3, 1, -7]);
    expect([...into.moment]).toEqual([0, 6, 0, -8]);
  });

  test("a span bent by couples M at its front and N at its rear: (2 M + N) l / 6 and (M + 2 N) l / 6", () => {
    const [M, N, l] = [12, 30, 5];
    const into = rail(2);
    into.moment.set([M, N]);
    // Unknowns of two stations: both ends at the same way.
    const solved = new Float64Array(12);
    shapeRail(0, { bending, twist: 1 }, Float64Array.from([0, l]), none, solved, into);
    const slopes = [(-(2 * M + N) * l) / 6, ((M + 2 * N) * l) / 6].map((one) => one / bending);
    expect([...into.slope]).toEqual(slopes.map((one) => expect.closeTo(one, 12)));
  });
});

describe("the size of what acts on the rails", () => {
  const stations = {
    y: Float64Array.from([0, 12]),
    ofTie: Int32Array.from([0]),
    ofAnchor: Int32Array.from([1]),
  };
  const sizeOf = (load: readonly number[], ties: readonly number[], way: number) => {
    const sideHold = [{ rail: "right", y: 12, stiffness: 40 }] as const;
    const base = baseOf({ span: 4, hoops: [limp(0)], sideHold });
    const solved = new Float64Array(12);
    // The way of the right rail at its rear end.
    solved[9] = way;
    const rails = [railActions(2), railActions(2)] as const;
    const into = planResponse(1, 0, 1, 2);
    return actOnRails(base, stations, load, solved, Float64Array.from(ties), rails, into);
  };

  test("loads, what ties take of them, and anchors, all by size; moments over the span", () => {
    expect(sizeOf([-5, 8, 3, -12], [0, 0, 0], 0)).toBe(2 * (5 + 2 + 3 + 3));
    expect(sizeOf([0, 0, 0, 0], [7, -4, 20], 0)).toBe(7 + 7 + 1 + 5);
    expect(sizeOf([0, 0, 0, 0], [0, 0, 0], 3)).toBe(120);
    expect(sizeOf([-5, 8, 3, -12], [0, 0, 0], -3)).toBe(26 + 120);
  });
});

describe("gaps between what was solved and what is summed", () => {
  test("of moments: the greatest of all stations, the free rear end with them", () => {
    const summed = rail(4);
    const solved = new Float64Array(24);
    for (const [station, moment] of [0, 40, -30, 0].entries()) {
      summed.moment[station] = moment;
      solved[6 * station + 1] = moment;
    }
    const gapWith = (changes: readonly number[]) => {
      const off = { ...summed, moment: summed.moment.map((one, i) => one + (changes[i] ?? 0)) };
      return momentGap(1, solved, off);
    };
    expect(gapWith([])).toBe(0);
    expect(gapWith([0, 7, 0, 0])).toBe(7);
    expect(gapWith([0, 2, -9, 1])).toBe(9);
    expect(gapWith([0, 2, 0, -5])).toBe(5);
  });

  test("the greatest way of both rails, at any station, to either side", () => {
    const [left, right] = [rail(3), rail(3)];
    left.deflection.set([1, -4, 2]);
    right.deflection.set([3, 0, -3]);
    expect(greatestWay(left, right)).toBe(4);
    right.deflection.set([3, 0, -6]);
    expect(greatestWay(left, right)).toBe(6);
    expect(greatestWay(rail(3), rail(3))).toBe(0);
  });

  test("of slopes: over the span, as a part of the greatest way and of what the moment bends it by", () => {
    // Even moment M: slopes rise by M h / (E I) from station to station.
    const [M, way, moment] = [10, 3, 8];
    const shape = rail(4);
    shape.moment.fill(M);
    shape.slope.set(y.map((at) => (M * at) / bending));
    const gapWith = (off: readonly number[]) => {
      const slope = shape.slope.map((one, i) => one + (off[i] ?? 0));
      return shapeGap({ bending, twist: 1 }, y, none, { ...shape, slope }, way, moment);
    };
    expect(gapWith([])).toBe(0);
    // Off behind a span of 2, and from there before one of 3.
    const parts = [2, 3].map((h) => (0.1 * h) / (way + (moment * h * h) / bending));
    expect(gapWith([0, 0.1])).toBeCloseTo(Math.max(...parts), 12);
    expect(gapWith([-0.1])).toBeCloseTo(parts[0] ?? NaN, 12);
    expect(gapWith([0, 0, 0, 0.1])).toBeCloseTo(0.4 / (way + (moment * 16) / bending), 12);
  });

  test("a rail that does not move and carries nothing has the right shape", () => {
    expect(shapeGap({ bending, twist: 1 }, y, none, rail(4), 0, 0)).toBe(0);
  });
});

describe("a result is kept if nothing misses by more than a billionth of the forces", () => {
  const [length, span, h] = [9, 4, 4];
  const base = baseOf({ length, span, left: { bending, twist: 1 }, right: { bending, twist: 1 } });
  /** Of two rails that carry nothing, changed somewhere, with forces of 1e9 N at work. */
  const agree = (change: (into: ReturnType<typeof planResponse>) => void, size = 1e9) => {
    const into = planResponse(0, 0, 0, y.length);
    change(into);
    return railsAgree(base, y, new Float64Array(24), into, size);
  };

  test.each(["left", "right"] as const)("the %s rail", (side) => {
    for (const sense of [1, -1]) {
      const shear = (off: number) =>
        agree((into) => {
          into[side].shear[3] = sense * off;
        });
      expect([shear(0.999), shear(1.001)]).toEqual([true, false]);
      const torque = (off: number) =>
        agree((into) => {
          into[side].torque[3] = sense * off;
        });
      expect([torque(0.999 * span), torque(1.001 * span)]).toEqual([true, false]);
      const moment = (off: number) =>
        agree((into) => {
          into[side].moment[3] = sense * off;
        });
      expect([moment(0.999 * length), moment(1.001 * length)]).toEqual([true, false]);
      const slope = (part: number) =>
        agree((into) => {
          into.left.deflection[1] = 7;
          const most = 7 + (1e9 * length * h * h) / bending;
          into[side].slope[3] = (sense * part * most) / h;
        });
      expect([slope(0.999e-9), slope(1.001e-9)]).toEqual([true, false]);
    }
  });

  test("what is no number is not kept", () => {
    for (const part of ["shear", "torque", "moment", "slope"] as const) {
      const found = agree((into) => {
        into.right[part][3] = Number.NaN;
      });
      expect(found).toBe(false);
    }
  });

  test("nothing at work, nothing amiss; a way may miss by a billionth of itself", () => {
    expect(agree(() => {}, 0)).toBe(true);
    const missed = (off: number) =>
      agree((into) => {
        into.left.deflection[1] = h;
        into.left.slope[3] = off;
      }, 0);
    expect([missed(1e-9), missed(1.001e-9)]).toEqual([true, false]);
  });
});
