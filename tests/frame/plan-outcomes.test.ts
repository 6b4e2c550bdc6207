import { type Base, BasePlan, findPeaks, noPeaks } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import {
  baseOf,
  heldPlan,
  limp,
  rails,
  rigidMember,
  stiffnessFrom,
  strut,
  thrusts,
} from "./plan-cases.ts";
import { codesOf, refusalOf } from "./plan-codes.ts";

const tie = (y: number, bending = 1e5) => ({ y, axial: 1e8, bending });
const full = (y: number) => ({
  y,
  stiffness: stiffnessFrom([
    [3e4, -2e4, 2e4],
    [-2e4, 5e4, -1e4],
    [2e4, -1e4, 5e4],
  ]),
});
/** As a roller at one foot leaves it: no side force, only turns. */
const rolling = (y: number) => ({
  y,
  stiffness: stiffnessFrom([
    [0, 0, 0],
    [0, 4e4, 2e4],
    [0, 2e4, 4e4],
  ]),
});
const anchor = (rail: "left" | "right", y: number) => ({ rail, y, stiffness: 2e5 });

describe("which bases are held", () => {
  const cases: readonly [string, Partial<Base>, readonly string[]][] = [
    ["hoops alone, feet clamped to the rails", { hoops: [full(1), full(9)] }, []],
    ["one such hoop: the rails fold about it", { hoops: [full(6)] }, ["spread-turn"]],
    [
      "pinned hoops without cross members",
      { hoops: [strut(1, 1e4), strut(9, 1e4)] },
      ["twist-left", "twist-right"],
    ],
    [
      "pinned hoops on ties with hinged ends",
      { hoops: [strut(1, 1e4)], crossMembers: [tie(0, 0), tie(12, 0)] },
      ["twist-left", "twist-right"],
    ],
    [
      "hoops on a roller, no cross members",
      { hoops: [rolling(2), rolling(7)] },
      ["spread", "spread-turn"],
    ],
    ["limp hoops on two cross members", { hoops: [limp(3)], crossMembers: [tie(0), tie(12)] }, []],
    [
      "limp hoops on one cross member: nothing keeps the rails parallel",
      { hoops: [limp(3)], crossMembers: [tie(6)] },
      ["spread-turn"],
    ],
    ["nothing at all", {}, ["spread", "spread-turn", "twist-left", "twist-right"]],
    [
      "no side hold but springs that are not there",
      { crossMembers: [tie(0), tie(12)], sideHold: [] },
      ["sway", "turn"],
    ],
    [
      "one side spring: the base turns about it",
      { crossMembers: [tie(0), tie(12)], sideHold: [anchor("left", 6)] },
      ["turn"],
    ],
    [
      "two side springs across from each other",
      { crossMembers: [tie(0), tie(12)], sideHold: [anchor("left", 6), anchor("right", 6)] },
      ["turn"],
    ],
    [
      "two side springs apart",
      { crossMembers: [tie(0), tie(12)], sideHold: [anchor("left", 1), anchor("right", 11)] },
      [],
    ],
    [
      "four side springs keep even untied rails from spreading",
      {
        hoops: [rolling(2)],
        sideHold: [anchor("left", 1), anchor("left", 11), anchor("right", 1), anchor("right", 11)],
      },
      [],
    ],
  ];
  test.each(cases)("%s", (_, given, loose) => {
    const plan = new BasePlan(baseOf(given));
    expect(plan.loose).toEqual(loose);
    const response = plan.response();
    const load = plan.base.hoops.flatMap(() => [100, 20, -100, -20]);
    const outcome = plan.respond(load, response);
    expect(outcome).toBe(loose.length === 0 ? "held" : "not-held");
    expect(response.values.every(loose.length === 0 ? Number.isFinite : Number.isNaN)).toBe(true);
    const peaks = noPeaks();
    findPeaks(plan, response, "left", peaks);
    expect(Object.values(peaks).every(loose.length === 0 ? Number.isFinite : Number.isNaN)).toBe(
      true,
    );
  });

  test("a very soft hoop still holds, however stiff the rails are", () => {
    const soft = (y: number) => strut(y, 1e-2);
    const base = baseOf({
      left: { bending: 1e9, twist: 1e9 },
      hoops: [soft(0), soft(12)],
      crossMembers: [{ y: 3, axial: 0, bending: 1 }],
    });
    const plan = new BasePlan(base);
    const response = plan.response();
    expect(plan.respond(thrusts([1, 1]), response)).toBe("held");
    expect([...response.footDisplacement.subarray(0, 1)]).toEqual([expect.closeTo(-50, 6)]);
  });
});

describe("stations close together", () => {
  test.each([1e-3, 1e-4, 1e-6, 1e-9])(
    "a cross member %d m beside a hoop acts as one at it",
    (gap) => {
      const at = (y: number) => {
        const base = baseOf({
          hoops: [full(2), full(6), full(10)],
          crossMembers: [tie(0), tie(y), tie(12)],
        });
        const plan = new BasePlan(base);
        const response = plan.response();
        expect(plan.respond([800, 90, -700, 40, 900, 0, -900, 0, 100, 5, 300, 5], response)).toBe(
          "held",
        );
        return [...response.footForce];
      };
      const slack = 1e4 * gap + 1e-6;
      at(6 + gap).forEach((force, i) => {
        expect(Math.abs(force - (at(6)[i] as number))).toBeLessThan(slack);
      });
    },
  );
});

describe("results are checked, taken more sharply where that helps, and else kept back", () => {
  test("feet a tenth of a millimetre apart between ties that hardly give: P a b / L all the same", () => {
    const [length, P, a] = [10, 1000, 4];
    const feet = [2, 4, 6, 8].flatMap((y) => [limp(y), limp(y + 1e-4)]);
    const soft = { bending: 2000, twist: 1e5 };
    const base = baseOf({
      length,
      left: soft,
      right: soft,
      hoops: feet,
      crossMembers: [0, length].map((y) => ({ y, axial: 1e14, bending: 1e5 })),
      sideHold: [anchor("left", 0), anchor("left", length)],
    });
    const { response } = heldPlan(base, thrusts(feet.map(({ y }) => (y === a ? P : 0))));
    expectNear([Math.max(...response.left.moment)], [(P * a * (length - a)) / length], 1e-9);
    expectNear([...response.crossAxial], [(P * (length - a)) / length, (P * a) / length], 1e-9);
  });

  test("where ways are too great to tell the stretch of a tie there is no result", () => {
    // Sprung by 0.001 N/m the base goes 500 km, counted in steps of 60 picometres: one step
    // more is 100 N more in a tie of 1e13 N and 6 m.
    const spring = (y: number) => ({ rail: "left" as const, y, stiffness: 1e-3 });
    const base = baseOf({
      hoops: [limp(4)],
      crossMembers: [0, 12].map((y) => ({ y, axial: 1e13, bending: 1e5 })),
      sideHold: [spring(0), spring(12)],
    });
    const plan = new BasePlan(base);
    const response = plan.response();
    expect(plan.respond([0, 0, -1000, 0], response)).toBe("unsettled");
    expect(response.values.every(Number.isNaN)).toBe(true);
  });
});

describe("refusals", () => {
  const nan = Number.NaN;
  const cases: readonly [string, Partial<Base>, readonly string[]][] = [
    ["sizes", { length: 0, span: -2 }, ["not-positive length", "not-positive span"]],
    [
      "a rail without stiffness",
      { left: { bending: 0, twist: nan } },
      ["not-positive left.bending", "not-a-number left.twist"],
    ],
    [
      "places beside the rails",
      { hoops: [limp(13)], crossMembers: [tie(-1)], sideHold: [anchor("left", nan)] },
      ["out-of-range hoops.0.y", "out-of-range crossMembers.0.y", "not-a-number sideHold.0.y"],
    ],
    [
      "negative stiffness",
      {
        crossMembers: [{ y: 0, axial: -1, bending: -1 }],
        sideHold: [{ ...anchor("left", 0), stiffness: 0 }],
      },
      [
        "out-of-range crossMembers.0.axial",
        "out-of-range crossMembers.0.bending",
        "not-positive sideHold.0.stiffness",
      ],
    ],
    [
      "too few numbers of a hoop",
      { hoops: [{ y: 1, stiffness: [1, 2] }] },
      ["not-a-number hoops.0.stiffness"],
    ],
    [
      "a number of a hoop that is none",
      { hoops: [{ y: 1, stiffness: Array.from({ length: 16 }, (_, i) => (i === 5 ? nan : 0)) }] },
      ["not-a-number hoops.0.stiffness"],
    ],
    [
      "a hoop that resists sway",
      { hoops: [{ y: 1, stiffness: [2, 0, -1, 0, 0, 1, 0, 0, -1, 0, 2, 0, 0, 0, 0, 1] }] },
      ["sizes-disagree hoops.0.stiffness"],
    ],
    [
      "a hoop without symmetry",
      { hoops: [{ y: 1, stiffness: [1, 0, -1, 0, 0, 9, 3, 0, -1, 0, 1, 0, 0, 0, 0, 9] }] },
      ["sizes-disagree hoops.0.stiffness"],
    ],
  ];
  test.each(cases)("%s", (_, given, codes) => {
    expect(codesOf(() => new BasePlan(baseOf(given)))).toEqual(codes);
  });

  test("loads that are no numbers, or too few", () => {
    const plan = new BasePlan(
      baseOf({ left: rails, hoops: [limp(3)], crossMembers: [0, 12].map(rigidMember) }),
    );
    const response = plan.response();
    expect(codesOf(() => plan.respond([1, nan, 0, 0], response))).toEqual([
      "not-a-number fixedEnd",
    ]);
    expect(codesOf(() => plan.respond([1, 2], response))).toEqual(["not-a-number fixedEnd"]);
  });

  test("loads whose sizes have no finite sum", () => {
    const plan = new BasePlan(baseOf({ hoops: [limp(3)], crossMembers: [0, 12].map(rigidMember) }));
    const response = plan.response();
    for (const load of [
      [-1e308, 1e308, 1e308, -1e308],
      [0, Number.POSITIVE_INFINITY, 0, 0],
    ]) {
      expect(refusalOf(() => plan.respond(load, response)).complaints[0]?.given).toBe("Infinity");
    }
  });

  test("a hoop that misses symmetry by more than a millionth of its greatest stiffness", () => {
    const base = (miss: number) => {
      // Turns of both feet, coupled from one side only.
      const stiffness = Array.from({ length: 16 }, () => 0);
      [stiffness[5], stiffness[15], stiffness[7]] = [1e6, 1e6, miss];
      return baseOf({ hoops: [{ y: 1, stiffness }] });
    };
    expect(() => new BasePlan(base(1))).not.toThrow();
    expect(codesOf(() => new BasePlan(base(1.001)))).toEqual(["sizes-disagree hoops.0.stiffness"]);
  });
});
