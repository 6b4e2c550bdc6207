import { linkCombinations } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { chainRows } from "../../packages/house/src/chain/chain-rows.ts";
import { RowRating } from "../../packages/house/src/chain/row-rating.ts";
import { context, evaluation, everyOf } from "./example-chain.ts";
import { fittedContext } from "./made-links.ts";

describe.each([
  ["the example", context],
  ["a house with everything fitted", fittedContext],
])("quick bounds of %s", (_, of) => {
  const bounded = chainRows(of).rows.filter(({ atMost }) => atMost !== undefined);

  test("no row with a bound is asked more, at any wind and in any combination", () => {
    expect(new Set(bounded.map(({ link }) => link)).size).toBeGreaterThan(4);
    for (const row of everyOf(bounded, 1500)) {
      for (const part of [0, 0.1, 0.25, 0.7, 1, 1.6, 4]) {
        const q = part * evaluation.pressure;
        for (const one of linkCombinations) {
          const { demand, resistance } = row.asked(q, one);
          const most = row.atMost?.(q, one) ?? Number.NaN;
          expect(most, `${row.link}, ${row.part}, ${part}`).toBeGreaterThanOrEqual(
            Math.max(0, demand / resistance),
          );
        }
      }
    }
  });

  test("a rail's bound lies within some millionths of what it is asked", () => {
    for (const row of everyOf(
      bounded.filter(({ touches }) => touches),
      400,
    )) {
      for (const one of linkCombinations) {
        const { demand, resistance } = row.asked(evaluation.pressure, one);
        if (demand === Number.POSITIVE_INFINITY) continue;
        expect(row.atMost?.(evaluation.pressure, one)).toBeLessThanOrEqual(
          (demand / resistance) * (1 + 3e-6) + 1e-9,
        );
      }
    }
  });
});

test("a row that fails by its weight alone is not passed by, though the wind relieves it", () => {
  const [row] = chainRows(context).rows;
  if (!row) throw new Error("the example has no rows");
  const ratio = (q: number): number => 1.2 - q / 1000;
  const relieved = {
    link: row.link,
    part: row.part,
    place: row.place,
    run: row.run,
    windCase: row.windCase,
    measure: row.measure,
    touches: false,
    lasts: () => Number.POSITIVE_INFINITY,
    ratio,
    asked: (q: number) => ({ demand: ratio(q), resistance: 1 }),
    work: row.work,
  };
  const rating = new RowRating(relieved, 500);
  expect(rating.carries("ASD", 500)).toBe(false);
  expect(rating.limit("ASD", 500)).toBe(0);
});
