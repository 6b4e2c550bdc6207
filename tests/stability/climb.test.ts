import { describe, expect, test } from "vitest";
import { climb, type Turn } from "../../packages/stability/src/climb.ts";

/** Climbs a function; tells the worst turn it looked at and how often it looked. */
function climbed(bad: (at: number) => number, from: number, start: number, to: number) {
  let looks = 0;
  let worst: Turn = { at: start, bad: bad(start) };
  const turn = (at: number): Turn => {
    looks += 1;
    expect(at).toBeGreaterThanOrEqual(from);
    expect(at).toBeLessThanOrEqual(to);
    const here = { at, bad: bad(at) };
    if (here.bad > worst.bad) worst = here;
    return here;
  };
  climb(turn, { at: from, bad: bad(from) }, worst, { at: to, bad: bad(to) });
  return { ...worst, looks };
}

describe("one peak is climbed, to where its value is told apart no more", () => {
  test.each([-0.9, -0.2, 0, 0.4, 0.95])("a cosine about %d rad, in few looks", (top) => {
    for (const start of [-0.5, 0.1, 0.7]) {
      const { bad, looks } = climbed((at) => Math.cos(at - top), -2.5, start, 2.5);
      expect(bad).toBeGreaterThan(1 - 1e-13);
      expect(looks).toBeLessThan(17);
    }
  });

  test("a parabola at once: both neighbours, its top, a look to either side", () => {
    const { at, looks } = climbed((turned) => 3 - (turned - 0.3) ** 2, -1, 0, 1);
    expect(at).toBeCloseTo(0.3, 7);
    expect(looks).toBeLessThan(9);
  });

  test.each([-0.6, 0.03, 0.8])("a roof with its ridge at %d rad", (top) => {
    const { at, looks } = climbed((turned) => 3 - Math.abs(turned - top), -1.5, 0.2, 1.5);
    expect(at).toBeCloseTo(top, 8);
    expect(looks).toBeLessThan(39);
  });

  test.each([1e-3, 1e3])("a roof %d times as steep on one side", (steep) => {
    const bad = (turned: number) => Math.min(turned - 0.3, steep * (0.3 - turned));
    const { at, looks } = climbed(bad, -1.5, 0, 1.5);
    expect(Math.abs(Math.min(1, steep) * (at - 0.3))).toBeLessThan(1e-7);
    expect(looks).toBeLessThan(62);
  });

  test("a peak beside the end that it starts on", () => {
    const { bad } = climbed((at) => Math.cos(at + 0.9), -1, -1, 1);
    expect(bad).toBeGreaterThan(1 - 1e-13);
  });

  test("a ridge that it starts on is seen by its neighbours", () => {
    const { at, looks } = climbed((turned) => -Math.abs(turned - 0.3), -1, 0.3, 1);
    expect(at).toBe(0.3);
    expect(looks).toBe(2);
  });

  test("an end that it starts on, and a plain", () => {
    expect(climbed((at) => at, -1, 1, 1)).toMatchObject({ at: 1, looks: 2 });
    expect(climbed((at) => -at, -1, -1, 1)).toMatchObject({ at: -1, looks: 2 });
    expect(climbed(() => 4, -1, 0, 1)).toMatchObject({ at: 0, looks: 2 });
  });

  test("where the house does not hold at all, nothing is worse: it ends", () => {
    const cliff = (at: number) => (Math.abs(at - 0.5) < 0.3 ? Number.POSITIVE_INFINITY : at);
    expect(climbed(cliff, -1, 0.4, 1)).toMatchObject({ at: 0.4, looks: 2 });
  });
});
