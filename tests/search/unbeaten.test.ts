import fc from "fast-check";
import { expect, test } from "vitest";
import { gustStep, gustSteps } from "../../packages/house/src/design-search/found/gust-step.ts";
import { type Judged, unbeaten } from "../../packages/house/src/design-search/found/unbeaten.ts";
import { holds } from "../hold-down/example-house.ts";

interface One {
  readonly steel: number;
  readonly gust: number;
  readonly cost: number;
  readonly anchors: number;
}

/** Few values, so that many designs are alike in something; some stand any gust. */
const one: fc.Arbitrary<One> = fc.record({
  steel: fc.integer({ min: 1, max: 12 }),
  gust: fc.oneof(
    fc.double({ min: 0, max: 8 * gustStep.value, noNaN: true }),
    fc.constant(Number.POSITIVE_INFINITY),
  ),
  cost: fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constant(Number.POSITIVE_INFINITY)),
  anchors: fc.integer({ min: 4, max: 6 }),
});
const many = fc.array(one, { maxLength: 60 });

const judgedOf = (designs: readonly One[], priced: boolean): Judged => ({
  count: designs.length,
  steel: designs.map(({ steel }) => steel),
  gust: designs.map(({ gust }) => gust),
  cost: priced ? designs.map(({ cost }) => cost) : null,
  anchors: designs.map(({ anchors }) => anchors),
});

/** As the words say it: as good in everything, better in something or simpler. */
const outdoes = (a: One, b: One, priced: boolean): boolean => {
  const [strong, other] = [gustSteps(a.gust), gustSteps(b.gust)];
  const asGood = a.steel <= b.steel && strong >= other && (!priced || a.cost <= b.cost);
  const better = a.steel < b.steel || strong > other || (priced && a.cost < b.cost);
  return asGood && (better || a.anchors < b.anchors);
};

test.each([true, false])(
  "unbeaten are those that no other outdoes, each against each (priced: %s)",
  (priced) => {
    holds(
      fc.property(many, (designs) => {
        const byPairs = designs.flatMap((design, place) =>
          designs.some((other) => outdoes(other, design, priced)) ? [] : [place],
        );
        const found = unbeaten(judgedOf(designs, priced));
        expect(found.toSorted((a, b) => a - b)).toEqual(byPairs);
      }),
      600,
    );
  },
);

test("unbeaten designs stand lightest first", () => {
  holds(
    fc.property(many, (designs) => {
      const steel = unbeaten(judgedOf(designs, true)).map((place) => designs[place]?.steel ?? 0);
      expect(steel).toEqual(steel.toSorted((a, b) => a - b));
    }),
    200,
  );
});

test("gusts are told apart in whole miles an hour, rounded down", () => {
  const mph = 0.44704;
  expect([35.999, 36, 36.001, 36.999].map((gust) => gustSteps(gust * mph))).toEqual([
    35, 36, 36, 36,
  ]);
});
