import { allOutcomes, asd, checkIds, lrfd } from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  actions,
  between,
  combination,
  heldHouse,
  holds,
  liftingActions,
  pressure,
  seed,
  sloping,
  solve,
  termsOf,
  unknownSlope,
} from "./arbitrary-holding.ts";

const slopes = fc.oneof(fc.constant(null), sloping, unknownSlope);
const anyHouse = heldHouse({ anchors: "slanted", slope: fc.oneof(fc.constant(null), sloping) });
const bareOnSlope = heldHouse({ slope: slopes });
const everyHouse = fc.oneof(
  bareOnSlope,
  anyHouse,
  heldHouse({ anchors: "vertical", slope: slopes }),
  heldHouse({ anchors: "slanted", slope: unknownSlope }),
);

/** A pair of pressures, the lower first. */
const rising = fc.tuple(pressure, pressure).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);

/**
 * A limit to compare: neither nought (a house that slides on a breath of wind) nor near the thousand
 * times the design pressure at which a search ends.
 */
const isLimited = (limit: number, q: number) => limit > 1e-9 * q && limit < 900 * q;

const upTo = (a: number, b: number, slack = 1e-9) => a <= b * (1 + slack) + 1e-12;

describe(`laws of stability (seed ${seed})`, () => {
  test("every check has a ratio and a limit, never below nought, never no number", () => {
    const houses = fc.oneof(
      bareOnSlope,
      anyHouse,
      heldHouse({ anchors: "vertical", slope: slopes }),
    );
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        const all = solve(house, table, by, q);
        for (const check of checkIds) {
          expect(all[check].byRatio.ratio, check).toBeGreaterThanOrEqual(0);
          expect(all[check].byLimit.limit, check).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test("the governing case is the worst of every case, weight, line and reading", () => {
    holds(
      fc.property(everyHouse, actions, combination, pressure, (house, table, by, q) => {
        const all = solve(house, table, by, q);
        const terms = termsOf(house, by, q);
        const rows = Array.from({ length: table.count }, (_, row) => row);
        const outcomes = rows.flatMap((row) => allOutcomes(terms, table, row));
        for (const check of checkIds) {
          const mine = outcomes.filter((one) => one.check === check);
          const { byRatio, byLimit } = all[check];
          const ratio = Math.max(...mine.map((one) => one.ratio));
          const limit = Math.min(...mine.map((one) => one.limit));
          expect(upTo(byRatio.ratio, ratio) && upTo(ratio, byRatio.ratio), check).toBe(true);
          expect(upTo(byLimit.limit, limit) && upTo(limit, byLimit.limit), check).toBe(true);
        }
      }),
      100,
    );
  });

  test("held by weight alone, more wind never lowers a ratio", () => {
    holds(
      fc.property(bareOnSlope, liftingActions, combination, rising, (house, table, by, [a, b]) => {
        const [less, more] = [solve(house, table, by, a ?? NaN), solve(house, table, by, b ?? NaN)];
        for (const check of checkIds) {
          const [before, after] = [less[check].byRatio.ratio, more[check].byRatio.ratio];
          expect(upTo(before, after), `${check} ${before} ${after}`).toBe(true);
        }
      }),
    );
    holds(
      fc.property(heldHouse(), actions, combination, rising, (house, table, by, [a, b]) => {
        const [less, more] = [solve(house, table, by, a ?? NaN), solve(house, table, by, b ?? NaN)];
        for (const check of checkIds) {
          const [before, after] = [less[check].byRatio.ratio, more[check].byRatio.ratio];
          expect(upTo(before, after), `${check} ${before} ${after}`).toBe(true);
        }
      }),
    );
  });

  test("a check that fails at the design pressure is limited below it", () => {
    holds(
      fc.property(anyHouse, actions, combination, pressure, (house, table, by, q) => {
        const all = solve(house, table, by, q);
        for (const check of checkIds) {
          const { byRatio, byLimit } = all[check];
          if (byRatio.ratio > 1 + 1e-9) expect(upTo(byLimit.limit, q), check).toBe(true);
        }
      }),
    );
  });

  test("at its limit a check has the ratio 1", () => {
    holds(
      fc.property(anyHouse, actions, combination, pressure, (house, table, by, q) => {
        const all = solve(house, table, by, q);
        for (const check of checkIds) {
          const { limit } = all[check].byLimit;
          if (!isLimited(limit, q)) continue;
          const { ratio } = solve(house, table, by, limit)[check].byRatio;
          expect(Math.abs(ratio - 1), `${check} at ${limit}: ${ratio}`).toBeLessThan(1e-9);
        }
      }),
    );
  });

  test("on level ground LRFD limits at 0.9 of ASD", () => {
    holds(
      fc.property(heldHouse({ anchors: "slanted" }), actions, pressure, (house, table, q) => {
        const [allowable, factored] = [solve(house, table, asd, q), solve(house, table, lrfd, q)];
        for (const check of checkIds) {
          const [a, l] = [allowable[check].byLimit.limit, factored[check].byLimit.limit];
          if (isLimited(a, q) || isLimited(l, q)) expect(l / a, check).toBeCloseTo(0.9, 9);
          else expect(l > q, check).toBe(a > q);
        }
      }),
    );
  });

  test("on level ground more ballast at its place never worsens lift off or sliding", () => {
    const law = [heldHouse({ anchors: "slanted" }), actions, combination, pressure] as const;
    holds(
      fc.property(...law, between(1, 3), (house, table, by, q, k) => {
        const [low, high] = house.weights;
        const weights = [
          { ...low, W: k * low.W },
          { ...high, W: k * high.W },
        ] as const;
        const [before, after] = [house, { ...house, weights }].map((one) =>
          solve(one, table, by, q),
        );
        for (const check of ["lift", "slide"] as const) {
          const [old, young] = [before?.[check], after?.[check]];
          expect(upTo(young?.byRatio.ratio ?? NaN, old?.byRatio.ratio ?? NaN), check).toBe(true);
          expect(upTo(old?.byLimit.limit ?? NaN, young?.byLimit.limit ?? NaN), check).toBe(true);
        }
      }),
    );
  });

  test("one more vertical anchor never worsens lift off or turning", () => {
    const law = [anyHouse, actions, combination, pressure, between(-1, 1)] as const;
    holds(
      fc.property(...law, fc.constantFrom(-1, 1), (house, table, by, q, along, rail) => {
        const place = { x: rail * house.bearing.halfSpan, y: along * house.bearing.front };
        const one = { ...place, pull: 5000, toward: [0, 0, -1] as const };
        const more = solve({ ...house, anchors: [...house.anchors, one] }, table, by, q);
        const less = solve(house, table, by, q);
        for (const check of checkIds) {
          if (check === "slide") continue;
          expect(upTo(more[check].byRatio.ratio, less[check].byRatio.ratio), check).toBe(true);
          expect(upTo(less[check].byLimit.limit, more[check].byLimit.limit), check).toBe(true);
        }
      }),
    );
  });
});
