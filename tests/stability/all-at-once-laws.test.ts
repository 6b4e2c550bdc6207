import {
  type ActionTable,
  type Anchor,
  asd,
  certificateOf,
  checksOfCase,
  checkTerms,
  cornerSets,
  type JointProblem,
  jointFactor,
  jointSystem,
  lrfd,
  slopesOf,
  windOf,
  worstJoint,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  eachFactor,
  expectBalanced,
  expectBeyond,
  holds,
  lowest,
  lowOf,
  measuredHouse,
  near,
  problemsOf,
  someLaterals,
  upTo,
} from "./all-at-once-house.ts";
import {
  actions,
  between,
  combination,
  type HeldHouse,
  holdingsOf,
  linesOf,
  pressure,
  seed,
  sloping,
  unknownSlope,
} from "./arbitrary-holding.ts";

const grounds = fc.oneof(fc.constant(null), sloping);
const anyHouse = fc.oneof(
  measuredHouse({ slope: grounds }),
  measuredHouse({ anchors: "vertical", slope: grounds }),
  measuredHouse({ anchors: "slanted", slope: grounds }),
);
const levelHouse = fc.oneof(
  measuredHouse(),
  measuredHouse({ anchors: "vertical" }),
  measuredHouse({ anchors: "slanted" }),
);
const law = [anyHouse, actions, combination, pressure] as const;

describe(`laws of everything at once (seed ${seed})`, () => {
  test("a number or infinity; proved from both sides: it balances, and nothing does beyond", () => {
    let [houses, balanced, beyond, coarse] = [0, 0, 0, 0];
    holds(
      fc.property(...law, someLaterals, (house, table, by, q, laterals) => {
        houses += 1;
        const problem = lowOf(house, by, q, laterals);
        for (const solved of eachFactor(problem, table)) {
          const { system, actions: acting, factor } = solved;
          expect(factor).toBeGreaterThanOrEqual(0);
          if (factor === Number.POSITIVE_INFINITY) continue;
          const certificate = certificateOf(system, acting, factor);
          if (certificate) {
            balanced += 1;
            const { length } = system;
            expectBalanced(certificate, house.friction, length, laterals, by.anchor);
          } else expect(factor).toBe(0);
          // A factor of rounding only (two anchors almost in one place, say) is as good as nought.
          if (factor * Math.hypot(...acting.wind) > 1e-6 * system.force) {
            beyond += 1;
            if (expectBeyond(solved) > 1e-7) coarse += 1;
          }
        }
      }),
      300,
    );
    expect(balanced).toBeGreaterThan(houses);
    expect(beyond).toBeGreaterThan(houses);
    expect(coarse / beyond).toBeLessThan(0.01);
  });

  test("every smaller factor is in equilibrium too", () => {
    holds(
      fc.property(...law, between(0, 1), (house, table, by, q, share) => {
        for (const { system, actions: acting, factor } of eachFactor(lowOf(house, by, q), table)) {
          if (factor === 0 || factor === Number.POSITIVE_INFINITY) continue;
          const certificate = certificateOf(system, acting, share * factor);
          if (!certificate) throw new Error(`not in equilibrium at ${share} of ${factor}`);
          expectBalanced(certificate, house.friction, system.length, [], by.anchor);
        }
      }),
    );
  });

  test("the worst of many is the lowest of each by itself", () => {
    holds(
      fc.property(...law, someLaterals, actions, (house, table, by, q, laterals, more) => {
        const problems = problemsOf(house, by, q, laterals);
        const tables = [table, more];
        const worst = worstJoint(problems.map((problem) => ({ problem, tables })));
        const each = problems.flatMap((problem) => tables.map((one) => lowest(problem, one)));
        expect(near(worst?.factor ?? NaN, Math.min(...each), 1e-9), `${worst?.factor}`).toBe(true);
      }),
      300,
    );
  });

  test("the same on a slope of unknown direction", () => {
    const houses = measuredHouse({ anchors: "slanted", slope: unknownSlope });
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        const problems = problemsOf(house, by, q);
        const worst = worstJoint(problems.map((problem) => ({ problem, tables: [table] })));
        const each = problems.map((problem) => lowest(problem, table));
        expect(near(worst?.factor ?? NaN, Math.min(...each), 1e-9)).toBe(true);
      }),
      60,
    );
  });

  test("level ground: never above lift off, the four lines, or sliding without tethers aslant", () => {
    holds(
      fc.property(levelHouse, actions, combination, pressure, (house, table, by, q) => {
        const lines = linesOf(house);
        const aslant = house.anchors.some(({ toward }) => toward[2] > -1);
        for (const holding of holdingsOf(house)) {
          const terms = checkTerms([holding], lines, by, q);
          for (let row = 0; row < table.count; row += 1) {
            const components = table.components.slice(7 * row, 7 * row + 7);
            // All surfaces: the reading without the arch is not part of this check.
            components[6] = components[0] as number;
            const one = { count: 1, components };
            const factor = lowest(problemOf(terms), one);
            for (const { check, limit } of checksOfCase(terms, one, 0)) {
              if (check === "slide" && aslant) continue;
              expect(upTo(factor, limit / q), `${check} ${factor} ${limit / q}`).toBe(true);
            }
          }
        }
      }),
    );
  });

  const problemOf = (terms: ReturnType<typeof checkTerms>): JointProblem => ({
    terms: (terms.holdings[0] as (typeof terms.holdings)[number]).terms,
    lines: (terms.holdings[0] as (typeof terms.holdings)[number]).lines.map(({ line }) => line),
    pressure: terms.pressure,
  });

  test("one more anchor of any kind never lowers it; one less never raises it", () => {
    const anchored = measuredHouse({ anchors: "slanted", slope: grounds });
    holds(
      fc.property(anchored, actions, combination, pressure, (house, table, by, q) => {
        const whole = lowest(lowOf(house, by, q), table);
        const lines = linesOf(house);
        for (let gone = 0; gone < house.anchors.length; gone += 1) {
          const anchors = house.anchors.filter((_, place) => place !== gone);
          const terms = checkTerms([{ ...holdingsOf(house)[0], anchors } as never], lines, by, q);
          const fewer = lowest(problemOf(terms), table);
          expect(upTo(fewer, whole), `${fewer} ${whole}`).toBe(true);
        }
      }),
      100,
    );
  });

  test("a mirrored house under mirrored wind has the same factor", () => {
    holds(
      fc.property(...law, (house, table, by, q) => {
        const factor = lowest(lowOf(house, by, q), table);
        for (const axis of ["x", "y"] as const) {
          const image = lowest(lowOf(mirrored(house, axis), by, q), mirroredTable(table, axis));
          expect(near(image, factor), `${image} ${factor}`).toBe(true);
        }
      }),
      100,
    );
  });

  test("loads, weights and capacities k times: the same factor; pressure k times: 1/k of it", () => {
    holds(
      fc.property(...law, between(0.2, 5), (house, table, by, q, k) => {
        const problem = lowOf(house, by, q);
        const factor = lowest(problem, table);
        const { holding } = problem.terms;
        const { weight } = holding;
        const larger = {
          ...holding,
          weight: { ...weight, W: k * weight.W },
          anchors: holding.anchors.map((anchor) => ({ ...anchor, pull: k * anchor.pull })),
        };
        const strong = problemOf(checkTerms([larger], problem.lines, by, k * q));
        expect(near(lowest(strong, table), factor)).toBe(true);
        expect(near(k * lowest({ ...problem, pressure: k * q }, table), factor)).toBe(true);
      }),
      100,
    );
  });

  test("on level ground LRFD has 0.9 of ASD's factor", () => {
    holds(
      fc.property(levelHouse, actions, pressure, someLaterals, (house, table, q, laterals) => {
        const allowable = lowest(lowOf(house, asd, q, laterals), table);
        expect(near(lowest(lowOf(house, lrfd, q, laterals), table), 0.9 * allowable)).toBe(true);
      }),
      100,
    );
  });

  test("more friction never lowers it", () => {
    holds(
      fc.property(...law, between(0, 0.5), (house, table, by, q, more) => {
        const rough = { ...house, friction: house.friction + more };
        const [before, after] = [house, rough].map((one) => lowest(lowOf(one, by, q), table));
        expect(upTo(before ?? NaN, after ?? NaN), `${before} ${after}`).toBe(true);
      }),
      100,
    );
  });

  test("level ground, same base lines: more ballast between the lines never lowers it", () => {
    const place = between(-1, 1);
    holds(
      fc.property(
        levelHouse,
        actions,
        combination,
        pressure,
        between(0, 2e4),
        place,
        place,
        (house, table, by, q, ballast, across, along) => {
          const lines = linesOf(house);
          const [holding] = holdingsOf(house);
          if (!holding) throw new Error("no weight");
          const { weight } = holding;
          const edge = (check: string) =>
            lines.find((line) => line.check === check)?.distance ?? NaN;
          const x = across * edge("tip-right");
          const y = along > 0 ? along * edge("tip-front") : along * edge("tip-back");
          const W = weight.W + ballast;
          const mean = (one: number, other: number) => (weight.W * one + ballast * other) / W;
          const loaded = { ...weight, W, x: mean(weight.x, x), y: mean(weight.y, y) };
          const [before, after] = [weight, loaded].map((one) =>
            lowest(problemOf(checkTerms([{ ...holding, weight: one }], lines, by, q)), table),
          );
          expect(upTo(before ?? NaN, after ?? NaN), `${before} ${after}`).toBe(true);
        },
      ),
      100,
    );
  });

  test("unmoved end lines never have a lower factor than moved ones", () => {
    const anchored = measuredHouse({ anchors: "slanted", slope: grounds });
    holds(
      fc.property(anchored, actions, combination, pressure, (house, table, by, q) => {
        const problem = lowOf(house, by, q);
        expect(cornerSets(problem.lines)).toHaveLength(1);
        const unmoved = problem.lines
          .filter(({ check, moved }) => !moved || check.startsWith("tip-r"))
          .map((line) => ({ ...line, moved: line.ny !== 0 }));
        const wide = lowest({ ...problem, lines: unmoved }, table);
        expect(upTo(lowest(problem, table), wide)).toBe(true);
      }),
      100,
    );
  });

  test("slope of unknown direction: at most that of any of the sixteen directions", () => {
    const houses = measuredHouse({ anchors: "slanted", slope: unknownSlope });
    holds(
      fc.property(houses, actions, combination, pressure, (house, table, by, q) => {
        const one = { count: 1, components: table.components.slice(0, 7) };
        const [fx, fy] = one.components as unknown as [number, number];
        fc.pre(fx !== 0 || fy !== 0);
        const worst = lowest(lowOf(house, by, q), one);
        for (let turn = 0; turn < 16; turn += 1) {
          const angle = Math.atan2(fy, fx) + (turn * Math.PI) / 8;
          const downhill = [Math.cos(angle), Math.sin(angle)] as const;
          const slope = { angle: house.slope?.angle ?? 0, downhill };
          expect(upTo(worst, lowest(lowOf({ ...house, slope }, by, q), one))).toBe(true);
        }
      }),
      60,
    );
  });

  test("side pull on a shaft never lowers it", () => {
    holds(
      fc.property(...law, someLaterals, (house, table, by, q, laterals) => {
        // As strong along the shaft as the tether is, so that the shaft takes nothing away.
        const strong = laterals.map((one, place) => {
          const pull = house.anchors[place]?.pull ?? 1;
          return one && { ...one, Q: pull, cosDelta: 1, sinDelta: 0 };
        });
        const [without, held] = [[], strong].map((of) => lowest(lowOf(house, by, q, of), table));
        expect(upTo(without ?? NaN, held ?? NaN), `${without} ${held}`).toBe(true);
      }),
      100,
    );
  });
});

test("a case at no wind asks for no tension: calm on level ground", () => {
  holds(
    fc.property(levelHouse, combination, pressure, (house, by, q) => {
      const problem = lowOf(house, by, q);
      const corners = cornerSets(problem.lines)[0];
      if (!corners) throw new Error("no corners");
      const system = jointSystem(problem, corners);
      const calm: ActionTable = { count: 1, components: new Float64Array(7) };
      const wind = windOf(problem, calm, 0);
      const [slope] = slopesOf(problem, 0, 0);
      if (!slope) throw new Error("level ground has one slope");
      const factor = jointFactor(system, { wind, slope });
      fc.pre(factor > 0);
      expect(factor).toBe(Number.POSITIVE_INFINITY);
      const certificate = certificateOf(system, { wind, slope }, 1);
      for (const { tension } of certificate?.tethers ?? []) expect(tension).toBe(0);
    }),
  );
});

function mirrored(house: HeldHouse, axis: "x" | "y"): HeldHouse {
  const [sx, sy] = axis === "x" ? [-1, 1] : [1, -1];
  const flip = <Place extends { x: number; y: number }>(one: Place): Place => ({
    ...one,
    x: sx * one.x,
    y: sy * one.y,
  });
  const { bearing, weights, anchors, slope } = house;
  const [low, high] = weights;
  const { front, back } = bearing;
  return {
    ...house,
    bearing: axis === "x" ? bearing : { ...bearing, front: back, back: front },
    weights: [flip(low), flip(high)],
    anchors: anchors.map(
      (one): Anchor => ({
        ...flip(one),
        toward: [sx * one.toward[0], sy * one.toward[1], one.toward[2]],
      }),
    ),
    slope: slope?.downhill
      ? { ...slope, downhill: [sx * slope.downhill[0], sy * slope.downhill[1]] }
      : slope,
  };
}

const mirrorSigns = { x: [-1, 1, 1, 1, -1, -1, -1], y: [1, -1, 1, -1, 1, -1, 1] };
const mirroredTable = ({ count, components }: ActionTable, axis: "x" | "y"): ActionTable => ({
  count,
  components: components.map((value, place) => value * (mirrorSigns[axis][place % 7] ?? NaN)),
});
