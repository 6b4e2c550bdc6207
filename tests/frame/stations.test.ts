import { BasePlan } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { stationsOf } from "../../packages/frame/src/plan/stations.ts";
import { baseOf, heldPlan, limp, rigidMember } from "./plan-cases.ts";

describe("places nearer than a millionth of the length are one station", () => {
  test.each([1, 12, 40])("rails of %d m", (length) => {
    const count = (part: number) => {
      const hoops = [limp(length / 2), limp(length / 2 + part * length)];
      return stationsOf(baseOf({ length, hoops })).y.length;
    };
    expect([count(0), count(0.99e-6), count(1.01e-6)]).toEqual([3, 3, 4]);
  });

  test("a millionth itself is near", () => {
    expect([...stationsOf(baseOf({ length: 1, hoops: [limp(1e-6)] })).y]).toEqual([0, 1]);
  });

  test("whatever stands about a millionth before the rear end keeps its place", () => {
    const step = 2 ** -53;
    for (let steps = -4; steps <= 4; steps += 1) {
      const y = 1 - 1e-6 + steps * step;
      const stations = stationsOf(baseOf({ length: 1, hoops: [limp(y)] }));
      const at = stations.y[stations.ofTie[0] as number] as number;
      expect(Math.abs(at - y)).toBeLessThanOrEqual(1e-6 + step);
    }
  });
});

test("held evenly, a base has no anchor", () => {
  const { response } = heldPlan(baseOf({ crossMembers: [0, 12].map(rigidMember) }), []);
  expect(response.anchorForce).toHaveLength(0);
  expect(new BasePlan(baseOf({})).y).toEqual(Float64Array.from([0, 12]));
});
