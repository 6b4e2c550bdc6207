import {
  type ActionTable,
  balanceOf,
  type CaseActions,
  type Certificate,
  type Combination,
  checkTerms,
  cornerSets,
  type JointProblem,
  type JointSystem,
  jointFactor,
  jointProblems,
  jointSystem,
  type LateralHold,
  polygonCorners,
  polygonSides,
  separationAt,
  slopesOf,
  windOf,
} from "@hoopstay/stability";
import fc from "fast-check";
import { expect } from "vitest";
import {
  between,
  type HeldHouse,
  heldHouse,
  holdingsOf,
  linesOf,
  seed,
} from "./arbitrary-holding.ts";

/** A law of random houses. Shrinking is off: it ends in houses that rounding alone makes fail. */
export const holds = <Values extends [unknown, ...unknown[]]>(
  law: fc.IProperty<Values>,
  numRuns = 200,
): void => {
  fc.assert(law, { seed, numRuns, endOnFailure: true });
};

/** Sizes as a tape gives them: to a millimetre, and directions to a thousandth. */
const taped = (value: number): number => Math.round(1000 * value) / 1000;

/** Random houses whose numbers could have been measured: none of them is 1e-200. */
export const measuredHouse = (of: Parameters<typeof heldHouse>[0] = {}) =>
  heldHouse(of).map((house): HeldHouse => {
    const [low, high] = house.weights.map((one) => ({ ...one, x: taped(one.x), y: taped(one.y) }));
    if (!low || !high) throw new Error("two weights");
    const anchors = house.anchors.map(({ x, y, pull, toward }) => {
      const [tx, ty] = [taped(toward[0]), taped(toward[1])];
      const down = -Math.sqrt(1 - tx * tx - ty * ty);
      return { x, y: taped(y), pull, toward: [tx, ty, down] as const };
    });
    return { ...house, weights: [low, high], anchors };
  });

/** The problems of a house, low and high weight. */
export function problemsOf(
  house: HeldHouse,
  by: Combination,
  q: number,
  laterals?: readonly (LateralHold | null)[],
): JointProblem[] {
  return jointProblems(checkTerms(holdingsOf(house), linesOf(house), by, q), laterals);
}

export const lowOf = (...of: Parameters<typeof problemsOf>): JointProblem =>
  problemsOf(...of)[0] as JointProblem;

/** One case of one weight with its system. */
export interface Solved {
  readonly system: JointSystem;
  readonly actions: CaseActions;
  readonly factor: number;
}

/** Every row, slope and set of corners of a problem, each solved by itself. */
export function eachFactor(problem: JointProblem, table: ActionTable): Solved[] {
  const solved: Solved[] = [];
  for (const corners of cornerSets(problem.lines)) {
    const system = jointSystem(problem, corners);
    for (let row = 0; row < table.count; row += 1) {
      const wind = windOf(problem, table, row);
      for (const slope of slopesOf(problem, wind[0] ?? NaN, wind[1] ?? NaN)) {
        const actions = { wind, slope };
        solved.push({ system, actions, factor: jointFactor(system, actions) });
      }
    }
  }
  return solved;
}

export const lowest = (problem: JointProblem, table: ActionTable): number =>
  Math.min(...eachFactor(problem, table).map(({ factor }) => factor));

export const near = (a: number, b: number, within = 1e-8): boolean =>
  a === b ||
  (Number.isFinite(a - b) &&
    Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b)) + 1e-11);
export const upTo = (a: number, b: number, within = 1e-8): boolean => a <= b || near(a, b, within);

/** Side pull of some anchors' shafts. */
export const someLaterals = fc.array(
  fc.option(
    fc
      .record({
        Q: between(1000, 20_000),
        H: between(200, 8000),
        delta: between(0, 1),
      })
      .map(
        ({ Q, H, delta }): LateralHold => ({
          Q,
          H,
          cosDelta: Math.cos(delta),
          sinDelta: Math.sin(delta),
        }),
      ),
  ),
  { maxLength: 6 },
);

/** Checks a certificate from its own numbers: it balances and every bound holds. */
export function expectBalanced(
  certificate: Certificate,
  friction: number,
  length: number,
  laterals: readonly (LateralHold | null)[] = [],
  anchorFactor = 1,
): void {
  const { wind, weight, tethers, pushes, frictionLimit } = certificate;
  const forces = [
    ...wind.slice(0, 3),
    weight.down,
    ...tethers.map(({ tension }) => tension),
    ...pushes.map(({ push }) => push),
    ...wind.slice(3).map((moment) => moment / length),
  ];
  const largest = Math.max(...forces.map(Math.abs), 1e-6);
  for (const [axis, rest] of balanceOf(certificate).entries()) {
    const scale = axis < 3 ? largest : largest * length;
    expect(Math.abs(rest) / scale, `sum ${axis}`).toBeLessThan(1e-9);
  }
  const small = 1e-9 * largest;
  for (const [place, { tension, most, sideX, sideY }] of tethers.entries()) {
    expect(tension).toBeGreaterThanOrEqual(-small);
    expect(tension).toBeLessThanOrEqual(most + small);
    const lateral = laterals[place];
    const side = Math.hypot(sideX, sideY);
    if (!lateral) expect(side).toBe(0);
    else {
      const { Q, H, cosDelta, sinDelta } = lateral;
      const used = (tension * cosDelta) / Q + (tension * sinDelta + side) / H;
      expect(used / anchorFactor).toBeLessThanOrEqual(1 + small / (anchorFactor * Math.min(Q, H)));
    }
  }
  let [x, y] = [0, 0];
  for (const { push, frictionX, frictionY } of pushes) {
    expect(push).toBeGreaterThanOrEqual(-small);
    expect(Math.hypot(frictionX, frictionY)).toBeLessThanOrEqual(friction * push + small);
    x += frictionX;
    y += frictionY;
  }
  expect(Math.hypot(x, y)).toBeLessThanOrEqual(frictionLimit + small);
}

/**
 * Checks, from forces and places alone, that nothing holds the house just beyond its factor, and
 * tells how far beyond: a weighing of the
 * six balances, the two sums of friction, its limit and the side pulls, under which no push, no
 * friction and no side pull counts anything, all tethers at their caps count less than what is asked.
 */
export function expectBeyond({ system, actions, factor }: Solved): number {
  // Where many unknowns stand at nought, rounding may lose the proof next to the factor.
  const margin = [1e-7, 1e-5, 1e-3, 2e-3].find((one) =>
    separationAt(system, actions, factor * (1 + one)),
  );
  const found = margin && separationAt(system, actions, factor * (1 + margin));
  if (!found) throw new Error(`no proof that ${factor} is the largest`);
  const { normal, asked } = found;
  const { corners, force, length, problem, shafts } = system;
  const { anchors, friction } = problem.terms.holding;
  const weigh = (values: readonly number[], x: number, y: number): number => {
    const [fx, fy, fz] = values as [number, number, number];
    const parts = [fx, fy, fz, y * fz, -x * fz, x * fy - y * fx];
    return parts.reduce((sum, part, row) => sum + part * (normal[row] as number), 0);
  };
  const [sumX, sumY, limit] = [normal[6], normal[7], normal[8]] as [number, number, number];
  const none = 1e-8 * Math.max(...normal.map(Math.abs));
  expect(limit).toBeLessThanOrEqual(none);
  for (let side = 0; side < polygonSides; side += 1) {
    const dx = polygonCorners[2 * side] as number;
    const dy = polygonCorners[2 * side + 1] as number;
    expect(limit - sumX * dx - sumY * dy).toBeLessThanOrEqual(none);
    for (const { x, y } of corners) {
      const push = weigh([friction * dx, friction * dy, 1], x / length, y / length);
      expect(push + sumX * dx + sumY * dy).toBeLessThanOrEqual(none);
    }
    for (const { anchor, row } of shafts) {
      const { x, y } = anchors[anchor] as (typeof anchors)[number];
      const pull = weigh([dx, dy, 0], x / length, y / length) + (normal[row] as number);
      expect(pull).toBeLessThanOrEqual(none);
      expect(normal[row]).toBeLessThanOrEqual(none);
    }
  }
  let most = 0;
  for (const [place, { x, y, pull, toward }] of anchors.entries()) {
    const shaft = shafts.find(({ anchor }) => anchor === place);
    const lateral = problem.laterals?.[place];
    const share =
      shaft && lateral ? (lateral.H * lateral.cosDelta) / lateral.Q + lateral.sinDelta : 0;
    const counts =
      weigh(toward, x / length, y / length) + share * (shaft ? (normal[shaft.row] as number) : 0);
    most += (Math.max(0, counts) * problem.terms.combination.anchor * pull) / force;
  }
  const needed = asked.reduce((sum, part, row) => sum + part * (normal[row] as number), 0);
  expect(needed).toBeGreaterThan(most);
  return margin;
}
