import {
  allOutcomes,
  type BaseLine,
  baseLines,
  type CheckOutcome,
  checkIds,
  checksOfCase,
  limitOf,
  lowerLimit,
  pullsSideways,
  ratioOf,
  slideLimit,
  slidingWindOf,
  worseRatio,
  worstSlideAt,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { WorstOfChecks } from "../../packages/stability/src/worst.ts";
import {
  actions,
  combination,
  heldHouse,
  holds,
  pressure,
  seed,
  sloping,
  termsOf,
  unknownSlope,
} from "./arbitrary-holding.ts";

describe("base lines", () => {
  // 10,000 N on two rails of 0.1 m at 50 kPa press half a metre from each end, in the mean.
  const bearing = { halfSpan: 3, front: 6, back: 8, railWidth: 0.1, allowable: 50_000 };

  test("rails by their centre lines, ends moved in by half of what they press on", () => {
    expect(baseLines(bearing, 10_000, false)).toEqual([
      { check: "tip-right", nx: 1, ny: 0, distance: 3, moved: false },
      { check: "tip-left", nx: -1, ny: 0, distance: 3, moved: false },
      { check: "tip-front", nx: 0, ny: 1, distance: 5.5, moved: true },
      { check: "tip-back", nx: 0, ny: -1, distance: 7.5, moved: true },
    ]);
  });

  test("an anchored house turns about its unmoved ends as well", () => {
    expect(baseLines(bearing, 10_000, true).slice(4)).toEqual([
      { check: "tip-front", nx: 0, ny: 1, distance: 6, moved: false },
      { check: "tip-back", nx: 0, ny: -1, distance: 8, moved: false },
    ]);
  });
});

describe("ratio and limit at their edges", () => {
  test("without resistance any demand is beyond bounds, and none is none", () => {
    expect([ratioOf(6, 3), ratioOf(0, 3), ratioOf(-6, 3)]).toEqual([2, 0, -2]);
    expect([ratioOf(1, 0), ratioOf(0, 0), ratioOf(0, -1), ratioOf(1, -1)]).toEqual([
      Number.POSITIVE_INFINITY,
      0,
      Number.POSITIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    ]);
  });

  test("limits: (R - S) / (gamma w); nought where it fails in a calm, endless without wind", () => {
    expect(limitOf(1000, 100, 0.6, 3)).toBeCloseTo(900 / 1.8, 12);
    expect(limitOf(100, 100, 0.6, 3)).toBe(0);
    expect(limitOf(99, 100, 0.6, 0)).toBe(0);
    expect(limitOf(100, 100, 0.6, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(limitOf(100, 0, 0.6, -1)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("the worse of two", () => {
  const outcome = (ratio: number, limit: number) => ({ ratio, limit }) as CheckOutcome;
  const pairs = [
    [outcome(2, 5), outcome(1, 5)],
    [outcome(2, 9), outcome(1, 5)],
    [outcome(1, 4), outcome(1, 5)],
  ] as const;

  test("by ratio the greater, of equal ones the lower limit; the first of equals", () => {
    for (const [worse, other] of pairs) {
      expect(worseRatio(worse, other)).toBe(worse);
      expect(worseRatio(other, worse)).toBe(worse);
    }
    const [one, same] = [outcome(1, 5), outcome(1, 5)];
    expect(worseRatio(one, same)).toBe(one);
    expect(lowerLimit(one, same)).toBe(one);
  });

  test("by limit the lower, of equal ones the greater ratio", () => {
    for (const [worse, other] of [
      [outcome(1, 4), outcome(2, 5)],
      [outcome(2, 5), outcome(1, 5)],
    ] as const) {
      expect(lowerLimit(worse, other)).toBe(worse);
      expect(lowerLimit(other, worse)).toBe(worse);
    }
  });

  test("the worst of many, told in numbers, is the same; each check for itself", () => {
    const tries = [
      ["lift", 1, 9],
      ["lift", 3, 7],
      ["slide", 5, 1],
      ["lift", 3, 6],
      ["lift", 2, 4],
      ["lift", 2.5, 4],
      ["lift", 3, 6],
      ["lift", 2.5, 4],
    ] as const;
    const worst = new WorstOfChecks();
    for (const [at, [check, ratio, limit]] of tries.entries()) worst.take(check, ratio, limit, at);
    expect([worst.ratio("lift"), worst.ratioAt("lift")]).toEqual([3, 3]);
    expect([worst.limit("lift"), worst.limitAt("lift")]).toEqual([4, 5]);
    expect([worst.ratio("slide"), worst.ratioAt("slide")]).toEqual([5, 2]);
    expect([worst.limit("slide"), worst.limitAt("slide")]).toEqual([1, 2]);
    expect(worst.ratio("tip-left")).toBe(Number.NEGATIVE_INFINITY);
    expect(worst.limit("tip-left")).toBe(Number.POSITIVE_INFINITY);
  });
});

describe(`every outcome of a case (seed ${seed})`, () => {
  test("both weights: lift off, every line, sliding with the arch and without it", () => {
    const houses = heldHouse({ anchors: "slanted", slope: fc.oneof(fc.constant(null), sloping) });
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        const terms = termsOf(house, by, q);
        const all = allOutcomes(terms, table, table.count - 1);
        const names = ["lift", ...(terms.holdings[0]?.lines ?? []).map(({ line }) => line.check)];
        const each = [...names, "slide", "slide"];
        expect(all.map(({ check }) => check)).toEqual([...each, ...each]);
        expect(all.map(({ weight }) => weight)).toEqual([
          ...each.map(() => "low"),
          ...each.map(() => "high"),
        ]);
        const arches = all.filter(({ check }) => check === "slide");
        expect(arches.map(({ withoutArch }) => withoutArch)).toEqual([false, true, false, true]);
        for (const { caseIndex, check, line, withoutArch } of all) {
          expect(caseIndex).toBe(table.count - 1);
          if (check !== "slide") expect(withoutArch).toBe(false);
          expect(line === null).toBe(check === "slide" || check === "lift");
        }
        const kept = checksOfCase(terms, table, table.count - 1);
        expect(kept.map(({ check }) => check)).toEqual(checkIds);
        for (const one of kept) {
          const own = all.filter(({ check }) => check === one.check);
          expect(one.ratio).toBe(Math.max(...own.map(({ ratio }) => ratio)));
          const equals = own.filter(({ ratio }) => ratio === one.ratio);
          expect(one.limit).toBe(Math.min(...equals.map(({ limit }) => limit)));
        }
      }),
      60,
    );
  });

  test("of slides over every direction of the slope none is left out that is worse", () => {
    const houses = heldHouse({ anchors: "slanted", slope: unknownSlope });
    const near = (one: number, other: number) =>
      one === other || Math.abs(one - other) < 1e-9 * Math.abs(other);
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        const terms = termsOf(house, by, q);
        const [right, left] = (terms.holdings[0]?.lines ?? []).map(({ line }) => line) as [
          BaseLine,
          BaseLine,
        ];
        const each = terms.holdings.flatMap(({ sliding }) =>
          [false, true].map((withoutArch) => {
            const wind = slidingWindOf(table, 0, withoutArch, right, left);
            const { demand, resistance } = worstSlideAt(sliding, wind, q);
            return {
              ratio: ratioOf(demand, resistance),
              limit: slideLimit(sliding, wind, q),
            };
          }),
        );
        const told = allOutcomes(terms, table, 0).filter(({ check }) => check === "slide");
        const most = Math.max(...each.map(({ ratio }) => ratio));
        const least = Math.min(...each.map(({ limit }) => limit));
        expect(near(Math.max(...told.map(({ ratio }) => ratio)), most)).toBe(true);
        expect(near(Math.min(...told.map(({ limit }) => limit)), least)).toBe(true);
        for (const { ratio, limit } of told) {
          expect(each.some((one) => near(ratio, one.ratio) && near(limit, one.limit))).toBe(true);
        }
      }),
      60,
    );
  });

  test("nor is any told that is clearly less bad than one before it", () => {
    const houses = heldHouse({ anchors: "slanted", slope: unknownSlope });
    let left = 0;
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        fc.pre(house.anchors.some(pullsSideways));
        const all = allOutcomes(termsOf(house, by, q), table, 0);
        expect(all.filter(({ check }) => !checkIds.includes(check))).toEqual([]);
        const told = all.filter(({ check }) => check === "slide");
        left += 4 - told.length;
        for (const [place, { ratio, limit }] of told.entries()) {
          const before = told.slice(0, place);
          const most = Math.max(0, ...before.map((one) => one.ratio));
          const least = Math.min(...before.map((one) => one.limit));
          expect(ratio >= most * (1 - 1e-9) || limit <= least * (1 + 1e-9)).toBe(true);
        }
      }),
      30,
    );
    expect(left).toBeGreaterThan(0);
  });
});
