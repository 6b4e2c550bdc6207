import { findPeaks, noPeaks } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { baseOf, heldPlan, limp, rigidMember, sides } from "./plan-cases.ts";

const crossMembers = [0, 12].map(rigidMember);
const nothing = {
  momentMost: 0,
  momentMostAt: 0,
  momentLeast: 0,
  momentLeastAt: 0,
  shear: 0,
  shearAt: 0,
  torque: 0,
  torqueAt: 0,
};

test.each([1, -1])(
  "a side force held evenly bends the rails by q L^2 / 8 at mid-length: %d",
  (sense) => {
    // Feet at the ends push with half of the line load each.
    const [q, length] = [150, 12];
    const push = (sense * q * length) / 2;
    const base = baseOf({ hoops: [limp(0), limp(length)], crossMembers });
    const { plan, response } = heldPlan(base, [push, 0, push, 0, push, 0, push, 0]);
    expectNear([...response.evenHold], [sense * q, 0], 1e-12);
    for (const side of sides) {
      const peaks = noPeaks();
      findPeaks(plan, response, side, peaks);
      // Bent as by a load from below: the other sense.
      const most = (-sense * (q * length ** 2)) / 8;
      expectNear([peaks.momentMost, peaks.momentLeast], sense > 0 ? [0, most] : [most, 0], 1e-12);
      expectNear([sense > 0 ? peaks.momentLeastAt : peaks.momentMostAt], [length / 2], 1e-12);
      expectNear([Math.abs(peaks.shear)], [Math.abs(push)], 1e-12);
    }
  },
);

describe("peaks are told where they are first met", () => {
  test("of a rail that carries nothing: noughts at its front end", () => {
    expect(noPeaks()).toEqual(nothing);
    const { plan, response } = heldPlan(baseOf({ hoops: [limp(5)], crossMembers }), [0, 0, 0, 0]);
    const peaks = noPeaks();
    for (const side of sides) {
      findPeaks(plan, response, side, peaks);
      expect(Object.values(peaks).map(Math.abs)).toEqual(Object.values(nothing));
    }
  });

  test("of a torque that goes on past a foot that asks for none: where it begins", () => {
    const hoops = [limp(1.5), limp(3)];
    const { plan, response } = heldPlan(
      baseOf({ hoops, crossMembers }),
      [0, 0, 0, 0, 0, -400, 0, 0],
    );
    const peaks = noPeaks();
    findPeaks(plan, response, "left", peaks);
    // A quarter of the length from the front: three quarters of the torque go there.
    expectNear([peaks.torque, peaks.torqueAt], [300, 0], 1e-9);
  });
});
