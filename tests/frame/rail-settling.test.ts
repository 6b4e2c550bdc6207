import { railReactions } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { followPath } from "../../packages/frame/src/rail/contact-path.ts";
import { settleAtOnce } from "../../packages/frame/src/rail/settle.ts";
import { holding, idle } from "../../packages/frame/src/rail/support-set.ts";
import type { LoadedRail } from "./arbitrary-rail.ts";
import { expectNear, heldRail } from "./held-rail.ts";
import { imbalance, macaulayDeflection } from "./macaulay.ts";
import { prepared } from "./prepared-rail.ts";

const none = { uniform: 0, forces: [], couples: [] };
const ground = (x: number) => ({ kind: "ground", x, stiffness: 1e5 }) as const;
const anchor = (x: number) => ({ kind: "anchor", x, stiffness: 1e5 }) as const;
const rail = { length: 6, stiffness: 2e5 };
const on = (loads: Partial<LoadedRail["loads"]>, supports: LoadedRail["supports"]) =>
  prepared({ rail, loads: { ...none, ...loads }, supports });

/** Four springs on which the quick search goes round in a circle. */
const circling: LoadedRail = {
  rail: { length: 6, stiffness: 1e5 },
  loads: { ...none, uniform: 200 },
  supports: [
    { kind: "anchor", x: 6, stiffness: 1e4 },
    { kind: "anchor", x: 3, stiffness: 1e4, cap: 900 },
    { kind: "anchor", x: 1, stiffness: 1e5, cap: 1500 },
    { kind: "ground", x: 2, stiffness: 1e6 },
  ],
};

describe("the quick search", () => {
  test("settles on two supports, and with one more than the loads need", () => {
    expect(settleAtOnce(on({ uniform: 10 }, [anchor(0), anchor(6)]))).toBe(true);
    const one = on({ uniform: -10 }, [ground(0), ground(6), anchor(3)]);
    expect(settleAtOnce(one)).toBe(true);
    expect([...one.set]).toEqual([holding, holding, idle]);
  });

  test("a support without force keeps its part", () => {
    const end = on({ forces: [{ x: 0, force: -64 }] }, [ground(0), ground(6)]);
    expect(settleAtOnce(end)).toBe(true);
    expect([...end.set]).toEqual([holding, holding]);
    const bare = on({}, [ground(0), ground(6), anchor(3)]);
    bare.set[2] = idle;
    expect(settleAtOnce(bare)).toBe(true);
    expect([...bare.set]).toEqual([holding, holding, idle]);
  });

  test("an idle support that the rail only touches stays idle", () => {
    const one = on({ forces: [{ x: 0, force: -64 }] }, [ground(0), ground(6), anchor(6)]);
    one.set[2] = idle;
    expect(settleAtOnce(one)).toBe(true);
    expect([...one.set]).toEqual([holding, holding, idle]);
  });

  test("gives up where its sets go round in a circle; the sure one then finds the right one", () => {
    expect(settleAtOnce(prepared(circling))).toBe(false);
    const solution = heldRail(circling.rail, circling.loads, circling.supports);
    const { force, moment } = imbalance(solution);
    expectNear([force, moment], [0, 0], 1e-9, 1200);
    for (const { x, deflection, stiffness, reaction, part } of solution.supports) {
      expect(macaulayDeflection(solution, x)).toBeCloseTo(deflection, 12);
      if (part === "holding") expect(reaction).toBeCloseTo(-Number(stiffness) * deflection, 6);
      else expect([part, reaction, deflection > 0]).toEqual(["idle", 0, true]);
    }
  });
});

describe("the sure search", () => {
  test("lets a hundred and ten supports go, one after the other", () => {
    const anchors = Array.from({ length: 110 }, (_, i) => anchor((6 * (i + 1)) / 112));
    const one = on({ uniform: -100 }, [ground(0), ground(6), ...anchors]);
    expect(followPath(one)).toBe("held");
    expect([...one.set]).toEqual([holding, holding, ...anchors.map(() => idle)]);
  });

  test("leaves nothing pressed behind", () => {
    const one = on({ uniform: -100 }, [ground(0), ground(6), anchor(3)]);
    expect(followPath(one)).toBe("held");
    expect([...one.preload]).toEqual([0, 0, 0]);
  });

  test("ends as unsettled where sets recur, which only rounding could make", () => {
    // Loads of a size below zero ask of every holding support more than no force.
    const one = on({ uniform: -100 }, [ground(0), ground(3), ground(6)]);
    one.size = -1e-2 / 1e-10;
    one.table.stiffness[1] = 1e-2;
    one.table.flexibility[1] = 1e2;
    expect(followPath(one)).toBe("unsettled");
  });

  test("tells of a rail that is not held nothing but that", () => {
    expect(railReactions(rail, { ...none, uniform: 1 }, [ground(0), ground(6)])).toEqual({
      outcome: "not-held",
    });
    expect(railReactions(rail, none, [ground(3), ground(3)])).toEqual({ outcome: "not-held" });
  });
});
