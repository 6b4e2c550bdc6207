import {
  asce716,
  codeSpeed,
  mapSpeed,
  pressureFactors,
  roofSetsOf,
  shellOf,
  singleCheckCases,
  windSurfaces,
  workingGust,
} from "@hoopstay/load";
import {
  allOutcomes,
  asd,
  baseLines,
  checkIds,
  checkTerms,
  combinations,
  extremesOf,
  governingChecks,
  type Holding,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  actions,
  between,
  combination,
  type HeldHouse,
  heldHouse,
  holdingsOf,
  holds,
  liftingActions,
  linesOf,
  pressure,
  seed,
  sixteenths,
  solve,
  unknownSlope,
} from "./arbitrary-holding.ts";

describe(`laws of limits (seed ${seed})`, () => {
  test("lift off and turning: what holds together has the sum of the limits apart", () => {
    const houses = heldHouse({ anchors: "vertical" });
    holds(
      fc.property(houses, liftingActions, combination, (house, table, by) => {
        const [weight] = house.weights;
        const lines = linesOf(house);
        const limits = (holding: Holding) =>
          allOutcomes(checkTerms([holding], lines, by, 1), table, 0).map((one) => one.limit);
        const plain = { weight, anchors: house.anchors, slope: null, friction: house.friction };
        const together = limits(plain);
        const byWeight = limits({ ...plain, anchors: [] });
        const byAnchors = limits({ ...plain, weight: { ...weight, W: 0 } });
        for (const place of [0, 1, 2, 3, 4]) {
          const [all, one, other] = [together, byWeight, byAnchors].map((of) => of[place] ?? NaN);
          const sum = (one ?? NaN) + (other ?? NaN);
          expect(all === sum || Math.abs((all ?? NaN) / sum - 1) < 1e-9, `${all} ${sum}`).toBe(
            true,
          );
        }
      }),
    );
  });

  test("sliding has its two branches: contact left, and tethers alone", () => {
    const h = between(1, 50);
    const law = [h, sixteenths(-20, 100), between(1000, 20_000), between(0, 15_000)] as const;
    holds(
      fc.property(...law, between(0.05, 0.6), combination, (push, v, W, pull, mu, by) => {
        const weight = { name: "low" as const, W, x: 0, y: 0, z: 1 };
        // A windward rail's tether at 45 degrees, straight against the wind toward +x.
        const toward = [-Math.SQRT1_2, 0, -Math.SQRT1_2] as const;
        const anchors = [{ x: -2, y: 0, pull, toward }];
        const on = { halfSpan: 2, front: 5, back: 5, railWidth: 0.1, allowable: 5e4 };
        const table = { count: 1, components: Float64Array.from([push, 0, v, 0, 0, 0, push]) };
        const holding = { weight, anchors, slope: null, friction: mu };
        const terms = checkTerms([holding], baseLines(on, W, true), by, 100);
        const tether = by.anchor * pull * Math.SQRT1_2;
        const contact = (mu * by.dead * W + tether) / (by.wind * (push + mu * v));
        const alone = tether / (by.wind * push);
        const first = push + mu * v > 0 && by.wind * v * contact <= by.dead * W;
        const expected = push + mu * v <= 0 ? Number.POSITIVE_INFINITY : first ? contact : alone;
        const found = governingChecks(terms, table, extremesOf(table, baseLines(on, W, true)));
        const limit = found.find(({ check }) => check === "slide")?.byLimit.limit ?? NaN;
        fc.pre(expected > 1e-3 && (expected < 9e4 || expected === Number.POSITIVE_INFINITY));
        expect(limit === expected || Math.abs(limit / expected - 1) < 1e-9).toBe(true);
      }),
    );
  });

  test("level ground, no wind: nothing lifts, turns or slides, tethers or not", () => {
    const calm = { count: 1, components: new Float64Array(7) };
    holds(
      fc.property(heldHouse({ anchors: "slanted" }), combination, pressure, (house, by, q) => {
        const all = solve(house, calm, by, q);
        for (const check of checkIds) {
          expect(all[check].byRatio.ratio, check).toBe(0);
          expect(all[check].byLimit.limit, check).toBe(Number.POSITIVE_INFINITY);
        }
      }),
    );
  });

  test("with tethers aslant and the slope unknown, no known slope has a lower limit", () => {
    const houses = heldHouse({ anchors: "slanted", slope: unknownSlope });
    holds(
      fc.property(houses, actions, combination, between(-3, 3), (house, table, by, at) => {
        const angle = house.slope?.angle ?? 0;
        const downhill = [Math.cos(at), Math.sin(at)] as const;
        const worst = solve(house, table, by, 100).slide.byLimit.limit;
        const known = solve({ ...house, slope: { angle, downhill } }, table, by, 100).slide.byLimit;
        expect(known.limit, "slide").toBeGreaterThanOrEqual(worst * (1 - 1e-6));
      }),
      60,
    );
  });

  test("a gust: the ASD ratio is 1 exactly at the working gust, LRFD's is 1/0.9 there", () => {
    const sizes = fc.record({
      span: between(4, 9),
      length: between(6, 25),
      share: between(0.2, 0.5),
    });
    holds(
      fc.property(sizes, heldHouse({ anchors: "slanted" }), ({ span, length, share }, house) => {
        const shell = shellOf({
          shape: "round",
          span,
          rise: share * span,
          length,
          springing: 0.2,
          hoopDiameter: 0.05,
          hoopCount: 9,
        });
        const body = { shell, obstacles: [], frame: { dragArea: 0, x: 0, y: 0, z: 0 } };
        const sets = roofSetsOf(body, "covered");
        const surfaces = windSurfaces(body, "covered", { front: true, back: true }, sets);
        const table = singleCheckCases(surfaces, [0.18, -0.18]);
        const { perSpeedSquared } = pressureFactors({ edition: asce716, exposure: "C" }, shell.h);
        const lines = linesOf(house);
        const extremes = extremesOf(table, lines);
        const solved = (by: (typeof combinations)[number], q: number) =>
          governingChecks(checkTerms(holdingsOf(house), lines, by, q), table, extremes);
        for (const { check, byLimit } of solved(asd, 1000)) {
          const { limit } = byLimit;
          if (!(limit > 1e-3 && limit < 9e5)) continue;
          const gust = workingGust.evaluate(codeSpeed.evaluate(limit, perSpeedSquared), 0.85);
          const q = perSpeedSquared * mapSpeed(gust, "gust") ** 2;
          const ratioIn = (by: (typeof combinations)[number]) =>
            solved(by, q).find((one) => one.check === check)?.byRatio.ratio ?? NaN;
          expect(Math.abs(ratioIn(asd) - 1), check).toBeLessThan(1e-8);
          if (check !== "slide") expect(ratioIn(combinations[1] ?? asd)).toBeCloseTo(1 / 0.9, 7);
        }
      }),
      40,
    );
  });
});

test("a row without any contact governs sliding, wherever it stands in the table", () => {
  const weight = { x: 0, y: 0, z: 1 };
  const house: HeldHouse = {
    slope: null,
    friction: 0.3,
    anchors: [],
    bearing: { halfSpan: 3, front: 6, back: 6, railWidth: 0.1, allowable: 47880 },
    weights: [
      { name: "low", W: 6000, ...weight },
      { name: "high", W: 9000, ...weight },
    ],
  };
  const rows = [20, 0, 60, 0, 0, 0, 20, 1, 0, 0, 0, 0, 0, 1];
  const table = { count: 2, components: Float64Array.from(rows) };
  expect(solve(house, table, asd, 120).slide.byRatio.ratio).toBe(Number.POSITIVE_INFINITY);
});
