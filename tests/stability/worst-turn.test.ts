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
      expect(looks).toBeLessThan(400);
    },
  );

  test.each([-1.5, -0.77, 0.013, 0.31, 1.499])("the tip of a tooth at %d rad", (tip) => {
    const { at, looks } = searched((turned) => 1 + tooth(tip, 0.4)(turned), 2.5);
    expect(at).toBeCloseTo(tip, 6);
    expect(looks).toBeLessThan(400);
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

describe("how closely it looks", () => {
  /** A function whose greatest value is known: a span may exceed whatever is less. */
  const known = (bad: Badness, greatest: number) => {
    const looked: number[] = [];
    const at = worstTurn((turned) => {
      looked.push(turned);
      return { bad: bad(turned), mayExceed: (_, worst) => greatest > worst };
    }, 0);
    return { at, looked };
  };

  // The middle is within a hundredth of the greatest: it is narrowed down from both ends at once.
  test("forty rounds of golden section, one look in each, beside both ends and the first two", () => {
    const { at, looked } = known((turned) => 100 - Math.abs(turned - 0.3), 100);
    expect(looked).toHaveLength(1 + 4 + 40);
    expect(at).toBeCloseTo(0.3, 7);
    expect(looked.slice(1, 3)).toEqual([-Math.PI / 2, Math.PI / 2]);
  });

  test("none where nothing is told apart any more", () => {
    expect(known(() => 3, 3.01).looked).toHaveLength(1 + 4);
  });

  test("a tooth on a plain: level on one side is not level", () => {
    const { at } = known((turned) => 1 + tooth(0.4, 0.2, 0.005)(turned), 1.005);
    expect(at).toBeCloseTo(0.4, 6);
  });

  test("nought everywhere, though it might be more: 256 spans, and no narrowing in any", () => {
    const { at, looks } = searched(() => 0, 1);
    expect(at).toBe(0);
    expect(looks).toBe(511 + 4 * 256);
  });

  test("in proportion: a thousand times as bad, the same looks", () => {
    const looksAt = (scale: number) => {
      const bad: Badness = (turned) => scale * (1 + tooth(0.3, 0.2)(turned));
      const { at, looks } = searched(bad, 6 * scale);
      expect(at).toBeCloseTo(0.3, 6);
      return looks;
    };
    expect(new Set([2 ** -10, 1, 2 ** 10].map(looksAt)).size).toBe(1);
  });

  const quarter = Math.PI / 2;
  /** The right half is kept whole, the left one halved once more; each may hold a little more than it does. */
  const unevenly = (bad: Badness) => {
    const looked: number[] = [];
    const at = worstTurn((turned) => {
      looked.push(turned);
      const whole = turned > 0 || (turned < 0 && Math.abs(turned) !== quarter / 2);
      return { bad: bad(turned), mayExceed: (_, worst) => (whole ? 100.5 : 200) > worst };
    }, 0);
    return { at, looked };
  };

  test("only where no neighbour is worse, whatever the order in which spans were left", () => {
    const { at, looked } = unevenly((turned) => 100 + turned / 10);
    expect(at).toBeCloseTo(quarter, 6);
    expect(looked.filter((turned) => turned < -quarter / 4)).toEqual([
      -quarter / 2,
      (-3 * quarter) / 4,
    ]);
  });

  test("between two neighbours that are just as bad", () => {
    const { at } = unevenly((turned) => 100 - Math.abs(turned - quarter / 8) / 10);
    expect(at).toBeCloseTo(quarter / 8, 6);
  });

  test("not in a span that was left before something worse was found elsewhere", () => {
    const looked: number[] = [];
    const at = worstTurn((turned) => {
      looked.push(turned);
      const greatest = turned < 0 ? 1.005 : 2;
      return {
        bad: 1 + tooth(0.7, 0.2)(turned),
        mayExceed: (_, worst) => greatest > worst,
      };
    }, 0);
    expect(at).toBeCloseTo(0.7, 6);
    expect(looked.filter((turned) => turned < 0)).toEqual([-quarter / 2]);
  });

  test("what may not exceed the worst is not looked at", () => {
    const at = worstTurn(
      () => ({
        get bad(): number {
          throw new Error("not asked for");
        },
        mayExceed: () => false,
      }),
      1,
    );
    expect(at).toBe(0);
  });
});
