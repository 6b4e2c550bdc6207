import { Refusal } from "@hoopstay/core";
import {
  anchorsAt,
  combinationOf,
  countSearch,
  type Evaluation,
  endInsets,
  equalPlaces,
  evaluate,
  fittedAnchors,
  type HoldDownKind,
  isWithin,
  oneMissing,
  type RailLoads,
  railLoadsOf,
  railSides,
} from "@hoopstay/house";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bySolver } from "./by-solver.ts";
import { change, changed, evaluated, holds, level, seed } from "./example-house.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const kind: fc.Arbitrary<HoldDownKind> = fc
  .record({
    allowable: between(1500, 15_000),
    angle: fc.constantFrom(Math.PI / 2, Math.PI / 3),
    leastSpacing: between(1.1, 2),
  })
  .map(({ allowable, angle, leastSpacing }) => ({
    id: "kind",
    words: "kind",
    allowable,
    angle,
    lead: angle < 1.5 ? "out" : "upright",
    stiffness: allowable / 0.01,
    leastSpacing,
  }));

const short = change.map((one) => ({ ...one, length: 3 + one.length / 3 }));
const states = ["shut", "front-missing"];

/** The worst ratio of a layout, by the review and the rail solver; null where not held. */
function worstOf(
  evaluation: Evaluation,
  of: HoldDownKind,
  count: number,
  inset: number,
  loads: RailLoads,
): number | null {
  const { house, site } = evaluation;
  const anchors = anchorsAt(of, equalPlaces(house.rail, count, inset));
  const fitted = evaluate({ ...house, anchors: fittedAnchors(anchors, house) }, site);
  const ratios = fitted.states
    .filter(({ state }) => states.includes(state.id))
    .flatMap(({ set }) => set.governing)
    .filter((one) => one.hold === "fitted" && one.combination === site.combination)
    .flatMap(({ checks }) => checks)
    .filter(({ check }) => check !== "slide")
    .map(({ byRatio }) => byRatio.ratio);
  const factor = combinationOf(site.combination).anchor;
  for (const side of railSides) {
    const own = anchors.filter((anchor) => anchor.side === side);
    const pulls = bySolver(loads, own, side);
    if (!pulls) return null;
    ratios.push(...pulls.map((pull) => pull / (factor * of.allowable)));
  }
  return Math.max(...ratios);
}

/** Worst ratios of every inset that has room, by count. */
function everyLayout(evaluation: Evaluation, of: HoldDownKind) {
  const { front, back } = evaluation.house.rail;
  const loads = railLoadsOf(evaluation, states);
  return Array.from({ length: 14 }, (_, at) => at + 2).flatMap((count) => {
    const found = endInsets.flatMap((inset) => {
      const spacing = (front + back - 2 * inset) / (count - 1);
      if (spacing > 12 * 0.3048 + 1e-9 || spacing < of.leastSpacing - 1e-9) return [];
      return [worstOf(evaluation, of, count, inset, loads)];
    });
    return found.length > 0 ? [{ count, ratios: found }] : [];
  });
}

const best = (ratios: readonly (number | null)[]): number =>
  Math.min(...ratios.map((ratio) => ratio ?? Number.POSITIVE_INFINITY));

describe(`count search (seed ${seed})`, () => {
  test("finds what trying every count and inset finds, without passing anything over", () => {
    const outcomes = new Set<string>();
    holds(
      fc.property(short, kind, (by, of) => {
        const evaluation = evaluated(by);
        const [found] = countSearch(evaluation, [of], states).kinds;
        if (!found) throw new Error("one kind, one result");
        const all = everyLayout(evaluation, of);
        const first = all.find(({ ratios }) => best(ratios) <= 1);
        outcomes.add(found.outcome);
        if (!first) {
          expect(found.outcome).toBe(all.length === 0 ? "no-room" : "none");
          if (found.outcome !== "none") return;
          const most = all.at(-1);
          expect(found.most.count).toBe(most?.count);
          expect(found.most.ratio ?? Number.POSITIVE_INFINITY).toBeCloseTo(
            best(most?.ratios ?? []),
            5,
          );
          return;
        }
        if (found.outcome !== "offered") throw new Error(found.outcome);
        expect(found.count).toBe(first.count);
        expect(found.worst.ratio).toBeCloseTo(best(first.ratios), 5);
        const at = all.indexOf(first);
        const [before, after] = [all[at - 1], all[at + 1]];
        expect(found.fewer?.count).toBe(before?.count);
        if (found.fewer && before) {
          expect(isWithin(found.fewer)).toBe(false);
          expect(found.fewer.ratio ?? Number.POSITIVE_INFINITY).toBeCloseTo(best(before.ratios), 5);
        }
        expect(found.moreFails !== null).toBe(after !== undefined && best(after.ratios) > 1);
        const worst = Math.max(...found.anchors.map(({ ratio }) => ratio));
        expect(worst).toBeLessThanOrEqual(found.worst.ratio ?? 0);
        for (const { tension, proofLoad } of found.anchors) {
          expect(proofLoad).toBeCloseTo(1.25 * tension, 6);
        }
      }),
      8,
    );
    expect([...outcomes].sort()).toContain("offered");
    expect([...outcomes].sort()).toContain("none");
  });

  test("the worst with one missing is the worst of all in turn", () => {
    holds(
      fc.property(short, kind, (by, of) => {
        const evaluation = evaluated(by);
        const strong = { ...of, allowable: 4 * of.allowable };
        const [found] = countSearch(evaluation, [strong], states).kinds;
        if (found?.outcome !== "offered") return;
        const loads = railLoadsOf(evaluation, states);
        const each = oneMissing(
          loads,
          found.anchors.map(({ anchor }) => anchor),
        );
        const ratios = each.map(({ worst }) =>
          "outcome" in worst ? Number.POSITIVE_INFINITY : worst.ratio,
        );
        const { worst } = found.oneMissing;
        const told = "outcome" in worst ? Number.POSITIVE_INFINITY : worst.ratio;
        expect(told).toBeCloseTo(Math.max(...ratios), 6);
        expect(found.doubleEnds).toBe(each.some(({ endBeyond }) => endBeyond));
      }),
      12,
    );
  });

  test("of equal stiffness, the stronger anchor never needs more of them", () => {
    holds(
      fc.property(short, kind, between(1, 2), (by, of, times) => {
        const evaluation = evaluated(by);
        const kinds = [of, { ...of, id: "stronger", allowable: times * of.allowable }];
        const [weak, strong] = countSearch(evaluation, kinds, states).kinds;
        if (weak?.outcome !== "offered") return;
        if (strong?.outcome !== "offered") throw new Error("the stronger one does not hold");
        expect(strong.count).toBeLessThanOrEqual(weak.count);
      }),
      15,
    );
  });

  test("fewer states never need more", () => {
    holds(
      fc.property(short, kind, (by, of) => {
        const evaluation = evaluated(by);
        const [all] = countSearch(evaluation, [of]).kinds;
        const [shut] = countSearch(evaluation, [of], ["shut"]).kinds;
        if (all?.outcome !== "offered") return;
        if (shut?.outcome !== "offered") throw new Error("shut does not hold");
        expect(shut.count).toBeLessThanOrEqual(all.count);
      }),
      15,
    );
  });

  test("a house alike left and right is pulled alike", () => {
    const house = {
      ...changed(level, {
        length: 9,
        hoopCount: 7,
        overhang: 0.2,
        boxes: [],
        block: { x: 0, y: 0, weight: 500 },
        shift: [0, 0],
      }),
      parts: level.house.parts.map((part) => (part.kind === "share" ? part : { ...part, x: 0 })),
    };
    const of = {
      id: "helix",
      words: "helix",
      allowable: 12_000,
      angle: Math.PI / 3,
      lead: "out" as const,
      stiffness: 1.2e6,
      leastSpacing: 0.76,
    };
    const [found] = countSearch(evaluate(house, level.site), [of]).kinds;
    if (found?.outcome !== "offered") throw new Error("not offered");
    const half = found.anchors.length / 2;
    for (const [at, right] of found.anchors.slice(0, half).entries()) {
      const left = found.anchors[half + at];
      expect(left?.tension).toBeCloseTo(right.tension, 4);
      expect(right.leads).toEqual([1, 0]);
      expect(left?.leads).toEqual([-1, 0]);
      expect(right.upright).toBeCloseTo(right.tension * Math.sin(of.angle), 6);
      expect(right.level).toBeCloseTo(right.tension * Math.cos(of.angle), 6);
    }
  });

  test("a state that is not there and an anchor that holds nothing are refused", () => {
    const evaluation = evaluate(level.house, level.site);
    const nothing = {
      id: "none",
      words: "none",
      allowable: 0,
      angle: 2,
      lead: "upright" as const,
      stiffness: 1,
      leastSpacing: 1,
    };
    expect(() => countSearch(evaluation, [nothing], ["afloat"])).toThrow(Refusal);
    try {
      countSearch(evaluation, [nothing], ["afloat"]);
    } catch (error) {
      const { complaints } = error as Refusal;
      expect(complaints.map(({ code }) => code)).toEqual([
        "wrong-kind",
        "not-positive",
        "out-of-range",
      ]);
    }
  });
});
