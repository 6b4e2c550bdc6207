import fc from "fast-check";
import { expect, test } from "vitest";
import { beats, unbeaten } from "../../packages/house/src/design-search/found/unbeaten.ts";
import { worthALook } from "../../packages/house/src/design-search/found/worth-a-look.ts";
import { FullWork } from "../../packages/house/src/design-search/full-work.ts";
import { holds } from "../hold-down/example-house.ts";

/** Designs whose quick forms promise too much, by up to half. */
const design = fc.record({
  steel: fc.double({ min: 1000, max: 9000, noNaN: true }),
  quick: fc.double({ min: 5, max: 40, noNaN: true }),
  share: fc.double({ min: 0.5, max: 1, noNaN: true }),
});
const many = fc.array(design, { minLength: 1, maxLength: 60 });
const today = { steel: 4000, gust: 15 };

function searched(designs: readonly { steel: number; quick: number; share: number }[]) {
  const steel = designs.map((one) => one.steel);
  const exact = designs.map(({ quick, share }) => quick * share);
  const judged = {
    count: designs.length,
    steel,
    gust: Float64Array.from(designs, ({ quick }) => quick),
    cost: null,
    anchors: steel.map(() => 8),
  };
  return { judged, steel, exact };
}

function work(full: FullWork, exact: readonly number[], most: number, looksOnly: boolean): void {
  for (let turn = 0; turn < most; turn += 1) {
    const next = full.next(looksOnly);
    if (next === undefined) return;
    full.add(next, exact[next] as number);
  }
}

test("worked to the end, the unbeaten are those of the true gusts, and nothing is left open", () => {
  holds(
    fc.property(many, (designs) => {
      const { judged, steel, exact } = searched(designs);
      const full = new FullWork(judged, today);
      work(full, exact, designs.length, false);
      expect(full.open).toBe(0);
      const truly = unbeaten({
        count: designs.length,
        steel,
        gust: exact,
        cost: null,
        anchors: steel,
      });
      expect(new Set(full.unbeaten)).toEqual(new Set(truly));
    }),
    300,
  );
});

test("no design is worked twice, and one that is beaten for sure is not worked at all", () => {
  holds(
    fc.property(many, (designs) => {
      const { judged, exact } = searched(designs);
      const full = new FullWork(judged, today);
      const seen: number[] = [];
      for (let next = full.next(false); next !== undefined; next = full.next(false)) {
        expect(seen).not.toContain(next);
        expect(seen.some((known) => beats(judged, known, next as number))).toBe(false);
        seen.push(next);
        full.add(next, exact[next] as number);
      }
    }),
    200,
  );
});

test("stopped early, none of the told designs is beaten by another that was worked", () => {
  holds(
    fc.property(many, fc.integer({ min: 0, max: 8 }), (designs, most) => {
      const { judged, exact } = searched(designs);
      const full = new FullWork(judged, today);
      work(full, exact, most, false);
      const told = full.unbeaten;
      expect(told.length).toBeLessThanOrEqual(Math.min(most, full.count));
      for (const one of told)
        for (const other of told) expect(beats(judged, other, one)).toBe(false);
    }),
    200,
  );
});

test("with what is worth a look alone: those told as such by the numbers then known are worked", () => {
  holds(
    fc.property(many, (designs) => {
      const { judged, exact } = searched(designs);
      const full = new FullWork(judged, today);
      work(full, exact, designs.length, true);
      expect(full.next(true)).toBeUndefined();
      expect(full.count).toBeGreaterThan(0);
    }),
    200,
  );
});

test("worth a look: lightest as strong as today, strongest as light as today, and the knee", () => {
  const designs = [
    { steel: 2000, gust: 10 },
    { steel: 3000, gust: 15.2 },
    { steel: 3900, gust: 16 },
    { steel: 5000, gust: 24 },
    { steel: 9000, gust: 26 },
  ];
  const looks = worthALook(today, designs);
  expect(looks.map(({ place }) => place)).toEqual([1, 2, 3]);
  expect(looks.map(({ why }) => why).join("; ")).toMatch(/lightest.*strongest.*little more/);
});

test("worth a look: not what stands less than today's inside one step of gust, nor today's alone", () => {
  const close = { steel: 4000, gust: 11.99 };
  expect(worthALook(close, [{ steel: 3900, gust: 11.85 }])).toEqual([]);
  expect(worthALook(close, [close])).toEqual([]);
});

test("worth a look: never lighter for less gust than today's, never stronger with more steel", () => {
  holds(
    fc.property(many, (designs) => {
      const numbers = designs.map(({ steel, quick }) => ({ steel, gust: quick }));
      for (const { place, why } of worthALook(today, numbers)) {
        const { steel, gust } = numbers[place] as (typeof numbers)[number];
        if (why.includes("lightest")) {
          expect(gust).toBeGreaterThanOrEqual(today.gust);
          expect(steel).toBeLessThan(today.steel);
        }
        if (why.includes("no more steel")) {
          expect(gust).toBeGreaterThan(today.gust);
          expect(steel).toBeLessThanOrEqual(today.steel * 1.000001);
        }
      }
    }),
    200,
  );
});
