import { certificateOf, jointFactor, jointSystem, polygonSides } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { expectBalanced } from "./all-at-once-house.ts";
import { dead, type Fitted, fourAnchors, problem } from "./fitted-problem.ts";

const corners = [
  { x: 3, y: 6 },
  { x: 3, y: -6 },
  { x: -3, y: 6 },
  { x: -3, y: -6 },
];
const held = (of: Fitted) => jointSystem(problem(of), corners);
const acts = (...sums: number[]) => ({
  wind: Float64Array.from(sums),
  slope: new Float64Array(6),
});

describe("a weight next to the edge of its base", () => {
  // Beyond the right rail by these shares of its distance; by less than 1e-9 is over it.
  const all = Array.from({ length: 15 }, (_, place) => 10 ** -(12.5 - place / 2));
  const factors = (...sums: number[]) =>
    all.map((beyond) => jointFactor(held({ heavy: { x: 3 * (1 + beyond) } }), acts(...sums)));

  test("turns over the left rail if it stands at all, and holds no other wind", () => {
    for (const [place, factor] of factors(0, 0, 0, 0, -1000, 0).entries()) {
      const beyond = all[place] ?? NaN;
      const stands = beyond < 0.9e-9 || factor !== 0;
      if (stands) expect(factor, `${beyond}`).toBeCloseTo((6 * dead) / 1000, 6);
      if (beyond > 1e-8) expect(stands, `${beyond}`).toBe(false);
    }
    for (const wind of [
      [0, 0, 0, 0, 1000, 0],
      [0, 0, 100, 0, 0, 0],
    ]) {
      for (const factor of factors(...wind)) expect(Math.abs(factor)).toBeLessThan(1e-6);
    }
  });

  test("slides, if it stands at all", () => {
    for (const factor of factors(100, 0, 0, 0, 0, 0)) {
      if (factor !== 0) expect(factor).toBeCloseTo((0.3 * dead) / 100, 6);
    }
  });
});

describe("friction next to none", () => {
  const lateral = { Q: 2000, H: 500, cosDelta: 1, sinDelta: 0 };
  const factor = (friction: number) =>
    jointFactor(
      held({
        friction,
        anchors: fourAnchors(2000),
        laterals: [lateral, lateral, lateral, lateral],
      }),
      acts(1000, 0, 500, 0, 2000, 300),
    );
  const slides = (friction: number) => jointFactor(held({ friction }), acts(1000, 0, 0, 0, 0, 0));

  test("counts as none below two thousandths, as itself from there", () => {
    for (const friction of [1e-300, 1e-12, 1e-9, 1.4e-7, 1e-6, 1e-5, 1e-4, 0.001_999]) {
      expect(factor(friction), `${friction}`).toBe(factor(0));
      expect(slides(friction), `${friction}`).toBe(0);
    }
    expect(slides(0.002)).toBeCloseTo((0.002 * dead) / 1000, 12);
    expect(factor(0.002)).toBeGreaterThan(factor(0));
  });
});

test("friction that does not count is in no certificate", () => {
  const wind = acts(0, 0, 0, 0, 1000, 0);
  const largest = (6 * dead) / 1000 / 2;
  const certified = (friction: number) => certificateOf(held({ friction }), wind, largest);
  const [none, some] = [certified(1e-4), certified(0.3)];
  if (!none || !some) throw new Error("the weight holds that wind");
  expect([none.frictionLimit, some.frictionLimit]).toEqual([0, 0.3 * dead]);
  expectBalanced(none, 0, 3);
  expectBalanced(some, 0.3, 3);
});

test("next to nothing turns a house without friction about its one shaft: nothing holds that", () => {
  const anchors = [{ x: -3, y: 0, pull: 9000, toward: [0, 0, -1] as const }];
  const lateral = { Q: 9000, H: 900, cosDelta: 1, sinDelta: 0 };
  const system = held({ friction: 0, anchors, laterals: [lateral] });
  expect(jointFactor(system, acts(1000, 0, 0, 0, 0, 0))).toBeCloseTo(0.9, 9);
  expect(jointFactor(system, acts(1000, 1, 0, 0, 0, 0))).toBe(0);
});

test("a solver that overlooks what holds the house is found out", () => {
  const anchors = fourAnchors(2000);
  const lateral = { Q: 2000, H: 500, cosDelta: 1, sinDelta: 0 };
  const system = held({ friction: 0, anchors, laterals: [null, null, null, lateral] });
  const wind = acts(1000, 0, 0, 0, 0, -5000);
  expect(jointFactor(system, wind)).toBeCloseTo(500 / 1000, 9);
  const overlooked = { ...system, columns: system.columns - polygonSides };
  expect(() => jointFactor(overlooked, wind)).toThrow(/equilibrium beyond/);
});
