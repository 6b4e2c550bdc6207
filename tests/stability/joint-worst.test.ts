import {
  type ActionTable,
  baseLines,
  checkTerms,
  combinations,
  type Holding,
  type JointWork,
  jointFactor,
  jointOfEachCase,
  jointProblems,
  slopesOf,
  type Weight,
  windOf,
  worstJoint,
} from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { outweighs } from "../../packages/stability/src/all-at-once/outweighed.ts";
import {
  eachFactor,
  holds,
  measuredHouse,
  near,
  problemsOf,
  someLaterals,
} from "./all-at-once-house.ts";
import {
  actions,
  between,
  combination,
  pressure,
  seed,
  sloping,
  unknownSlope,
} from "./arbitrary-holding.ts";
import { dead, problem } from "./fitted-problem.ts";

const anyHouse = measuredHouse({
  anchors: "slanted",
  slope: fc.oneof(fc.constant(null), sloping, unknownSlope),
});

describe(`the worst of many cases (seed ${seed})`, () => {
  const law = [anyHouse, actions, actions, combination, pressure, someLaterals] as const;

  test("names the case it comes from, and only tells of one below a bound", () => {
    holds(
      fc.property(...law, between(0.5, 1.5), (house, one, other, by, q, laterals, share) => {
        const tables = [one, other];
        const works = problemsOf(house, by, q, laterals).map((of) => ({ problem: of, tables }));
        const worst = worstJoint(works);
        if (!worst) throw new Error("there are cases");
        const { work, table, row, system, actions: acting, factor } = worst;
        const [named, cases] = [works[work], tables[table]];
        if (!named || !cases) throw new Error("no such case");
        expect(system.problem).toBe(named.problem);
        const wind = windOf(named.problem, cases, row);
        expect(acting.wind).toEqual(wind);
        const slopes = slopesOf(named.problem, wind[0] ?? NaN, wind[1] ?? NaN);
        expect(slopes).toContainEqual(acting.slope);
        expect(factor).toBe(jointFactor(system, acting));
        if (factor === 0 || factor === Number.POSITIVE_INFINITY) return;
        const below = worstJoint(works, share * factor);
        if (share <= 1) expect(below).toBeNull();
        else expect(near(below?.factor ?? NaN, factor, 1e-9)).toBe(true);
      }),
      60,
    );
  });

  test("each case by itself has the lowest factor over weights and corners", () => {
    // A slope of unknown direction is nine cases for each: left to the laws of the worst of many.
    const known = measuredHouse({ anchors: "slanted", slope: fc.option(sloping, { nil: null }) });
    const few = [known, ...law.slice(1)] as unknown as typeof law;
    holds(
      fc.property(...few, (house, one, other, by, q, laterals) => {
        const tables = [one, other];
        const problems = problemsOf(house, by, q, laterals);
        const found = jointOfEachCase(problems.map((of) => ({ problem: of, tables })));
        expect(found.map((factors) => factors.length)).toEqual([one.count, other.count]);
        for (const [table, { count, components }] of tables.entries()) {
          for (let row = 0; row < count; row += 1) {
            const alone = { count: 1, components: components.slice(7 * row, 7 * row + 7) };
            const each = problems.flatMap((of) => eachFactor(of, alone));
            const lowest = Math.min(...each.map(({ factor }) => factor));
            expect(near(found[table]?.[row] ?? NaN, lowest, 1e-8), `${table} ${row}`).toBe(true);
          }
        }
      }),
      20,
    );
  });

  test("no case, nothing told; a case that nothing limits is told as that", () => {
    const none: ActionTable = { count: 0, components: new Float64Array(0) };
    const calm: ActionTable = { count: 1, components: new Float64Array(7) };
    const free = problem({});
    expect(worstJoint([])).toBeNull();
    expect(worstJoint([{ problem: free, tables: [none] }])).toBeNull();
    expect(jointOfEachCase([])).toEqual([]);
    expect(jointOfEachCase([{ problem: free, tables: [none, calm] }])).toEqual([
      [],
      [Number.POSITIVE_INFINITY],
    ]);
    const found = worstJoint([{ problem: free, tables: [none, calm] }]);
    expect([found?.factor, found?.table, found?.row]).toEqual([Number.POSITIVE_INFINITY, 1, 0]);
    expect(worstJoint([{ problem: free, tables: [calm] }], 5)).toBeNull();
  });

  test("where nothing limits any case, told is the first of those that push hardest sideways", () => {
    // Each presses down more than friction needs to hold it.
    const told = (...pushes: (readonly [number, number])[]) => {
      const components = pushes.flatMap(([fx, fy]) => [fx, fy, -100, 0, 0, 0, 0]);
      const table = { count: pushes.length, components: Float64Array.from(components) };
      const found = worstJoint([{ problem: problem({}), tables: [table] }]);
      expect(found?.factor).toBe(Number.POSITIVE_INFINITY);
      return found?.row;
    };
    expect(told([0, 0], [12, 0], [-2, -13], [9, 9], [2, 13], [1, 1])).toBe(2);
    expect(told([0, 0], [0, 12], [-13, -2], [9, 9], [13, 2], [1, 1])).toBe(2);
    expect(told([0, 0], [0.1, 0.1], [0.5, 0])).toBe(2);
    expect(told([0, 0], [0, 0])).toBe(0);
  });

  test("a heavier house that cannot be worse is not looked at: told is the lighter's case", () => {
    const [light, heavy] = [problem({}), problem({ heavy: { W: 12_000 } })];
    const tables = [{ count: 1, components: new Float64Array(7) }];
    const alike = { lines: light.lines, pressure: light.pressure };
    const { anchors } = light.terms.holding;
    const holding = { ...heavy.terms.holding, anchors };
    const worse = { ...heavy, ...alike, terms: { ...heavy.terms, holding } };
    const found = worstJoint([
      { problem: worse, tables },
      { problem: light, tables },
    ]);
    expect(found?.work).toBe(1);
  });

  test("a pull so small that ten thousand times it holds is answered all the same", () => {
    const uplift = dead / 1e5;
    const lifted = { count: 1, components: Float64Array.from([0, 0, uplift, 0, 0, 0, 0]) };
    const found = worstJoint([{ problem: problem({}), tables: [lifted] }]);
    expect(found?.factor).toBeCloseTo(1e5, 3);
  });
});

describe("the solver's second opinion", () => {
  /** A house that has lost so much of its weight at each look, and how often it was looked at. */
  const changing = (share: number) => {
    const steady = problem({});
    const looks = { count: 0 };
    const terms = {
      ...steady.terms,
      get deadNormal() {
        looks.count += 1;
        return dead * (1 - share * looks.count);
      },
    };
    return { looks, of: { ...steady, terms } };
  };
  const cases = (...all: number[][]): ActionTable => ({
    count: all.length,
    components: Float64Array.from(all.flatMap((sums) => [...sums, 0])),
  });
  const slides = (force: number) => [force, 0, 500, 0, 0, 0];

  test("has to be the walk's answer but for rounding", () => {
    const worstAt = (share: number) =>
      worstJoint([{ problem: changing(share).of, tables: [cases(slides(2000))] }]);
    for (const rounding of [0, 1e-12]) {
      expect(worstAt(rounding)?.factor).toBeCloseTo((0.3 * dead) / (2000 + 0.3 * 500), 9);
    }
    expect(() => worstAt(1e-5)).toThrow(/solver-disagrees/);
  });

  test("is asked for once of many cases, and never for each by itself", () => {
    // One look makes the system, and one is taken at each case.
    const strong = Array.from({ length: 7 }, (_, place) => slides(2000 - 100 * place));
    const weak = strong.map((sums) => sums.map((one) => one / 1e3));
    for (const of of [strong, weak]) {
      const { looks, of: house } = changing(0);
      const [factors] = jointOfEachCase([{ problem: house, tables: [cases(...of)] }]);
      expect(factors).toHaveLength(7);
      expect(looks.count).toBe(1 + 7);
      looks.count = 0;
      worstJoint([{ problem: house, tables: [cases(...of)] }]);
      // The strongest first, then all; the solver, and the unit in which it has to agree.
      expect(looks.count).toBe(1 + 1 + 7 + 2);
    }
  });
});

describe("a heavier house that cannot be worse", () => {
  const bearing = { halfSpan: 3, front: 6, back: 8, railWidth: 0.1, allowable: 1e15 };
  const lines = baseLines(bearing, 5000, false);
  const light: Weight = { name: "low", W: 5000, x: 0.2, y: -0.4, z: 1 };
  const tables: ActionTable[] = [];
  const [by, other] = combinations as [(typeof combinations)[0], (typeof combinations)[0]];
  interface Changed {
    readonly holding?: Partial<Holding>;
    readonly by?: typeof by;
    readonly pressure?: number;
    readonly lines?: typeof lines;
  }
  const anchors: Holding["anchors"] = [];
  const work = (weight: Weight, of: Changed = {}): JointWork => {
    const holding = { weight, anchors, slope: null, friction: 0.3, ...of.holding };
    const terms = checkTerms([holding], lines, of.by ?? by, of.pressure ?? 500);
    const [found] = jointProblems(terms);
    if (!found) throw new Error("one weight, one problem");
    return { problem: { ...found, lines: of.lines ?? lines }, tables };
  };
  /** As heavy as the light one and so much more at a place. */
  const heavier = (more: number, x: number, y: number): Weight => {
    const W = light.W + more;
    const mean = (one: number, two: number) => (light.W * one + more * two) / W;
    return { ...light, W, x: mean(light.x, x), y: mean(light.y, y) };
  };

  test("what it has more of lies between the base lines", () => {
    for (const [x, y] of [
      [0, 0],
      [2.99, 5.99],
      [-2.99, -7.99],
    ] as const) {
      expect(outweighs(work(heavier(4000, x, y)), work(light)), `${x} ${y}`).toBe(true);
    }
    for (const [x, y] of [
      [3.01, 0],
      [-3.01, 0],
      [0, 6.01],
      [0, -8.01],
    ] as const) {
      expect(outweighs(work(heavier(4000, x, y)), work(light)), `${x} ${y}`).toBe(false);
    }
  });

  test("on a base line is between them", () => {
    const at = (x: number, y: number) =>
      outweighs(
        work({ ...light, W: 8000, x: x / 2, y: y / 2 }),
        work({ ...light, W: 4000, x: 0, y: 0 }),
      );
    expect(at(3, 0)).toBe(true);
    expect(at(-3, 0)).toBe(true);
    expect(at(3 + 1e-9, 0)).toBe(false);
  });

  test("it is heavier, not as heavy or lighter", () => {
    expect(outweighs(work(light), work(light))).toBe(false);
    expect(outweighs(work(light), work(heavier(4000, 0, 0)))).toBe(false);
  });

  test("the two differ by nothing else", () => {
    const heavy = heavier(4000, 0, 0);
    expect(outweighs(work(heavy), work(light))).toBe(true);
    const slope = { angle: 0.02, downhill: null };
    const changes: Changed[] = [
      { holding: { friction: 0.31 } },
      { holding: { anchors: [] } },
      { holding: { slope } },
      { by: other },
      { pressure: 501 },
      { lines: [...lines] },
    ];
    for (const change of changes) {
      expect(outweighs(work(heavy, change), work(light)), JSON.stringify(change)).toBe(false);
      expect(outweighs(work(heavy), work(light, change)), JSON.stringify(change)).toBe(false);
    }
    expect(
      outweighs(work(heavy, { holding: { slope } }), work(light, { holding: { slope } })),
    ).toBe(false);
    expect(outweighs({ ...work(heavy), tables: [] }, work(light))).toBe(false);
    const pulled = work(heavy);
    const laterals = [null];
    expect(outweighs({ ...pulled, problem: { ...pulled.problem, laterals } }, work(light))).toBe(
      false,
    );
  });
});
