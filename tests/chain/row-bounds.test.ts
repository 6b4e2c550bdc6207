import { linkCombinations } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { chainRows } from "../../packages/house/src/chain/chain-rows.ts";
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
