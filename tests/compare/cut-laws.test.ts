import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CutPlan, cutPlan } from "../../packages/house/src/compare/cutting/cut-plan.ts";
import type { Piece } from "../../packages/house/src/compare/cutting/cut-problem.ts";
import { fewestByTrying } from "./brute-force.ts";

const seed = 20240601;
const mm = 1e-3;
const stock = 6000;

/** Pieces in whole millimetres, so that sums are told apart exactly. */
const someCuts = (most: number, counts: number) =>
  fc.array(
    fc.record({
      what: fc.constantFrom("hoops", "rails", "purlins"),
      length: fc.integer({ min: 200, max: stock }),
      count: fc.integer({ min: 1, max: counts }),
    }),
    { minLength: 1, maxLength: most },
  );
const sawCuts = fc.integer({ min: 0, max: 20 });

const inMetres = (pieces: readonly Piece[]): Piece[] =>
  pieces.map((piece) => ({ ...piece, length: piece.length * mm }));
const planOf = (pieces: readonly Piece[], sawCut: number): CutPlan =>
  cutPlan(inMetres(pieces), stock * mm, sawCut * mm);
const each = (pieces: readonly Piece[]): string[] =>
  pieces
    .flatMap(({ what, length, count }) => Array<string>(count).fill(`${what} ${length}`))
    .sort();
const inMillimetres = (length: number): number => Math.round(length / mm);

describe("a cut list", () => {
  test("law: every piece is cut once, and nothing else", () => {
    fc.assert(
      fc.property(someCuts(8, 12), sawCuts, (pieces, sawCut) => {
        const cut = planOf(pieces, sawCut).sticks.flatMap((stick) =>
          stick.pieces.map(({ what, length }) => `${what} ${inMillimetres(length)}`),
        );
        expect(cut.sort()).toEqual(each(pieces));
      }),
      { seed, numRuns: 150 },
    );
  });

  test("law: no stick is longer than it is sold, with a saw cut between pieces; the rest is waste", () => {
    fc.assert(
      fc.property(someCuts(8, 12), sawCuts, (pieces, sawCut) => {
        for (const stick of planOf(pieces, sawCut).sticks) {
          const lengths = stick.pieces.map(({ length }) => inMillimetres(length));
          const used = lengths.reduce((sum, length) => sum + length, 0);
          expect(lengths.length).toBeGreaterThan(0);
          expect(used + sawCut * (lengths.length - 1)).toBeLessThanOrEqual(stock);
          expect(stick.waste).toBeCloseTo((stock - used) * mm, 9);
        }
      }),
      { seed, numRuns: 150 },
    );
  });

  test("law: no fewer sticks than the length of all pieces needs, nor than it says are needed", () => {
    fc.assert(
      fc.property(someCuts(8, 12), sawCuts, (pieces, sawCut) => {
        const { sticks, least } = planOf(pieces, sawCut);
        const needed = pieces.reduce((sum, one) => sum + one.count * (one.length + sawCut), 0);
        expect(sticks.length).toBeGreaterThanOrEqual(Math.ceil(needed / (stock + sawCut)));
        expect(sticks.length).toBeGreaterThanOrEqual(least);
      }),
      { seed, numRuns: 150 },
    );
  });

  test("law: for a handful of pieces it has as few sticks as trying everything, and says so", () => {
    fc.assert(
      fc.property(someCuts(4, 2), sawCuts, (pieces, sawCut) => {
        const lengths = pieces.flatMap(({ length, count }) => Array<number>(count).fill(length));
        const { sticks, least } = planOf(pieces, sawCut);
        const fewest = fewestByTrying(lengths, stock, sawCut);
        expect(sticks.length).toBe(fewest);
        expect(least).toBe(fewest);
      }),
      { seed, numRuns: 300 },
    );
  });

  test("law: where threes fill their sticks, no more are said to be needed, and more are not called the fewest", () => {
    const triplet = fc
      .tuple(fc.integer({ min: 1510, max: 2900 }), fc.integer({ min: 1510, max: 2200 }))
      .map(([a, b]) => [a, b, stock - a - b])
      .filter((lengths) => lengths.every((length) => length > 800));
    fc.assert(
      fc.property(fc.array(triplet, { minLength: 1, maxLength: 7 }), (triplets) => {
        const lengths = triplets.flat();
        const pieces = lengths.map((length) => ({ what: "piece", length, count: 1 }));
        const { sticks, least } = planOf(pieces, 0);
        expect(least).toBeLessThanOrEqual(triplets.length);
        expect(sticks.length).toBeGreaterThanOrEqual(triplets.length);
        if (sticks.length > triplets.length) expect(least).toBeLessThan(sticks.length);
      }),
      { seed, numRuns: 100 },
    );
  });

  test("law: a wider saw never needs fewer sticks, where both are the fewest", () => {
    fc.assert(
      fc.property(someCuts(5, 6), sawCuts, sawCuts, (pieces, one, other) => {
        const [narrow, wide] = [Math.min(one, other), Math.max(one, other)].map((sawCut) =>
          planOf(pieces, sawCut),
        ) as [CutPlan, CutPlan];
        if (wide.sticks.length > wide.least || narrow.sticks.length > narrow.least) return;
        expect(wide.sticks.length).toBeGreaterThanOrEqual(narrow.sticks.length);
      }),
      { seed, numRuns: 100 },
    );
  });

  test("three pieces of a third need no cut at the end: they fit with two saw cuts, not with less", () => {
    const third = { what: "purlins", length: 1.996, count: 3 };
    expect(cutPlan([third], 5.994, 0.003).sticks).toHaveLength(1);
    expect(cutPlan([third], 5.9939, 0.003).sticks).toHaveLength(2);
  });

  test("a piece longer than a stick is an error of the caller", () => {
    const long = { what: "rails", length: 6.1, count: 1 };
    expect(() => cutPlan([long], 6, 0)).toThrow(RangeError);
  });
});
