import {
  ballastPieces,
  countedWater,
  floodFactor,
  heldByFixedBallast,
  heldByTie,
  piecesNeeded,
  pullOfBlock,
  type TiedBlock,
  weightLeft,
  weightOfPiece,
} from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { degree, pound } from "./anchor-examples.ts";
import { between, holds, seed } from "./pull-test-sample.ts";

const block: TiedBlock = {
  weight: 1000,
  width: 0.6,
  tieHeight: 0.3,
  tieSetback: 0.3,
  angle: 45 * degree,
  friction: 0.3,
};

describe("a block on a tether, by hand", () => {
  test("a low wide block slides", () => {
    const { pull, governs } = pullOfBlock(block, 0.6);
    expect(governs).toBe("sliding");
    expect(pull).toBeCloseTo(600 / (Math.SQRT1_2 / 0.3 + Math.SQRT1_2), 9);
  });

  test("a tall one tied at the top turns about its near toe, level pull", () => {
    const tall = { ...block, tieHeight: 1.2, angle: 0, friction: 0.5 };
    expect(pullOfBlock(tall, 1)).toMatchObject({ governs: "near toe" });
    expect(pullOfBlock(tall, 1).pull).toBeCloseTo((1000 * 0.3) / 1.2, 9);
  });

  test("a steep pull at the near face turns it about the far toe at half its weight", () => {
    const steep = { ...block, tieHeight: 0, tieSetback: 0, angle: Math.PI / 2 };
    expect(pullOfBlock(steep, 1)).toMatchObject({ governs: "far toe" });
    expect(pullOfBlock(steep, 1).pull).toBeCloseTo(500, 9);
  });

  test("tied far behind and pulled steeply it turns about the near toe", () => {
    const behind = { ...block, tieHeight: 0.1, tieSetback: 0.55, angle: 80 * degree, friction: 5 };
    const { pull, governs } = pullOfBlock(behind, 1);
    expect(governs).toBe("near toe");
    const lever = 0.1 * Math.cos(80 * degree) + 0.55 * Math.sin(80 * degree);
    expect(pull).toBeCloseTo(300 / lever, 9);
  });

  test("tied high at the near face and pulled steeply it turns about the far toe", () => {
    const before = { ...block, tieSetback: 0.05, angle: 80 * degree, friction: 5 };
    const { pull, governs } = pullOfBlock(before, 1);
    expect(governs).toBe("far toe");
    const lever = 0.55 * Math.sin(80 * degree) - 0.3 * Math.cos(80 * degree);
    expect(pull).toBeCloseTo(300 / lever, 9);
  });

  test("pulled straight up at the edge over a toe it does not turn about that toe", () => {
    const checks = (tieSetback: number) =>
      pullOfBlock({ ...block, angle: Math.PI / 2, tieSetback }, 1).trail.map((one) => one.symbol);
    expect(checks(0)).toEqual(["T_s", "T_f"]);
    expect(checks(0.6)).toEqual(["T_s", "T_n"]);
    expect(checks(0.3)).toEqual(["T_s", "T_n", "T_f"]);
  });

  test("a lever is short or not by the width of the block, whatever its size", () => {
    for (const width of [0.01, 1, 100]) {
      const checks = (lever: number) =>
        pullOfBlock(
          { ...block, width, angle: 0, tieSetback: 0, tieHeight: lever * width },
          1,
        ).trail.map((one) => one.symbol);
      expect(checks(0.9e-9)).toEqual(["T_s"]);
      expect(checks(1.1e-9)).toEqual(["T_s", "T_n"]);
    }
  });

  test("where it slides and turns at once, sliding is told", () => {
    // Level: friction times weight against weight times half the width over the height.
    const both = { ...block, width: 0.5, tieHeight: 0.5, angle: 0, friction: 0.5 };
    expect(pullOfBlock(both, 1)).toMatchObject({ governs: "sliding", pull: 500 });
  });

  test("a level pull at the ground turns about no toe", () => {
    const low = { ...block, tieHeight: 0, angle: 0 };
    expect(pullOfBlock(low, 1).trail.map(({ symbol }) => symbol)).toEqual(["T_s"]);
  });

  test.each([
    [{ weight: 0 }, "not-positive"],
    [{ friction: 0 }, "not-positive"],
    [{ width: Number.NaN }, "not-positive"],
    [{ angle: -0.1 }, "out-of-range"],
    [{ angle: 1.6 }, "out-of-range"],
    [{ tieSetback: 0.7 }, "out-of-range"],
    [{ tieHeight: Number.NaN }, "out-of-range"],
  ] as const)("refused: %o", (wrong, code) => {
    expect(() => pullOfBlock({ ...block, ...wrong }, 0.6)).toThrow(code);
  });
});

const blocks: fc.Arbitrary<TiedBlock> = fc
  .record({
    weight: between(100, 20_000),
    width: between(0.3, 2),
    tieHeight: between(0, 1.5),
    share: between(0, 1),
    angle: between(0, Math.PI / 2),
    friction: between(0.1, 1),
  })
  .map(({ share, ...others }) => ({ ...others, tieSetback: share * others.width }));

describe(`laws of tied blocks (seed ${seed})`, () => {
  const rounding = 1 - 1e-9;

  test("never more than its factored weight straight up, nor its friction level", () => {
    holds(
      fc.property(blocks, between(0.5, 1), (one, factor) => {
        const { pull } = pullOfBlock(one, factor);
        const [up, level] = [pull * Math.sin(one.angle), pull * Math.cos(one.angle)];
        const left = factor * one.weight - up;
        expect(left).toBeGreaterThanOrEqual(-1e-9 * one.weight);
        expect(level * rounding).toBeLessThanOrEqual(one.friction * left + 1e-9 * one.weight);
      }),
    );
  });

  test("it grows with the weight in proportion and falls with lower friction", () => {
    holds(
      fc.property(blocks, between(1, 5), between(0.1, 1), (one, more, less) => {
        const { pull } = pullOfBlock(one, 0.6);
        const heavy = pullOfBlock({ ...one, weight: more * one.weight }, 0.6);
        expect(heavy.pull / pull).toBeCloseTo(more, 9);
        const smooth = pullOfBlock({ ...one, friction: less * one.friction }, 0.6);
        expect(smooth.pull * rounding).toBeLessThanOrEqual(pull);
      }),
    );
  });

  test("at the pull found, the moments about both toes do not turn it", () => {
    holds(
      fc.property(blocks, (one) => {
        const { pull } = pullOfBlock(one, 1);
        const { width, tieHeight, tieSetback, weight, angle } = one;
        const [up, level] = [pull * Math.sin(angle), pull * Math.cos(angle)];
        const slack = 1e-9 * weight * width;
        const holding = (weight * width) / 2;
        expect(level * tieHeight + up * tieSetback).toBeLessThanOrEqual(holding + slack);
        const far = up * (width - tieSetback) - level * tieHeight;
        expect(far).toBeLessThanOrEqual(holding + slack);
      }),
    );
  });
});

describe("water and flood", () => {
  const tank = { volume: 1, fill: 0.5, closed: true, levelRecorded: true, floodOrDrain: false };

  test("a closed tank of recorded level counts what is in it", () => {
    const cubicFoot = 0.3048 ** 3;
    expect(countedWater({ ...tank, volume: cubicFoot }).weight / pound).toBeCloseTo(31.2, 9);
  });

  test("an empty tank counts nothing, a full one 62.4 lb a cubic foot", () => {
    const cubicFoot = { ...tank, volume: 0.3048 ** 3 };
    expect(countedWater({ ...cubicFoot, fill: 0 })).toEqual({ weight: 0 });
    expect(countedWater({ ...cubicFoot, fill: 1 }).weight / pound).toBeCloseTo(62.4, 9);
  });

  test.each([
    [{ closed: false }, "open container"],
    [{ levelRecorded: false }, "level not recorded"],
    [{ floodOrDrain: true }, "flood or drain"],
  ] as const)("nothing counts: %o", (state, why) => {
    expect(countedWater({ ...tank, ...state })).toEqual({ weight: 0, why });
  });

  test.each([[{ volume: 0 }], [{ volume: Number.NaN }]])("refused: %o", (wrong) => {
    expect(() => countedWater({ ...tank, ...wrong })).toThrow("not-positive");
  });

  test.each([[{ fill: 1.01 }], [{ fill: -0.1 }], [{ fill: Number.NaN }]])(
    "refused: %o",
    (wrong) => {
      expect(() => countedWater({ ...tank, ...wrong })).toThrow("out-of-range");
    },
  );

  test("flood leaves nothing of water and under half of dry sand; dry ground takes nothing", () => {
    expect(floodFactor("water", true)).toBe(0);
    expect(floodFactor("sand", true)).toBeCloseTo(0.376, 12);
    expect(floodFactor("concrete", false)).toBe(1);
    expect(weightLeft.evaluate(floodFactor("concrete", true), 1000)).toBeCloseTo(569.7, 1);
  });

  test("a drum of dry sand is heavier than one of water by 100 to 62.4", () => {
    const weight = (id: string) =>
      ballastPieces.filter((piece) => piece.id === id).map(weightOfPiece)[0] ?? Number.NaN;
    expect(weight("drum-sand") / weight("drum-water")).toBeCloseTo(100 / 62.4, 12);
  });
});

describe("pieces needed for a shortfall", () => {
  test("blocks on the rail, by hand: 1000 N short, 0.6 of 700 N each", () => {
    const holdsEach = heldByFixedBallast.evaluate(0.6, 700, 0, 5);
    const { counts, held, short } = piecesNeeded(1000, [{ id: "block", holds: holdsEach }]);
    expect(counts).toEqual([{ id: "block", count: 3 }]);
    expect([held, short]).toEqual([3 * 420, 0]);
  });

  test("in the middle of the house a piece holds half at either rail", () => {
    expect(heldByFixedBallast.evaluate(0.6, 700, 2.5, 5)).toBeCloseTo(210, 12);
    expect(heldByFixedBallast.evaluate(0.6, 700, 5, 5)).toBe(0);
  });

  test("a tether counts with what pulls straight down", () => {
    expect(heldByTie.evaluate(1000, 30 * degree)).toBeCloseTo(500, 9);
  });

  test("what there is first, then the rest; what is missing is said", () => {
    const two = [{ id: "barrel", holds: 300, available: 2 }];
    expect(piecesNeeded(1000, [...two, { id: "block", holds: 150 }]).counts).toEqual([
      { id: "barrel", count: 2 },
      { id: "block", count: 3 },
    ]);
    expect(piecesNeeded(1000, two)).toMatchObject({ held: 600, short: 400 });
    expect(piecesNeeded(0, two)).toMatchObject({ held: 0, short: 0 });
  });

  test("what is enough is enough: exactly, and nothing of a further kind", () => {
    expect(piecesNeeded(1260, [{ id: "block", holds: 420 }]).counts).toEqual([
      { id: "block", count: 3 },
    ]);
    const more = [
      { id: "barrel", holds: 600 },
      { id: "block", holds: 150 },
    ];
    expect(piecesNeeded(1000, more)).toEqual({
      counts: [
        { id: "barrel", count: 2 },
        { id: "block", count: 0 },
      ],
      held: 1200,
      short: 0,
    });
  });

  test("refused: a shortfall below zero, a piece that holds nothing, half a piece", () => {
    const ask = (shortfall: number, holding: number, available?: number) => () =>
      piecesNeeded(shortfall, [
        available === undefined
          ? { id: "block", holds: holding }
          : { id: "block", holds: holding, available },
      ]);
    expect(ask(-1, 1)).toThrow("out-of-range");
    expect(ask(Number.NaN, 1)).toThrow("out-of-range");
    expect(ask(1, 0)).toThrow("not-positive");
    expect(ask(1, 1, 0.5)).toThrow("out-of-range");
    expect(ask(1, 1, -1)).toThrow("out-of-range");
  });

  const stocks = fc.array(
    fc.record({
      id: fc.constantFrom("a", "b", "c"),
      holds: between(50, 5000),
      available: fc.nat(6),
    }),
    { minLength: 1, maxLength: 4 },
  );

  test(`law (seed ${seed}): enough, or short and all used; one fewer of the last is too few`, () => {
    holds(
      fc.property(between(0, 50_000), stocks, (shortfall, stock) => {
        const { counts, held, short } = piecesNeeded(shortfall, stock);
        const total = counts.reduce((sum, one, at) => sum + one.count * (stock[at]?.holds ?? 0), 0);
        expect(held).toBeCloseTo(total, 6);
        if (short > 0) {
          expect(counts.map(({ count }) => count)).toEqual(stock.map((one) => one.available));
          return;
        }
        expect(held).toBeGreaterThanOrEqual(shortfall);
        const last = counts.findLastIndex(({ count }) => count > 0);
        if (last >= 0) expect(held - (stock[last]?.holds ?? 0)).toBeLessThan(shortfall);
      }),
    );
  });
});
