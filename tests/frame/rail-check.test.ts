import { describe, expect, test } from "vitest";
import { deflectionRounding, forceRounding } from "../../packages/frame/src/rail/contact.ts";
import { giving, holding, idle, startSet } from "../../packages/frame/src/rail/support-set.ts";
import { checkedOutcome } from "../../packages/frame/src/rail/verify.ts";
import { supportAtEach } from "./shaped-rail.ts";

const ground = { kind: "ground", stiffness: 2, cap: 30 } as const;
const anchor = { kind: "anchor", stiffness: 2, cap: 30 } as const;

/** 1000 N down at the middle of a rail of 4 m on four supports; 500 N at each end hold it. */
function loaded() {
  const one = supportAtEach([ground, anchor, ground, ground], [0, 1, 2, 4]);
  one.space.force[2] = -1000;
  one.size = 1000;
  one.set.set([holding, idle, holding, holding]);
  one.bent.deflection.set([-0.1, -0.2, -0.3, -0.1]);
  return one;
}
const outcome = (one: ReturnType<typeof loaded>, ...reactions: number[]) =>
  checkedOutcome(one, Float64Array.from(reactions));

describe("the check of a result from the outside", () => {
  test("forces and moments balance: held, within a thousand-millionth of the loads", () => {
    expect(outcome(loaded(), 500, 0, 0, 500)).toBe("held");
    expect(outcome(loaded(), 500 + 0.9e-6, 0, 0, 500)).toBe("held");
    expect(outcome(loaded(), 0, 0, 1000, 0)).toBe("held");
  });

  test("forces that do not balance: unsettled, though moments do", () => {
    expect(outcome(loaded(), 500 + 1.1e-6, 0, 0, 500)).toBe("unsettled");
    expect(outcome(loaded(), 500 - 1.1e-6, 0, 0, 500)).toBe("unsettled");
  });

  test("moments that do not balance: unsettled, though forces do", () => {
    // Moved from 0 m to 4 m; 4e-6 N m are allowed.
    expect(outcome(loaded(), 500 - 0.9e-6, 0, 0, 500 + 0.9e-6)).toBe("held");
    expect(outcome(loaded(), 500 - 1.1e-6, 0, 0, 500 + 1.1e-6)).toBe("unsettled");
    expect(outcome(loaded(), 500 + 1.1e-6, 0, 0, 500 - 1.1e-6)).toBe("unsettled");
  });

  test("uniform loads and couples count", () => {
    const one = supportAtEach([ground, ground], [0, 4]);
    one.space.uniform = -100;
    one.space.couple[0] = 80;
    one.size = 420;
    expect(outcome(one, 220, 180)).toBe("held");
    expect(outcome(one, 180, 220)).toBe("unsettled");
  });

  test("an idle support should not hold: the rail within its range makes it unsettled", () => {
    const one = loaded();
    one.bent.deflection[1] = 0.01;
    expect(outcome(one, 500, 0, 0, 500)).toBe("unsettled");
    one.bent.deflection[1] = 0;
    expect(outcome(one, 500, 0, 0, 500)).toBe("held");
    // Rounding: a thousand-millionth of the greatest deflection, 0.3 m.
    one.bent.deflection[1] = 2.9e-10;
    expect(outcome(one, 500, 0, 0, 500)).toBe("held");
    one.bent.deflection[1] = 3.1e-10;
    expect(outcome(one, 500, 0, 0, 500)).toBe("unsettled");
  });

  test("a giving support should be beyond its cap: 30 N at 15 m", () => {
    const one = loaded();
    one.set[2] = giving;
    one.bent.deflection[2] = -15.1;
    expect(outcome(one, 485, 0, 30, 485)).toBe("held");
    one.bent.deflection[2] = -14.9;
    expect(outcome(one, 485, 0, 30, 485)).toBe("unsettled");
  });

  test("a holding one is judged by the force that is given for it", () => {
    const one = loaded();
    one.bent.deflection[2] = 1e-8;
    expect(outcome(one, 500, 0, 0, 500)).toBe("held");
  });

  test("one support astray is not made good by another that is not", () => {
    const one = supportAtEach([anchor, anchor, anchor, anchor], [0, 1, 2, 4]);
    one.set.set([idle, idle, holding, holding]);
    one.bent.deflection.set([0.1, -0.2, 0, 0]);
    expect(outcome(one, 0, 0, 0, 0)).toBe("unsettled");
  });
});

describe("rounding that the searches allow", () => {
  test("a ten-thousand-millionth of the loads, and of the greatest deflection by size", () => {
    const one = loaded();
    expect(forceRounding(one)).toBeCloseTo(1e-7, 18);
    expect(deflectionRounding(one)).toBeCloseTo(0.3e-10, 20);
    one.bent.deflection.set([0.1, 0.7, -0.2, 0]);
    expect(deflectionRounding(one)).toBeCloseTo(0.7e-10, 20);
  });
});

describe("the supports at work to begin with", () => {
  test("all hold, but of rigid ones at one place the first alone", () => {
    const rigid = { kind: "anchor", stiffness: "rigid" } as const;
    const one = supportAtEach([ground, rigid, ground, rigid, rigid, rigid, rigid]);
    one.table.node.set([0, 0, 0, 0, 1, 2, 1]);
    startSet(one.table, one.set);
    expect([...one.set]).toEqual([holding, holding, holding, idle, holding, holding, idle]);
  });
});
