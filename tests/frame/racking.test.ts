import { Refusal } from "@hoopstay/core";
import {
  type Drag,
  type FrameMember,
  type FrameNode,
  type FrameSection,
  type Racked,
  type RackedBase,
  rackBase,
  solvePlanFrame,
} from "@hoopstay/frame";
import { describe, expect, test } from "vitest";

/** Ten by four metres, three cross members, a brace in one corner and one to the other rail. */
const base: RackedBase = {
  length: 10,
  span: 4,
  left: { axial: 5e6, bending: 3e5 },
  right: { axial: 7e6, bending: 4e5 },
  crossMembers: [
    { y: 0, axial: 3e6, bending: 1e5 },
    { y: 6, axial: 2e6, bending: 2e5 },
    { y: 10, axial: 4e6, bending: 5e4 },
  ],
  braces: [
    { crossMember: 0, rail: "left", alongRail: 1, alongCross: 1, axial: 1e6 },
    { crossMember: 2, rail: "right", alongRail: -2, alongCross: 4, axial: 2e6 },
  ],
};
const drag: Drag = { pull: { left: 9000, right: 2000 }, friction: 6000, held: "left" };

function racked(of: RackedBase, by: Drag) {
  const found = rackBase(of, by);
  if (found.outcome !== "held") throw new Error(found.outcome);
  return found;
}

const wayOf = (found: ReturnType<typeof racked>, hold: Racked["hold"]): Racked => {
  const way = found.ways.find((one) => one.hold === hold);
  if (!way) throw new Error(hold);
  return way;
};

/** The same base laid out by hand: left rail, right rail, cross members, braces. */
const nodes: FrameNode[] = [
  { x: 0, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: 6 },
  { x: 0, y: 10, held: { x: true, y: true } },
  { x: 4, y: 0, held: { x: true } },
  { x: 4, y: 6 },
  { x: 4, y: 8 },
  { x: 4, y: 10 },
  { x: 1, y: 0 },
];
const [L, R, A, B, C] = [base.left, base.right, ...base.crossMembers] as const;
const member = (
  from: number,
  to: number,
  { axial, bending }: { axial: number; bending: number },
): FrameMember => ({ from, to, axial, bending });
if (!A || !B || !C) throw new Error("three cross members");
const members = [
  member(0, 1, L),
  member(1, 2, L),
  member(2, 3, L),
  member(4, 5, R),
  member(5, 6, R),
  member(6, 7, R),
  member(0, 8, A),
  member(8, 4, A),
  member(2, 5, B),
  member(3, 7, C),
  member(1, 8, { axial: 1e6, bending: 0 }),
  member(6, 3, { axial: 2e6, bending: 0 }),
];

/** Turning about the left front end by hand: friction in the middle, pull on the right rail. */
const turning = 6000 * 2 - 2000 * 4;

describe("the base laid out by hand", () => {
  const found = racked(base, drag);

  test("the held corner takes what friction leaves of the pull; the ground balances the turning", () => {
    expect(found.heldForce).toBeCloseTo(9000 + 2000 - 6000, 9);
    expect(found.turning).toBeCloseTo(turning, 9);
    expect(found.ways.map(({ hold }) => hold)).toEqual(["corners", "along"]);
    const right = racked(base, { ...drag, held: "right" });
    expect(right.turning).toBeCloseTo(turning + 4 * 5000, 9);
  });

  test.each(["corners", "along"] as const)("carries the same, held at %s", (hold) => {
    // A side force on both rails that rises from mid-length: of both, T = 2 r L^3 / 12.
    const rise = hold === "along" ? (6 * turning) / 10 ** 3 : 0;
    const along = 6000 / (2 * 10);
    // To a rail member's left is -x.
    const side = (y: number) => -rise * (y - 5);
    const lines = members.slice(0, 6).map(({ from, to }, index) => ({
      member: index,
      along,
      acrossFrom: side(nodes[from]?.y ?? NaN),
      acrossTo: side(nodes[to]?.y ?? NaN),
    }));
    const pulls = [
      { node: 0, x: 0, y: -9000, couple: 0 },
      { node: 4, x: 0, y: -2000, couple: 0 },
    ];
    const solved = solvePlanFrame(nodes, members, { nodes: pulls, members: lines });
    if (solved.outcome !== "held") throw new Error(solved.outcome);
    const reactions = [9, 10, 12].map((place) => solved.reactions[place]);
    const corner = hold === "corners" ? turning / 10 : 0;
    expect(reactions).toEqual([corner, 5000, -corner].map((one) => expect.closeTo(one, 5)));

    const way = wayOf(found, hold);
    const expectParts = (
      parts: readonly FrameSection[],
      of: readonly number[],
      read: (section: FrameSection, start: FrameNode) => number[],
    ) => {
      const expected = of.flatMap((index) =>
        (solved.sections[index] ?? []).map((section) =>
          read(section, nodes[members[index]?.from ?? NaN] as FrameNode),
        ),
      );
      expect(parts.map(({ at, axial, shear, moment }) => [at, axial, shear, moment])).toEqual(
        expected.map((one) => one.map((value) => expect.closeTo(value, 5))),
      );
    };
    const ofRail = ({ at, axial, shear, moment }: FrameSection, { y }: FrameNode) => [
      y + at,
      axial,
      -shear,
      -moment,
    ];
    const ofCross = ({ at, axial, shear, moment }: FrameSection, { x }: FrameNode) => [
      x + at,
      axial,
      shear,
      moment,
    ];
    expectParts(way.left, [0, 1, 2], ofRail);
    expectParts(way.right, [3, 4, 5], ofRail);
    const across = [[6, 7], [8], [9]];
    expect(way.crossMembers).toHaveLength(3);
    for (const [index, of] of across.entries()) {
      expectParts(way.crossMembers[index] ?? [], of, ofCross);
    }
    expect(way.braces).toEqual(
      [10, 11].map((index) => expect.closeTo(solved.sections[index]?.[0]?.axial ?? NaN, 5)),
    );
  });
});

describe("laws of a dragged base", () => {
  test("each rail: pulled at its front, rubbed along, held at its rear or by what joins it", () => {
    const { ways } = racked({ ...base, braces: [] }, drag);
    for (const { left, right, crossMembers } of ways) {
      // Shear of the cross members between the rails, and friction, balance each rail along.
      const shear = crossMembers.reduce((sum, parts) => sum + (parts[0]?.shear ?? NaN), 0);
      expect(left[0]?.axial).toBeCloseTo(9000 + (crossMembers[0]?.[0]?.shear ?? NaN), 5);
      expect(-9000 + 3000 + 5000 - shear).toBeCloseTo(0, 5);
      expect(-2000 + 3000 + shear).toBeCloseTo(0, 5);
      expect(right.at(-1)?.at).toBe(10);
    }
  });

  const mirrored = (of: RackedBase): RackedBase => ({
    ...of,
    left: of.right,
    right: of.left,
    braces: of.braces.map((brace) => ({
      ...brace,
      rail: brace.rail === "left" ? "right" : "left",
    })),
  });

  test("seen from behind it is its mirror image", () => {
    for (const side of ["left", "right"] as const) {
      const one = racked(base, { ...drag, held: side });
      const { left, right } = drag.pull;
      const other = racked(mirrored(base), {
        ...drag,
        pull: { left: right, right: left },
        held: side === "left" ? "right" : "left",
      });
      expect(other.heldForce).toBeCloseTo(one.heldForce, 9);
      expect(other.turning).toBeCloseTo(-one.turning, 9);
      for (const hold of ["corners", "along"] as const) {
        const [way, image] = [wayOf(one, hold), wayOf(other, hold)];
        const axial = (parts: readonly FrameSection[]) => parts.map((part) => part.axial);
        const moments = (parts: readonly FrameSection[]) => parts.map((part) => part.moment);
        const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 4));
        expect(axial(image.left)).toEqual(near(axial(way.right)));
        expect(axial(image.right)).toEqual(near(axial(way.left)));
        expect(moments(image.left)).toEqual(near(moments(way.right).map((one) => -one)));
        expect(image.braces).toEqual(near(way.braces));
      }
    }
  });

  test("joints nearer than a millionth of the length are one", () => {
    const at = (gap: number) => {
      const braces = [
        { crossMember: 1, rail: "left", alongRail: 1, alongCross: 1, axial: 1e6 },
      ] as const;
      const crossMembers = [...base.crossMembers, { y: 7 + gap, axial: 2e6, bending: 2e5 }];
      return racked({ ...base, crossMembers, braces }, drag).ways[0]?.left.length ?? NaN;
    };
    expect(at(0)).toBe(at(0.9e-5));
    expect(at(0.05)).toBe(at(0) + 2);
  });

  test("a millionth of the length itself is near: on a rail, on a cross member", () => {
    const [small, near] = [{ ...base, length: 1, span: 1 }, 1e-6];
    const [member] = base.crossMembers;
    if (!member) throw new Error("no cross member");
    const at = (off: number) => {
      const crossMembers = [
        { ...member, y: 0 },
        { ...member, y: off },
        { ...member, y: 1 },
      ];
      const braces = [
        { crossMember: 2, rail: "right", alongRail: -0.5, alongCross: 0.5, axial: 1e6 },
        { crossMember: 0, rail: "left", alongRail: 0.5, alongCross: off || 1e-7, axial: 1e6 },
      ] as const;
      const { ways } = racked({ ...small, crossMembers, braces }, drag);
      return ways.map(({ left, crossMembers: across }) => [left.length, across.flat().length]);
    };
    expect(at(near)).toEqual(at(0));
  });

  test("a base of two rails without anything between them is a mechanism", () => {
    expect(rackBase({ ...base, crossMembers: [], braces: [] }, drag).outcome).toBe("not-held");
  });
});

describe("a base or a pull that cannot be computed", () => {
  const told = (more: Partial<RackedBase>, by: Partial<Drag> = {}) => {
    try {
      rackBase({ ...base, ...more }, { ...drag, ...by });
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return error.complaints.map(({ code, key, given }) => `${code} ${key} ${given}`);
    }
    return [];
  };
  const brace = { crossMember: 0, rail: "left", alongRail: 1, alongCross: 1, axial: 1e6 } as const;

  test("sizes and stiffnesses of nothing", () => {
    const braces: RackedBase["braces"] = [];
    expect(
      told({
        length: 0,
        span: -4,
        left: { axial: 0, bending: 0 },
        right: { axial: Number.NaN, bending: 1 },
        crossMembers: [{ y: 0, axial: -1, bending: 0 }],
        braces,
      }),
    ).toEqual([
      "not-positive length 0",
      "not-positive span -4",
      "not-positive 0.axial -1",
      "not-positive 0.bending 0",
      "not-positive left.axial 0",
      "not-positive left.bending 0",
      "not-a-number right.axial NaN",
    ]);
  });

  test("cross members beside the rails, braces to nothing", () => {
    const crossMembers = [{ y: 11, axial: 1, bending: 1 }];
    expect(told({ crossMembers, braces: [] })).toEqual(["out-of-range crossMembers.0.y 11"]);
    expect(
      told({
        braces: [
          { ...brace, crossMember: 3 },
          { ...brace, alongRail: -1 },
          { ...brace, alongRail: 0 },
          { ...brace, alongCross: 0 },
          { ...brace, alongCross: 4.1 },
          { ...brace, axial: 0 },
          brace,
          { ...brace, alongCross: 4 },
        ],
      }),
    ).toEqual([
      "out-of-range braces.0.crossMember 3",
      "out-of-range braces.1.alongRail -1",
      "not-positive braces.2.alongRail 0",
      "out-of-range braces.3.alongCross 0",
      "out-of-range braces.4.alongCross 4.1",
      "not-positive braces.5.axial 0",
    ]);
  });

  test("which cross members there are is told", () => {
    try {
      rackBase({ ...base, braces: [{ ...brace, crossMember: 3 }] }, drag);
      expect.unreachable();
    } catch (error) {
      expect((error as Refusal).complaints[0]?.expected).toBe("a cross member from 0 to 2");
    }
  });

  test("pulls below zero, and more friction than pull", () => {
    expect(told({}, { pull: { left: -1, right: -2 }, friction: 0 })).toEqual([
      "out-of-range pull.left -1",
      "out-of-range pull.right -2",
      "sizes-disagree friction 0",
    ]);
    expect(told({}, { friction: -1 })).toEqual(["out-of-range friction -1"]);
    expect(told({}, { friction: 11_000.1 })).toEqual(["sizes-disagree friction 11000.1"]);
    expect(told({}, { friction: 11_000 })).toEqual([]);
    expect(told({}, { pull: { left: 0, right: 0 }, friction: 0 })).toEqual([]);
  });
});
