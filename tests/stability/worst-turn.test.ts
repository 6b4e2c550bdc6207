import { describe, expect, test } from "vitest";
import { worstTurn } from "../../packages/stability/src/worst-turn.ts";

type Badness = (turned: number) => number;

/** Searches a function that nowhere rises faster than `steepest`; tells the turn and how often it looked. */
function searched(bad: Badness, steepest: number, known = 0) {
  let looks = 0;
  const at = worstTurn((turned) => {
    looks += 1;
    expect(Math.abs(turned)).toBeLessThanOrEqual(Math.PI / 2 + 1e-12);
    const here = bad(turned);
    return { bad: here, mayExceed: (half, worst) => here + steepest * half > worst };
  }, known);
  return { at, looks };
}

/** Nought but for a tooth one high: its tip, and how far it reaches to either side. */
const tooth =
  (tip: number, reach: number, high = 1): Badness =>
  (turned) =>
    high * Math.max(0, 1 - Math.abs(turned - tip) / reach);

describe("the worst turn of a slope", () => {
  test.each([-1.57, -1.2, -0.3, -0.01, 0, 0.02, 0.5, 1.1, 1.57])(
    "a single smooth peak at %d rad",
    (peak) => {
      const { at, looks } = searched((turned) => 2 + Math.cos(turned - peak), 1);
      expect(at).toBeCloseTo(peak, 5);
      expect(looks).toBeLessThan(130);
    },
  );

  test.each([-1.5, -0.77, 0.013, 0.31, 1.499])("the tip of a tooth at %d rad", (tip) => {
    const { at, looks } = searched((turned) => 1 + tooth(tip, 0.4)(turned), 2.5);
    expect(at).toBeCloseTo(tip, 6);
    expect(looks).toBeLessThan(130);
  });

  test("the highest of several teeth, wherever it stands", () => {
    for (const [one, two] of [
      [-1.1, 0.9],
      [0.9, -1.1],
      [0.2, 0.5],
      [-1.5, 1.5],
    ] as const) {
      const teeth: Badness = (turned) =>
        1 + tooth(one, 0.1)(turned) + tooth(two, 0.1, 1.1)(turned) + tooth(0.02, 0.05, 0.4)(turned);
      const { at, looks } = searched(teeth, 20);
      expect(at, `${one} ${two}`).toBeCloseTo(two, 6);
      expect(looks).toBeLessThan(1200);
    }
  });

  test("at either end, straight across the wind", () => {
    expect(searched((turned) => 5 + turned, 1).at).toBeCloseTo(Math.PI / 2, 6);
    expect(searched((turned) => 5 - turned, 1).at).toBeCloseTo(-Math.PI / 2, 6);
  });

  test("everywhere as bad: straight along the wind, after few looks", () => {
    const { at, looks } = searched(() => 3, 0);
    expect(at).toBe(0);
    expect(looks).toBeLessThan(10);
  });

  test("as bad everywhere, though it might change: no finer than a third of a degree", () => {
    const { at, looks } = searched(() => 3, 1);
    expect(at).toBe(0);
    expect(looks).toBeGreaterThan(100);
    expect(looks).toBeLessThan(4000);
  });

  test("what is known to be worse is not looked for", () => {
    const bad: Badness = (turned) => 1 + tooth(0.6, 0.2)(turned);
    expect(searched(bad, 5, 1.99).at).toBeCloseTo(0.6, 3);
    const { at, looks } = searched(bad, 5, 2.01);
    expect(at).toBe(0);
    expect(looks).toBeLessThan(searched(bad, 5).looks);
    expect(searched(bad, 5, 1 + 5 * Math.PI).looks).toBe(1);
  });

  test("all is beyond bounds: one look is enough", () => {
    const at = worstTurn(
      () => ({
        bad: Number.POSITIVE_INFINITY,
        mayExceed: (_, worst) => worst < Number.POSITIVE_INFINITY,
      }),
      0,
    );
    expect(at).toBe(0);
  });
});
