import { correlationFactors, quantile95, rateByTests, ukCorrelationTable } from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyTest, between, holds, pulls, seed, testsOf, uses } from "./pull-test-sample.ts";

type Use = Parameters<typeof rateByTests>[1];

function allowableOf(values: readonly number[], use: Use): number {
  const rating = rateByTests(testsOf(values), use);
  return rating.rated ? rating.allowable : Number.NaN;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const rounding = 1 - 1e-9;

describe(`laws of pull tests (seed ${seed})`, () => {
  test("total: a finite allowable pull above zero and below every route's resistance, or none", () => {
    holds(
      fc.property(fc.array(anyTest, { maxLength: 12 }), uses, (tests, use) => {
        const rating = rateByTests(tests, use);
        const all = rating.leftOut.length + (rating.rated ? rating.counted.length : 0);
        expect(all).toBe(tests.length);
        if (!rating.rated) return;
        const counts = rating.counted.map((one) => one.test.pull * one.cyclic * one.wetter);
        expect(rating.allowable).toBeGreaterThan(0);
        expect(rating.allowable).toBeLessThanOrEqual(mean(counts) / 1.5);
        expect(rating.allowable * rating.safetyFactor).toBeCloseTo(rating.characteristic, 6);
      }),
    );
  });

  test("scaling: pulls k times as great allow k times as much", () => {
    holds(
      fc.property(pulls(1, 12), uses, between(0.1, 10), (values, use, k) => {
        const scaled = values.map((value) => k * value);
        const ratio = allowableOf(scaled, use) / (k * allowableOf(values, use));
        expect(ratio).toBeCloseTo(1, 9);
      }),
    );
  });

  test("the order of the tests is of no account", () => {
    const shuffled = pulls(2, 10).chain((values) =>
      fc.tuple(
        fc.constant(values),
        fc.shuffledSubarray(values, { minLength: values.length, maxLength: values.length }),
      ),
    );
    holds(
      fc.property(shuffled, uses, ([values, others], use) => {
        expect(allowableOf(others, use) / allowableOf(values, use)).toBeCloseTo(1, 9);
      }),
    );
  });

  test("stopping tests early never raises the answer", () => {
    const some = pulls(1, 12).chain((values) =>
      fc.tuple(fc.constant(values), fc.array(fc.boolean(), { minLength: 12, maxLength: 12 })),
    );
    holds(
      fc.property(some, uses, ([values, stopped], use) => {
        const censored = testsOf(values).map((one, index) =>
          stopped[index] ? { ...one, ended: "stopped" as const } : one,
        );
        const rating = rateByTests(censored, use);
        const allowable = rating.rated ? rating.allowable : Number.NaN;
        expect(allowable * rounding).toBeLessThanOrEqual(allowableOf(values, use));
      }),
    );
  });

  test("with one or two tests, or some stopped and fewer than five, a higher pull never lowers", () => {
    holds(
      fc.property(pulls(1, 4), uses, fc.nat(3), between(1, 5), (values, use, place, factor) => {
        const raised = values.map((value, index) =>
          index === place % values.length ? factor * value : value,
        );
        const rate = (pulled: readonly number[]) => {
          const rating = rateByTests(testsOf(pulled, { ended: "stopped" }), use);
          return rating.rated ? rating.allowable : Number.NaN;
        };
        expect(rate(values) * rounding).toBeLessThanOrEqual(rate(raised));
        if (values.length > 2) return;
        expect(allowableOf(values, use) * rounding).toBeLessThanOrEqual(allowableOf(raised, use));
      }),
    );
  });

  test("raising the lowest pull up to the next never lowers, whatever the number", () => {
    holds(
      fc.property(pulls(2, 12), uses, between(0, 1), (values, use, share) => {
        const [lowest, next, ...others] = values.toSorted((a, b) => a - b) as [number, number];
        const raised = [lowest + share * (next - lowest), next, ...others];
        expect(allowableOf(values, use) * rounding).toBeLessThanOrEqual(allowableOf(raised, use));
      }),
    );
  });

  test("below five tests the answer is never under mean and lowest", () => {
    holds(
      fc.property(pulls(1, 4), uses, (values, use) => {
        const [onMean, onLowest] = correlationFactors(values.length);
        const least = Math.min(mean(values) / onMean, Math.min(...values) / onLowest) / 2;
        expect(allowableOf(values, use)).toBeGreaterThanOrEqual(least * rounding);
      }),
    );
  });

  test("one more test at the mean never punishes, from one to four, and from five on", () => {
    const counts = fc.oneof(pulls(1, 3), pulls(5, 12));
    holds(
      fc.property(counts, uses, (values, use) => {
        const more = [...values, mean(values)];
        expect(allowableOf(values, use) * rounding).toBeLessThanOrEqual(allowableOf(more, use));
      }),
    );
  });

  test("a proof load on every anchor, repeats and wet ground never lower the answer", () => {
    holds(
      fc.property(pulls(1, 10), uses, fc.nat(5), (values, use, repeats) => {
        const proven = { ...use, everyAnchorProofLoaded: true };
        const bare = { ...use, everyAnchorProofLoaded: false };
        expect(allowableOf(values, proven)).toBeGreaterThanOrEqual(allowableOf(values, bare));
        const dry = rateByTests(testsOf(values, { ground: "dry", repeats }), use);
        const allowable = dry.rated ? dry.allowable : Number.NaN;
        expect(allowable * rounding).toBeLessThanOrEqual(allowableOf(values, use));
      }),
    );
  });

  test("t falls toward 1.645 and has its closed forms at one and two degrees of freedom", () => {
    expect(quantile95(1)).toBeCloseTo(Math.tan(0.45 * Math.PI), 9);
    expect(quantile95(2)).toBeCloseTo(0.9 * Math.sqrt(2 / 0.19), 12);
    for (let n = 1; n < 400; n += 1) expect(quantile95(n + 1)).toBeLessThan(quantile95(n));
    expect(quantile95(5000)).toBeGreaterThan(1.6448);
    expect(quantile95(5000)).toBeLessThan(1.6456);
  });

  test("no t and no factors for a count that is none", () => {
    for (const count of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => quantile95(count)).toThrow("out-of-range");
      expect(() => correlationFactors(count)).toThrow("out-of-range");
    }
  });

  test("correlation factors fall with the number of tests, and the British are the higher", () => {
    for (let n = 1; n <= 6; n += 1) {
      const [here, next] = [correlationFactors(n), correlationFactors(n + 1)];
      const british = correlationFactors(n, ukCorrelationTable);
      for (const place of [0, 1] as const) {
        expect(next[place]).toBeLessThanOrEqual(here[place]);
        expect(british[place]).toBeGreaterThan(here[place]);
      }
    }
  });
});
