import {
  anchorPulls,
  combinationOf,
  evaluate,
  fittedAnchors,
  oneMissing,
  type RailAnchor,
  railLoadsOf,
  railSides,
  sideSign,
  WholeHouseHold,
} from "@hoopstay/house";
import { caseStride } from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bySolver } from "./by-solver.ts";
import { change, changed, evaluated, holds, level, mirrored, seed } from "./example-house.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const uneven = fc.array(
  fc.record({
    part: between(0, 1),
    allowable: between(2000, 20_000),
    angle: between(0.6, Math.PI / 2),
    lead: fc.constantFrom(-1, 1),
  }),
  { minLength: 2, maxLength: 6 },
);

const tethers = (
  side: RailAnchor["side"],
  reach: number,
  list: readonly { part: number; allowable: number; angle: number; lead: number }[],
): RailAnchor[] =>
  list.map(({ part, allowable, angle, lead }, at) => ({
    name: `${side} ${at}`,
    side,
    along: (2 * part - 1) * reach,
    allowable,
    stiffness: allowable / 0.01,
    toward: [lead * sideSign[side] * Math.cos(angle), 0, -Math.sin(angle)],
  }));

describe(`laws of anchor pulls (seed ${seed})`, () => {
  test("each worst pull is the worst of every load solved by itself", () => {
    holds(
      fc.property(change, uneven, uneven, (by, right, left) => {
        const evaluation = evaluated(by);
        const loads = railLoadsOf(evaluation, ["shut", "front-missing", "film-off"]);
        const reach = evaluation.house.rail.front;
        const anchors = {
          right: tethers("right", reach, right),
          left: tethers("left", reach, left),
        };
        const found = anchorPulls(loads, [...anchors.right, ...anchors.left]);
        const expected = railSides.map((side) => bySolver(loads, anchors[side], side));
        if (found.outcome !== "held") {
          expect(expected).toContain(null);
          return;
        }
        railSides.forEach((side, place) => {
          anchors[side].forEach((anchor, at) => {
            const pull = found.anchors.find((one) => one.anchor === anchor);
            const wanted = expected[place]?.[at] ?? Number.NaN;
            expect(Math.abs((pull?.tension ?? Number.NaN) - wanted)).toBeLessThan(
              1e-5 * (1 + wanted),
            );
            const { anchor: factor } = combinationOf(loads.combination);
            expect(pull?.ratio).toBeCloseTo(wanted / (factor * anchor.allowable), 5);
          });
        });
      }),
      12,
    );
  });

  test("a mirrored house has mirrored pulls", () => {
    holds(
      fc.property(change, uneven, fc.constantFrom("x" as const, "y" as const), (by, list, axis) => {
        const house = changed(level, by);
        const anchors = [
          ...tethers("right", house.rail.front, list),
          ...tethers("left", house.rail.front, [...list].slice(0, 2)),
        ];
        const other = { right: "left", left: "right" } as const;
        const turned = anchors.map(
          (one): RailAnchor =>
            axis === "y" ? { ...one, along: -one.along } : { ...one, side: other[one.side] },
        );
        const [one, two] = [house, mirrored(house, axis)].map((of, place) =>
          anchorPulls(railLoadsOf(evaluate(of, level.site)), place === 0 ? anchors : turned),
        );
        expect(one?.outcome).toBe(two?.outcome);
        if (one?.outcome !== "held" || two?.outcome !== "held") return;
        anchors.forEach((anchor, at) => {
          const pull = one.anchors.find((pulled) => pulled.anchor === anchor)?.tension;
          const image = two.anchors.find((pulled) => pulled.anchor === turned[at])?.tension;
          expect(image).toBeCloseTo(pull ?? Number.NaN, 3);
        });
      }),
      10,
    );
  });

  test("one missing is never better in lift off and turning, and each is as without it", () => {
    holds(
      fc.property(change, uneven, (by, list) => {
        const evaluation = evaluated(by);
        const loads = railLoadsOf(evaluation, ["shut", "front-open"]);
        const reach = evaluation.house.rail.front;
        const anchors = railSides.flatMap((side) => tethers(side, reach, list));
        const hold = new WholeHouseHold(evaluation, loads.states, loads.combination);
        const all = hold.worst(anchors).ratio;
        for (const { missing, hold: held, worst } of oneMissing(loads, anchors)) {
          expect(held.ratio).toBeGreaterThanOrEqual(all * (1 - 1e-12));
          const left = anchors.filter((anchor) => anchor !== missing);
          const again = anchorPulls(loads, left);
          if ("outcome" in worst) {
            expect(again.outcome).not.toBe("held");
          } else if (again.outcome === "held") {
            const own = again.anchors.filter(({ anchor }) => anchor.side === missing.side);
            const ratio = Math.max(...own.map((one) => one.ratio));
            expect(Math.abs(worst.ratio - ratio)).toBeLessThan(1e-6 * (1 + ratio));
          }
        }
      }),
      8,
    );
  });

  test("lift off and turning are those of the review with the anchors fitted", () => {
    holds(
      fc.property(change, uneven, (by, list) => {
        const evaluation = evaluated(by);
        const { house } = evaluation;
        const anchors = railSides.flatMap((side) => tethers(side, house.rail.front, list));
        const hold = new WholeHouseHold(evaluation, evaluation.states, "ASD");
        const fitted = evaluate({ ...house, anchors: fittedAnchors(anchors, house) }, level.site);
        const ratios = fitted.states.flatMap(({ set }) =>
          set.governing
            .filter((one) => one.hold === "fitted" && one.combination === "ASD")
            .flatMap(({ checks }) => checks)
            .filter(({ check }) => check !== "slide")
            .map(({ byRatio }) => byRatio.ratio),
        );
        expect(hold.worst(anchors).ratio).toBeCloseTo(Math.max(...ratios), 9);
      }),
      10,
    );
  });

  test("a rail without anchors is a failure with that word", () => {
    const loads = railLoadsOf(evaluate(level.house, level.site));
    const { front } = level.house.rail;
    const one = { part: 0.5, allowable: 1000, angle: Math.PI / 2, lead: 1 };
    const found = anchorPulls(loads, tethers("right", front, [one, { ...one, part: 1 }]));
    expect(found).toMatchObject({ outcome: "unanchored", side: "left" });
  });
});

test("two hoops over two upright anchors: each anchor holds its own hoop, by hand", () => {
  const house = {
    ...changed(level, {
      length: 3,
      hoopCount: 2,
      overhang: 0,
      boxes: [],
      block: { x: 0, y: 0, weight: 1e-6 },
      shift: [0, 0],
    }),
    filmRemovable: false,
    removableEnds: [],
  };
  const evaluation = evaluate(house, level.site);
  const loads = railLoadsOf(evaluation);
  const upright = (side: RailAnchor["side"], along: number): RailAnchor => ({
    name: `${side} ${along}`,
    side,
    along,
    allowable: 10_000,
    stiffness: 1e6,
    toward: [0, 0, -1],
  });
  const anchors = railSides.flatMap((side) => [upright(side, -1.5), upright(side, 1.5)]);
  const found = anchorPulls(loads, anchors);
  if (found.outcome !== "held") throw new Error(found.outcome);
  const { wind, dead } = combinationOf("ASD");
  for (const { anchor, tension } of found.anchors) {
    const n = sideSign[anchor.side];
    const end = anchor.along / 1.5;
    let worst = 0;
    for (const { set } of evaluation.states) {
      for (let at = 0; at < set.table.components.length; at += caseStride) {
        const [fz = 0, mx = 0, my = 0] = [2, 3, 4].map((k) => set.table.components[at + k]);
        const up = fz / 4 - (n * my) / (2 * house.lines.span) + (end * mx) / (2 * 3);
        for (const { weight } of set.holds[0]?.holdings ?? []) {
          const { W, x, y } = weight;
          const share = (0.5 + (n * x) / house.lines.span) * (0.5 + (end * y) / 3);
          worst = Math.max(worst, wind * evaluation.pressure * up - dead * W * share);
        }
      }
    }
    expect(worst).toBeGreaterThan(100);
    expect(Math.abs(tension - worst)).toBeLessThan(0.01);
  }
});
