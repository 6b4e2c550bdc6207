import {
  balanceSums,
  certificateOf,
  cornerSets,
  type JointProblem,
  jointFactor,
  jointSystem,
  polygonSides,
  SolverFault,
  slopesOf,
  windOf,
  worstJoint,
} from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { eachFactor, expectBalanced } from "./all-at-once-house.ts";
import { dead, down, fourAnchors, problem, weight } from "./fitted-problem.ts";

/** Factor of one case given as forces and moments in N and N m. */
const factorOf = (of: JointProblem, ...sums: number[]): number =>
  eachFactor(of, { count: 1, components: Float64Array.from([...sums, 0]) })[0]?.factor ?? NaN;

describe("all at once, closed forms", () => {
  test("pure uplift with vertical anchors: (D + sum T) / V", () => {
    expect(factorOf(problem({}), 0, 0, 5000, 0, 0, 0)).toBeCloseTo(dead / 5000, 9);
    const held = problem({ anchors: fourAnchors(700) });
    expect(factorOf(held, 0, 0, 5000, 0, 0, 0)).toBeCloseTo((dead + 2800) / 5000, 9);
  });

  test("pure overturning about a rail: weight and the windward anchors", () => {
    const held = problem({ anchors: fourAnchors(700) });
    const expected = (dead * 3 + 2 * 700 * 6) / 9000;
    expect(factorOf(held, 0, 0, 0, 0, 9000, 0)).toBeCloseTo(expected, 9);
    expect(factorOf(held, 0, 0, 0, 0, -9000, 0)).toBeCloseTo(expected, 9);
    expect(factorOf(problem({}), 0, 0, 0, 9000, 0, 0)).toBeCloseTo((dead * 6) / 9000, 9);
  });

  test("pure sliding: friction on the contact left, whole along the polygon's corners", () => {
    const slides = (angle: number, uplift: number) =>
      factorOf(problem({}), 2000 * Math.cos(angle), 2000 * Math.sin(angle), uplift, 0, 0, 0);
    expect(slides(0, 0)).toBeCloseTo((0.3 * dead) / 2000, 9);
    expect(slides(Math.PI / 2, 1000)).toBeCloseTo((0.3 * dead) / 2300, 9);
    const between = Math.PI / polygonSides;
    expect(slides(between, 0)).toBeCloseTo((0.3 * dead * Math.cos(between)) / 2000, 9);
  });

  test("six vertical tethers do not stop a house from sliding", () => {
    const held = problem({ anchors: [...fourAnchors(9e9), ...fourAnchors(9e9).slice(2)] });
    expect(factorOf(held, 2000, 0, 1000, 0, 0, 0)).toBeCloseTo((0.3 * dead) / 2300, 6);
  });

  test("tethers aslant hold alone where there is no friction", () => {
    const toward = [-Math.SQRT1_2, 0, -Math.SQRT1_2] as const;
    const anchors = [-5, 5].map((y) => ({ x: -3, y, pull: 4000, toward }));
    const pull = 8000 * Math.SQRT1_2;
    const held = problem({ anchors, friction: 0 });
    expect(factorOf(held, 1000, 0, 0, 0, 0, 0)).toBeCloseTo(pull / 1000, 9);
  });

  test("no friction, side pull on four shafts, with and without uplift", () => {
    const lateral = { Q: 2000, H: 500, cosDelta: 1, sinDelta: 0 };
    const held = problem({
      anchors: fourAnchors(2000),
      friction: 0,
      laterals: [lateral, lateral, lateral, lateral],
    });
    expect(factorOf(held, 1000, 0, 0, 0, 0, 0)).toBeCloseTo(2, 9);
    const expected = (1 + dead / 8000) / (1000 / 2000 + 9000 / 8000);
    expect(expected).toBeGreaterThan(dead / 9000);
    expect(factorOf(held, 1000, 0, 9000, 0, 0, 0)).toBeCloseTo(expected, 9);
  });

  test("a tether's own side part takes from the side pull", () => {
    const angle = 0.5;
    const lateral = { Q: 2000, H: 500, cosDelta: Math.cos(angle), sinDelta: Math.sin(angle) };
    const held = problem({
      anchors: fourAnchors(1e6, down),
      friction: 0,
      laterals: [lateral, lateral, lateral, lateral],
    });
    const most = 4 / (Math.cos(angle) / 2000 + Math.sin(angle) / 500);
    expect(factorOf(held, 0, 0, 1000, 0, 0, 0)).toBeCloseTo((dead + most) / 1000, 9);
  });

  test("on a slope the weight pulls with the wind; what would relieve is dropped", () => {
    const angle = 0.1;
    const slope = { angle, downhill: [1, 0] as const };
    const held = problem({ slope });
    const room = 0.3 * dead * Math.cos(angle);
    const pull = weight.W * Math.sin(angle);
    expect(factorOf(held, 1000, 0, 0, 0, 0, 0)).toBeCloseTo((room - pull) / 1000, 9);
    expect(factorOf(held, -1000, 0, 0, 0, 0, 0)).toBeCloseTo(room / 1000, 9);
    expect(factorOf(problem({ slope, friction: 0.1 }), 1000, 0, 0, 0, 0, 0)).toBe(0);
    const unknown = problem({ slope: { angle, downhill: null } });
    const factors = eachFactor(unknown, {
      count: 1,
      components: Float64Array.from([1000, 0, 0, 0, 0, 0, 0]),
    });
    expect(factors).toHaveLength(9);
    expect(Math.min(...factors.map(({ factor }) => factor))).toBeCloseTo((room - pull) / 1000, 9);
  });

  test("no wind, or wind that presses down: not limited", () => {
    expect(factorOf(problem({}), 0, 0, 0, 0, 0, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(factorOf(problem({}), 0, 0, -100, 0, 0, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(factorOf(problem({}), 20, 0, -100, 0, 0, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(factorOf(problem({}), 40, 0, -100, 0, 0, 0)).toBeCloseTo((0.3 * dead) / 10, 7);
  });

  test("a twist is held by friction at the corners, up to mu N times their distance", () => {
    const twist = factorOf(problem({}), 0, 0, 0, 0, 0, 1000);
    const whole = (0.3 * dead * Math.hypot(3, 6)) / 1000;
    expect(twist).toBeLessThanOrEqual(whole);
    expect(twist).toBeGreaterThan(whole * Math.cos(Math.PI / polygonSides));
  });
});

describe("the certificate", () => {
  test("has the least tensions, balances, and prints its six sums", () => {
    const held = problem({ anchors: fourAnchors(700) });
    const components = Float64Array.from([2000, 0, 1000, 0, 3000, 0, 0]);
    const found = worstJoint([{ problem: held, tables: [{ count: 1, components }] }]);
    if (!found) throw new Error("one case");
    const certificate = certificateOf(found.system, found.actions, found.factor);
    if (!certificate) throw new Error("no certificate");
    expectBalanced(certificate, 0.3, 3);
    // Sliding limits; the weight alone keeps both rails down, so no tether is asked for anything.
    for (const { tension } of certificate.tethers) expect(tension).toBeCloseTo(0, 6);
    for (const { formula, inputs } of balanceSums(certificate)) {
      expect(formula.arguments).toHaveLength(inputs.length);
      expect(Math.abs(formula.evaluate(...inputs))).toBeLessThan(1e-9 * 18_000);
    }
  });

  test("none where nothing limits the wind, or where the house does not stand without it", () => {
    const certified = (of: JointProblem, fz: number) => {
      const [found] = eachFactor(of, {
        count: 1,
        components: Float64Array.from([0, 0, fz, 0, 0, 0, 0]),
      });
      if (!found) throw new Error("one case");
      return certificateOf(found.system, found.actions, found.factor);
    };
    expect(certified(problem({}), -100)).toBeNull();
    expect(certified(problem({ heavy: { x: 3.5 } }), 100)).toBeNull();
    const most = certified(problem({ anchors: fourAnchors(700) }), 1000);
    expect(most?.factor).toBeCloseTo((dead + 2800) / 1000, 5);
    expect(most?.tethers.map(({ most: cap }) => cap)).toEqual([700, 700, 700, 700]);
    for (const { tension } of most?.tethers ?? []) expect(tension / 700).toBeCloseTo(1, 5);
    expect(most?.frictionLimit).toBe(0);
  });

  test("no more tension than the wind asks for: what the weight lacks", () => {
    const held = problem({ anchors: fourAnchors(7000) });
    const [found] = eachFactor(held, {
      count: 1,
      components: Float64Array.from([0, 0, 1000, 0, 0, 0, 0]),
    });
    if (!found) throw new Error("one case");
    const sum = (factor: number) =>
      certificateOf(found.system, found.actions, factor)?.tethers.reduce(
        (all, { tension }) => all + tension,
        0,
      );
    expect(sum(5)).toBeCloseTo(0, 6);
    expect(sum(10)).toBeCloseTo(10 * 1000 - dead, 3);
    expect(sum(20)).toBeCloseTo(20 * 1000 - dead, 3);
  });

  test("no number where the wind is none: a fault with a code", () => {
    const held = problem({ anchors: fourAnchors(700) });
    const [corners] = cornerSets(held.lines);
    if (!corners) throw new Error("no corners");
    const system = jointSystem(held, corners);
    const wind = windOf(held, { count: 1, components: new Float64Array(7).fill(NaN) }, 0);
    const [slope] = slopesOf(held, 1, 0);
    if (!slope) throw new Error("level ground has one slope");
    expect(() => jointFactor(system, { wind, slope })).toThrow(SolverFault);
  });
});
