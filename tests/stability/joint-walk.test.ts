import { jointFactor, jointSystem } from "@hoopstay/stability";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Basis,
  basicValues,
  copyOf,
  emptyBasis,
  exchange,
  isBasic,
  standsAtCap,
} from "../../packages/stability/src/all-at-once/basis.ts";
import { factorUpTo, poolOf } from "../../packages/stability/src/all-at-once/case-search.ts";
import { askAt, type Demand, demandOn } from "../../packages/stability/src/all-at-once/demand.ts";
import { beyond } from "../../packages/stability/src/all-at-once/facet.ts";
import {
  capAt,
  columnAt,
  type JointSystem,
  limitRow,
} from "../../packages/stability/src/all-at-once/joint-system.ts";
import { leastTensions } from "../../packages/stability/src/all-at-once/least-tensions.ts";
import { rebuild } from "../../packages/stability/src/all-at-once/rebuild.ts";
import { answers, walk } from "../../packages/stability/src/all-at-once/walk.ts";
import {
  eachFactor,
  holds,
  lowOf,
  measuredHouse,
  near,
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
import { dead, fourAnchors, problem } from "./fitted-problem.ts";

const grounds = fc.oneof(fc.constant(null), sloping, unknownSlope);
const anyHouse = fc.oneof(
  measuredHouse({ slope: grounds }),
  measuredHouse({ anchors: "slanted", slope: grounds }),
);
const law = [anyHouse, actions, combination, pressure, someLaterals] as const;

/** What the unknowns of a basis at a right side add to the rows, from their columns alone. */
function added(basis: Basis, right: Float64Array): number[] {
  const { system, members, standing } = basis;
  const values = new Float64Array(right.length);
  basicValues(basis, right, values);
  const sums = Array.from({ length: system.rows }, () => 0);
  const add = (column: Float64Array, times: number) => {
    for (const [row, one] of column.entries()) sums[row] = (sums[row] ?? NaN) + times * one;
  };
  for (const [row, member] of members.entries()) {
    if (member >= 0) add(columnAt(system, member), values[row] ?? NaN);
  }
  for (const [column, stands] of standing.entries()) {
    if (stands === standsAtCap) add(columnAt(system, column), capAt(system, column));
  }
  return sums;
}

function expectConsistent(basis: Basis): void {
  const { system, members, caps, standing } = basis;
  const basic = [...standing.keys()].filter((column) => standing[column] === isBasic);
  expect([...members].filter((member) => member >= 0).sort((a, b) => a - b)).toEqual(basic);
  for (const [row, member] of members.entries()) {
    if (member >= 0) expect(caps[row]).toBe(capAt(system, member));
  }
}

const largest = (of: Iterable<number>): number => Math.max(...[...of].map(Math.abs));
const apart = (one: ArrayLike<number>, other: ArrayLike<number>): number[] =>
  Array.from(one, (value, place) => value - (other[place] ?? NaN));

describe(`walking from basis to basis (seed ${seed})`, () => {
  test("the factor that it finds is the solver's, whatever was asked of the pool before", () => {
    let [asked, lost] = [0, 0];
    holds(
      fc.property(...law, between(0, 1), (house, table, by, q, laterals, share) => {
        const pools = new Map<JointSystem, ReturnType<typeof poolOf>>();
        for (const { system, actions: acting, factor } of eachFactor(
          lowOf(house, by, q, laterals),
          table,
        )) {
          const pool = pools.get(system) ?? poolOf(system);
          pools.set(system, pool);
          const demand = demandOn(system, acting);
          const most = 1e4 * demand.unit;
          const found = factorUpTo(pool, demand, most);
          if (factor === 0) {
            expect(found === null || found <= 1e-9 * demand.unit).toBe(true);
            continue;
          }
          asked += 1;
          if (found === null) lost += 1;
          else expect(near(found / demand.unit, Math.min(factor, most) / demand.unit)).toBe(true);
          if (factor === Number.POSITIVE_INFINITY || found === null) continue;
          const less = share * factor;
          expect(factorUpTo(pool, demand, less)).toBe(less);
          expect(pool.bases.length).toBeLessThanOrEqual(12);
          const [first, { length }] = [pool.bases[0], pool.bases];
          expect(factorUpTo(pool, demand, less)).toBe(less);
          expect(pool.bases).toHaveLength(length);
          if (pool.standsLevel && less < demand.contactEnd) expect(pool.bases[0]).toBe(first);
        }
      }),
    );
    expect(lost).toBeLessThanOrEqual(1 + asked / 100);
  });

  test("on level ground it need not be asked whether the house stands, nor where contact ends", () => {
    const level = measuredHouse({ anchors: "slanted" });
    let [asked, told] = [0, 0];
    holds(
      fc.property(level, actions, combination, pressure, (house, table, by, q) => {
        for (const { system, actions: acting } of eachFactor(lowOf(house, by, q), table)) {
          const demand = demandOn(system, acting);
          const most = 1e4 * demand.unit;
          const pool = poolOf(system);
          asked += 1;
          expect(pool.standsLevel).toBe(true);
          const found = factorUpTo(pool, demand, most);
          const again = factorUpTo({ ...poolOf(system), standsLevel: false }, demand, most);
          if (found === null || again === null) continue;
          told += 1;
          expect(near(found / demand.unit, again / demand.unit), `${found} ${again}`).toBe(true);
        }
      }),
      60,
    );
    expect(told).toBeGreaterThan(0.9 * asked);
  });

  test("an answer adds up to what is asked, within every bound; a rebuilt one is the same", () => {
    let [held, parted] = [0, 0];
    holds(
      fc.property(...law, between(0, 1.5), (house, table, by, q, laterals, share) => {
        for (const { system, actions: acting, factor } of eachFactor(
          lowOf(house, by, q, laterals),
          table,
        )) {
          if (factor === Number.POSITIVE_INFINITY) continue;
          const demand = demandOn(system, acting);
          const right = askAt(demand, share * factor, new Float64Array(system.rows));
          const start = emptyBasis(system);
          const found = walk(start, right);
          expect(start).toEqual(emptyBasis(system));
          if (!found.held) {
            parted += 1;
            continue;
          }
          held += 1;
          const basis = found.held;
          expectConsistent(basis);
          expect(answers(basis, right)).toBe(true);
          expect(largest(apart(added(basis, right), right))).toBeLessThan(1e-9);
          const same = copyOf(basis);
          same.inverse.fill(Number.NaN);
          same.atCaps.fill(Number.NaN);
          rebuild(same);
          const scale = largest(basis.inverse);
          expect(largest(apart(same.inverse, basis.inverse))).toBeLessThan(1e-9 * scale);
          expect(largest(apart(same.atCaps, basis.atCaps))).toBeLessThan(1e-9);
        }
      }),
      60,
    );
    expect(Math.min(held, parted)).toBeGreaterThan(10);
  });
});

const lifts = (uplift: number) => ({
  wind: Float64Array.from([0, 0, uplift, 0, 0, 0]),
  slope: new Float64Array(6),
});
const held = (of: Parameters<typeof problem>[0] = {}) =>
  jointSystem(problem(of), [
    { x: 3, y: 6 },
    { x: 3, y: -6 },
    { x: -3, y: 6 },
    { x: -3, y: -6 },
  ]);

test("what leaves at its cap goes on counting, until it comes back", () => {
  const system = held({ anchors: fourAnchors(700) });
  const basis = emptyBasis(system);
  const tether = 0;
  const [corner] = system.fans;
  const countsAtCaps = (times: number) => {
    const all = columnAt(system, tether).map((one) => times * one);
    expect(largest(apart(basis.atCaps, all))).toBeLessThan(1e-15);
  };
  exchange(basis, 2, tether, false);
  countsAtCaps(0);
  exchange(basis, 2, corner?.first ?? NaN, true);
  countsAtCaps(700 / dead);
  exchange(basis, 2, tether, false);
  countsAtCaps(0);
});

describe("a pool of bases", () => {
  test("keeps twelve, the latest first", () => {
    const system = held();
    for (const before of [10, 11, 12]) {
      const pool = poolOf(system);
      const none = Array.from({ length: before }, () => emptyBasis(system));
      pool.bases.push(...none);
      expect(factorUpTo(pool, demandOn(system, lifts(500)), 1)).toBe(1);
      expect(pool.bases).toHaveLength(Math.min(12, before + 1));
      expect(none).not.toContain(pool.bases[0]);
      expect(pool.bases[1]).toBe(none[0]);
    }
  });

  test("one that answers is asked first from then on, and no other is made", () => {
    const system = held();
    const pool = poolOf(system);
    const demand = demandOn(system, lifts(500));
    factorUpTo(pool, demand, 1);
    const [basis] = pool.bases;
    pool.bases.unshift(emptyBasis(system));
    expect(factorUpTo(pool, demand, 1)).toBe(1);
    expect(pool.bases).toHaveLength(2);
    expect(pool.bases[0]).toBe(basis);
    expect(factorUpTo(pool, demand, 1)).toBe(1);
    expect(pool.bases[0]).toBe(basis);
  });

  test("on level ground a factor is asked for by itself, not whether the house stands", () => {
    const pool = poolOf(held({ anchors: fourAnchors(700) }));
    // Tethers have to pull: what answers it is not what answers a calm.
    expect(factorUpTo(pool, demandOn(pool.system, lifts(1000)), 7)).toBe(7);
    expect(pool.bases).toHaveLength(1);
  });

  test("a walk that is lost, or a factor of nought that is missed, is given up at once", () => {
    const asks = (demand: Demand, most: number): number => {
      let asked = 0;
      const counting = {
        ...demand,
        get perUnit(): Float64Array {
          asked += 1;
          return demand.perUnit;
        },
      };
      const pool = { ...poolOf(held({ heavy: { x: 3.5 } })), standsLevel: true };
      expect(factorUpTo(pool, counting, most)).toBeNull();
      return asked;
    };
    const demand = demandOn(held({ heavy: { x: 3.5 } }), lifts(500));
    expect(asks({ ...demand, right: demand.right.map(() => NaN) }, 1)).toBe(1);
    // Once for the right side, once for the facet it lies beyond.
    expect(asks(demand, 0)).toBe(2);
  });

  test("a house stands on level ground with its weight over its base, its edge included", () => {
    const stands = (x: number, y: number) => poolOf(held({ heavy: { x, y } })).standsLevel;
    for (const [x, y] of [
      [0, 0],
      [3, 0],
      [-3, 0],
      [0, 6],
      [0, -6],
    ] as const) {
      expect(stands(x, y), `${x} ${y}`).toBe(true);
    }
    for (const [x, y] of [
      [3.01, 0],
      [-3.01, 0],
      [0, 6.01],
      [0, -6.01],
      [4, 7],
    ] as const) {
      expect(stands(x, y), `${x} ${y}`).toBe(false);
    }
    const slope = { angle: 0.01, downhill: null };
    expect(poolOf(held({ slope })).standsLevel).toBe(false);
  });

  test("a weight beside its base without anchors: nought, as the solver says", () => {
    const system = held({ heavy: { x: 3.5 } });
    expect(factorUpTo(poolOf(system), demandOn(system, lifts(500)), 1)).toBe(0);
    expect(jointFactor(system, lifts(500))).toBe(0);
    const anchored = held({ heavy: { x: 3.5 }, anchors: fourAnchors(9000) });
    const found = factorUpTo(poolOf(anchored), demandOn(anchored, lifts(500)), 1e4);
    // Turning about the right rail: both left anchors six metres from it, the weight half a metre beyond.
    expect(found).toBeCloseTo((2 * 9000 * 6 - 0.5 * dead) / (500 * 3), 6);
  });
});

describe("what a case asks", () => {
  const system = jointSystem(problem({ anchors: fourAnchors(700) }), [
    { x: 3, y: 6 },
    { x: 3, y: -6 },
    { x: -3, y: 6 },
    { x: -3, y: -6 },
  ]);
  const wind = Float64Array.from([100, -200, 1500, 9000, -4000, 300]);
  const slope = Float64Array.from([10, 20, 0, 30, -40, 50]);
  const demand = demandOn(system, { wind, slope });

  test("one unit of wind is as large as what holds the house, in its largest part", () => {
    expect(system.force).toBe(dead);
    expect(system.length).toBe(3);
    expect(largest(demand.perUnit)).toBeCloseTo(1, 12);
    expect(demand.unit).toBeCloseTo(dead / (9000 / 3), 12);
    const calm = demandOn(system, { wind: new Float64Array(6), slope });
    expect(calm.unit).toBe(1);
  });

  test("the right side against wind and slope; friction until contact ends, then none", () => {
    expect(demand.contactEnd).toBeCloseTo(dead / 1500, 12);
    const asked = (factor: number) => askAt(demand, factor, new Float64Array(system.rows));
    const weights = [0, 0, dead, 0, 0, 0];
    for (const [part, one] of weights.entries()) {
      const scale = part < 3 ? dead : 3 * dead;
      const expected = (one - (slope[part] ?? NaN) - 2 * (wind[part] ?? NaN)) / scale;
      expect(asked(2)[part], `part ${part}`).toBeCloseTo(expected, 12);
    }
    expect(asked(2)[limitRow]).toBeCloseTo((dead - 2 * 1500) / dead, 12);
    expect(asked(demand.contactEnd)[limitRow]).toBe(0);
    expect(asked(2 * demand.contactEnd)[limitRow]).toBe(0);
    const pressing = demandOn(system, { wind: Float64Array.from([9, 0, -1, 0, 0, 0]), slope });
    expect(pressing.contactEnd).toBe(Number.POSITIVE_INFINITY);
    const level = demandOn(system, { wind: Float64Array.from([9, 0, 0, 0, 0, 0]), slope });
    expect(level.contactEnd).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("the least tensions", () => {
  const corners = [
    { x: 3, y: 6 },
    { x: 3, y: -6 },
    { x: -3, y: 6 },
    { x: -3, y: -6 },
  ];
  const acts = (...sums: number[]) => ({
    wind: Float64Array.from(sums),
    slope: new Float64Array(6),
  });
  const down = [0, 0, -1] as const;

  test("are found in units of what acts, moments over the distance of the rails", () => {
    const system = jointSystem(problem({ anchors: fourAnchors(1e6) }), corners);
    const force = (...sums: number[]) => leastTensions(system, acts(...sums), 20)?.system.force;
    expect(force(0, 0, 1000, 0, 0, 0)).toBeCloseTo(20 * 1000, 6);
    expect(force(0, 0, 10, 0, 9000, 0)).toBeCloseTo((20 * 9000) / 3, 6);
    expect(force(0, 0, 10, 9000, 0, 0)).toBeCloseTo((20 * 9000) / 3, 6);
    expect(force(0, 0, 10, 0, 0, 0)).toBe(dead);
  });

  test("are asked of the anchor with the longest lever, whichever comes first", () => {
    // Turning about the right rail: 10 times 4000 N m, less what the weight holds, six metres off.
    const wind = acts(0, 0, 0, 0, 4000, 0);
    const needed = (10 * 4000 - 3 * dead) / 6;
    const far = { x: -3, y: 0, pull: 1e5, toward: down };
    const near = { x: 0, y: 0, pull: 1e5, toward: down };
    for (const anchors of [
      [far, near],
      [near, far],
    ]) {
      const system = jointSystem(problem({ anchors }), corners);
      const found = leastTensions(system, wind, 10);
      const tension = (one: typeof far) =>
        (found?.system.force ?? NaN) * (found?.values[anchors.indexOf(one)] ?? NaN);
      expect(tension(far)).toBeCloseTo(needed, 3);
      expect(tension(near)).toBeCloseTo(0, 3);
    }
  });

  test("none above the largest factor: a fault, no answer", () => {
    const system = jointSystem(problem({ anchors: fourAnchors(700) }), corners);
    const largest = (dead + 2800) / 1000;
    const at = (factor: number) => () => leastTensions(system, acts(0, 0, 1000, 0, 0, 0), factor);
    expect(at(largest)).not.toThrow();
    expect(at(1.001 * largest)).toThrow(/no equilibrium at 8.8088/);
  });

  test("no number where the wind is none: what the solver said of it", () => {
    const system = jointSystem(problem({ anchors: fourAnchors(700) }), corners);
    const wind = acts(NaN, NaN, NaN, NaN, NaN, NaN);
    expect(() => leastTensions(system, wind, 1)).toThrow(/solver-(gave-up|unbalanced)/);
  });

  test("use all friction before any tether pulls", () => {
    const toward = [-0.8, 0, -0.6] as const;
    const anchors = [-5, 5].map((y) => ({ x: -3, y, pull: 1e5, toward }));
    const system = jointSystem(problem({ anchors }), corners);
    const found = leastTensions(system, acts(100, 0, 0, 0, 0, 0), 30);
    const sum =
      (found?.system.force ?? NaN) * ((found?.values[0] ?? NaN) + (found?.values[1] ?? NaN));
    // 3000 N less friction on the weight; what a tether presses down adds no friction.
    expect(sum).toBeCloseTo((3000 - 0.3 * dead) / 0.8, 3);
  });
});

test("a right side lies beyond a facet by more than rounding of the greatest number in it", () => {
  const lies = (size: number, by: number) =>
    beyond(
      { normal: Float64Array.from([size, -size / 2]), most: 3 * size },
      Float64Array.from([3 + by, 0]),
    );
  for (const size of [1, 50]) {
    expect(lies(size, 1.01e-7)).toBe(true);
    expect(lies(size, 0.99e-7)).toBe(false);
    expect(lies(size, -1)).toBe(false);
  }
  expect(beyond({ normal: Float64Array.from([1]), most: 0 }, Float64Array.from([1e-7]))).toBe(
    false,
  );
  expect(lies(0.01, 1.01e-5)).toBe(true);
  expect(lies(0.01, 0.99e-5)).toBe(false);
});
