import { Refusal } from "@hoopstay/core";
import {
  type FeetSupport,
  type Hoop,
  type HoopBar,
  HoopFrame,
  type HoopLoad,
  type HoopPiece,
  HoopStations,
  hoopForcesAt,
  hoopLine,
  hoopShapeAt,
  pinnedFeet,
  pointOnLine,
  responsesOnFeet,
  tangentOnLine,
} from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { bareHoop, downAt, normalOn, portal } from "./hoop-simple.ts";

const told = (work: () => unknown): string[] => {
  try {
    work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return error.complaints.map(({ code, key, given }) => `${code} ${key} ${given}`);
  }
  return [];
};

const tube = { A: 5e-4, I: 2e-7, E: 2e11 };
/** Fourteen metres of it: columns of four, a beam of six. */
const line = portal(4, 6);
const plain = bareHoop(line, tube);
const bar = (from: HoopBar["from"], to: HoopBar["to"]): HoopBar => ({
  from,
  to,
  fromEnd: "pinned",
  toEnd: "pinned",
  section: tube,
  weight: 12,
});
const onHoop = (more: Partial<Hoop>, ...loads: HoopLoad[]) =>
  told(() => new HoopFrame({ ...plain, ...more }, loads));

describe("pieces that make no line", () => {
  const straight = (ax: number, az: number, bx: number, bz: number): HoopPiece => ({
    kind: "straight",
    from: { x: ax, z: az },
    to: { x: bx, z: bz },
  });
  const arc = (fromAngle: number, toAngle: number, radius = 2): HoopPiece => ({
    kind: "arc",
    centre: { x: 0, z: 0 },
    radius,
    fromAngle,
    toAngle,
  });
  const full = 2 * Math.PI;
  const cases: readonly [string, readonly HoopPiece[], readonly string[]][] = [
    ["none", [], ["key-missing pieces 0"]],
    [
      "no numbers",
      [straight(NaN, 0, 1, Infinity)],
      ["not-a-number pieces.0 NaN", "not-a-number pieces.0 Infinity"],
    ],
    ["no length", [straight(1, 1, 1, 1)], ["not-positive pieces.0.length 0"]],
    ["a length", [straight(1, 1, 1, 1.1)], []],
    ["no radius", [arc(3, 1, 0)], ["not-positive pieces.0.radius 0"]],
    ["a radius below zero", [arc(3, 1, -1)], ["not-positive pieces.0.radius -1"]],
    ["an angle that is none", [arc(NaN, 1)], ["not-a-number pieces.0 NaN"]],
    ["an arc without a turn", [arc(1, 1)], ["out-of-range pieces.0.toAngle 1"]],
    ["an arc that runs counter-clockwise", [arc(1, 2)], ["out-of-range pieces.0.toAngle 2"]],
    ["a full turn", [arc(full, 0)], ["out-of-range pieces.0.toAngle 0"]],
    ["nearly a full turn", [arc(full, 1e-3)], []],
    ["a gap", [straight(0, 0, 0, 1), straight(0.5, 1, 2, 1)], ["sizes-disagree pieces.1 0.5"]],
    [
      "a gap upward",
      [straight(0, 0, 0, 1), straight(0, 1.5, 2, 1.5)],
      ["sizes-disagree pieces.1 0.5"],
    ],
    [
      "two gaps, of three pieces",
      [straight(0, 0, 0, 1), straight(1, 1, 2, 1), straight(2, 2, 2, 0)],
      ["sizes-disagree pieces.1 1", "sizes-disagree pieces.2 1"],
    ],
    [
      "gaps are not told of pieces without length",
      [straight(0, 0, 0, 0), straight(5, 5, 6, 5)],
      ["not-positive pieces.0.length 0"],
    ],
  ];
  test.each(cases)("%s", (_, pieces, expected) => {
    expect(told(() => hoopLine(pieces))).toEqual(expected);
  });

  test("pieces meet within a millionth of their size, and are joined exactly", () => {
    const near = (gap: number) => [straight(0, 0, 0, 4), straight(gap, 4, 6 + gap, 4)];
    expect(told(() => hoopLine(near(1.01e-5)))).toHaveLength(1);
    const joined = hoopLine(near(0.99e-5));
    const upright = (gap: number) => [straight(0, 0, 0, 4), straight(gap, 4, gap, 10)];
    expect(told(() => hoopLine(upright(10 * 1e-6)))).toEqual([]);
    expect([...joined.x, ...joined.z]).toEqual(
      [0, 0, 6, 0, 4, 4].map((one) => expect.closeTo(one, 12)),
    );
    expect(joined.length).toBe(10);
  });
});

describe("hoops that cannot be computed", () => {
  const nan = Number.NaN;
  const cases: readonly [string, Partial<Hoop>, readonly string[]][] = [
    ["as it is", {}, []],
    [
      "a section of nothing",
      { section: { A: 0, I: -1, E: nan } },
      ["not-positive section.A 0", "not-positive section.I -1", "not-a-number section.E NaN"],
    ],
    ["a hoop that cannot bend", { section: { ...tube, I: 0 } }, ["not-positive section.I 0"]],
    [
      "hinges beside the hoop",
      { hinges: [-1, 15, nan, 5] },
      ["out-of-range hinges.0 -1", "out-of-range hinges.1 15", "not-a-number hinges.2 NaN"],
    ],
    [
      "hinges at the feet",
      { hinges: [0, 14, 1e-8, 14 - 1e-8] },
      [
        "out-of-range hinges.0 0",
        "out-of-range hinges.1 14",
        "out-of-range hinges.2 1e-8",
        "out-of-range hinges.3 13.99999999",
      ],
    ],
    [
      "hinges at one place with the feet, just so",
      { hinges: [14 * 1e-9, 14 - 14 * 1e-9] },
      [`out-of-range hinges.0 ${14 * 1e-9}`, `out-of-range hinges.1 ${14 - 14 * 1e-9}`],
    ],
    ["hinges a hair from the feet", { hinges: [2e-3, 14 - 2e-3] }, []],
    ["a joint nowhere", { joints: [{ x: 1, z: nan }] }, ["not-a-number joints.0 NaN"]],
    ["a bar to no joint", { bars: [bar({ s: 1 }, { joint: 0 })] }, ["out-of-range bars.0.to 0"]],
    [
      "a bar from beside the hoop",
      { bars: [bar({ s: -0.5 }, { s: 14.5 })] },
      ["out-of-range bars.0.from -0.5", "out-of-range bars.0.to 14.5"],
    ],
    [
      "a bar of nothing",
      { bars: [{ ...bar({ s: 1 }, { s: 13 }), section: { A: 0, I: -1, E: 0 }, weight: -1 }] },
      [
        "not-positive bars.0.section.A 0",
        "not-positive bars.0.section.I -1",
        "not-positive bars.0.section.E 0",
        "not-positive bars.0.weight -1",
      ],
    ],
    [
      "a pinned bar need not bend, and may weigh nothing",
      { bars: [{ ...bar({ s: 1 }, { s: 13 }), section: { ...tube, I: 0 }, weight: 0 }] },
      [],
    ],
    [
      "a bar rigid at its start bends",
      { bars: [{ ...bar({ s: 1 }, { s: 13 }), fromEnd: "rigid", section: { ...tube, I: 0 } }] },
      ["not-positive bars.0.section.I 0"],
    ],
    [
      "a bar rigid at its end bends",
      { bars: [{ ...bar({ s: 1 }, { s: 13 }), toEnd: "rigid", section: { ...tube, I: 0 } }] },
      ["not-positive bars.0.section.I 0"],
    ],
    ["a bar without length", { bars: [bar({ s: 2 }, { s: 2 })] }, ["sizes-disagree bars.0 0"]],
    [
      "a bar rigid at a hinge",
      {
        hinges: [2],
        bars: [{ ...bar({ s: 2 }, { s: 12 }), fromEnd: "rigid" }],
      },
      ["sizes-disagree bars.0.from 2"],
    ],
    [
      "a bar rigid at its end at a hinge",
      { hinges: [2], bars: [{ ...bar({ s: 12 }, { s: 2 }), toEnd: "rigid" }] },
      ["sizes-disagree bars.0.to 2"],
    ],
    ["a bar pinned at a hinge", { hinges: [2], bars: [bar({ s: 2 }, { s: 12 })] }, []],
    ["a bar pinned at its end at a hinge", { hinges: [2], bars: [bar({ s: 12 }, { s: 2 })] }, []],
    [
      "a bar rigid at one place with a hinge",
      { hinges: [2], bars: [{ ...bar({ s: 2 + 7e-9 }, { s: 12 }), fromEnd: "rigid" }] },
      [`sizes-disagree bars.0.from ${2 + 7e-9}`],
    ],
    [
      "a bar of a ten-thousandth of the hoop, just so",
      {
        joints: [
          { x: 0, z: 1 },
          { x: 14 * 1e-4, z: 1 },
        ],
        bars: [bar({ joint: 0 }, { joint: 1 })],
      },
      [`sizes-disagree bars.0 ${14 * 1e-4}`],
    ],
    [
      "a bar rigid elsewhere than at the hinge",
      { hinges: [3], bars: [{ ...bar({ s: 2 }, { s: 12 }), fromEnd: "rigid" }] },
      [],
    ],
    [
      "joints neither at one place nor apart",
      { bars: [bar({ s: 2 }, { s: 12 }), bar({ s: 2.001 }, { s: 9 })] },
      ["sizes-disagree hoop 2.001"],
    ],
    ["a joint too near to a foot", { hinges: [1e-3] }, ["sizes-disagree hoop 0.001"]],
    [
      "a chain of joints, each at one place with the one before it alone",
      { bars: [0, 12.6e-9, 25.2e-9].map((gap, i) => bar({ s: 2 + gap }, { s: 9 + i })) },
      [`sizes-disagree hoop ${2 + 25.2e-9}`],
    ],
  ];
  test.each(cases)("%s", (_, more, expected) => {
    expect(onHoop(more)).toEqual(expected);
  });

  test("joints just so far from a foot: at one place with it, or apart", () => {
    const joint = (s: number) => onHoop({ bars: [bar({ s }, { s: 12 })] });
    expect(joint(14 * 1e-9)).toEqual([]);
    expect(joint(14 * 1e-4)).toEqual([]);
  });

  test("what is expected is said", () => {
    const expected = (more: Partial<Hoop>): string[] => {
      try {
        new HoopFrame({ ...plain, ...more }, []);
      } catch (error) {
        if (error instanceof Refusal) return error.complaints.map((one) => one.expected);
      }
      return [];
    };
    const joints = [
      { x: 1, z: 1 },
      { x: 5, z: 1 },
      { x: 3, z: 2 },
    ];
    expect(expected({ joints, bars: [bar({ joint: 0 }, { joint: 3 })] })).toEqual([
      "a joint from 0 to 2",
    ]);
    expect(expected({ hinges: [1e-3] })).toEqual([
      "joints and feet either at one place or 0.0014 m apart",
    ]);
  });

  test("bars and joints are apart by a ten-thousandth of the hoop, or at one place", () => {
    const [least, one] = [14e-4, 14e-9];
    const joints = (gap: number) =>
      onHoop({ bars: [bar({ s: 2 }, { s: 12 }), bar({ s: 2 + gap }, { s: 9 })] });
    expect(joints(1.01 * least)).toEqual([]);
    expect(joints(0.99 * least)).toHaveLength(1);
    expect(joints(1.01 * one)).toHaveLength(1);
    expect(joints(0.99 * one)).toEqual([]);
    const short = (length: number) => onHoop({ bars: [bar({ s: 5 }, { s: 5 + length })] });
    expect(short(0.99 * least).some((words) => words.startsWith("sizes-disagree bars.0"))).toBe(
      true,
    );
    expect(short(1.01 * least)).toEqual([]);
    const upright = (length: number) => onHoop({ bars: [bar({ s: 2 }, { s: 2 + length })] });
    expect(upright(0.99 * least).some((words) => words.startsWith("sizes-disagree bars.0"))).toBe(
      true,
    );
    expect(upright(1.01 * least)).toEqual([]);
  });
});

describe("loads that cannot be computed", () => {
  const point = (s: number, x = 0, z = 0, couple = 0): HoopLoad => ({
    kind: "point",
    s,
    x,
    z,
    couple,
  });
  const hinged = { hinges: [5] };
  const cases: readonly [string, Partial<Hoop>, HoopLoad, readonly string[]][] = [
    [
      "a zone beside the hoop",
      {},
      normalOn(-1, 15),
      ["out-of-range loads.0.from -1", "out-of-range loads.0.to 15"],
    ],
    ["a zone without end", {}, normalOn(1, Number.NaN), ["not-a-number loads.0.to NaN"]],
    ["a zone backwards", {}, normalOn(5, 4), ["sizes-disagree loads.0.to 4"]],
    ["a zone of no length", {}, normalOn(5, 5), ["sizes-disagree loads.0.to 5"]],
    [
      "a zone of as good as none",
      {},
      normalOn(5, 5 + 13e-9),
      ["sizes-disagree loads.0.to 5.000000013"],
    ],
    [
      "a zone from a foot to one place with it",
      {},
      normalOn(0, 14 * 1e-9),
      [`sizes-disagree loads.0.to ${14 * 1e-9}`],
    ],
    ["a zone of little length", {}, normalOn(5, 5 + 1e-6), []],
    ["the whole hoop", {}, normalOn(0, 14), []],
    ["a force beside the hoop", {}, point(14.1), ["out-of-range loads.0.s 14.1"]],
    [
      "a force of no number",
      {},
      point(3, Number.NaN, Infinity, -Infinity),
      [
        "not-a-number loads.0 NaN",
        "not-a-number loads.0 Infinity",
        "not-a-number loads.0 -Infinity",
      ],
    ],
    ["a couple at a hinge", hinged, point(5, 0, 0, 2), ["sizes-disagree loads.0.couple 2"]],
    ["a force at a hinge", hinged, point(5, 1, 1), []],
    [
      "a couple at one place with a hinge, just so",
      { hinges: [14 * 1e-9] },
      point(0, 0, 0, 2),
      [`out-of-range hinges.0 ${14 * 1e-9}`, "sizes-disagree loads.0.couple 2"],
    ],
    ["a couple beside a hinge", hinged, point(6, 0, 0, 2), []],
    ["the others have nothing to be wrong", {}, { kind: "weight" }, []],
  ];
  test.each(cases)("%s", (_, more, load, expected) => {
    expect(onHoop(more, load)).toEqual(expected);
  });
});

describe("feet and places", () => {
  const frame = new HoopFrame(plain, [downAt(7)]);
  const response = responsesOnFeet(frame, pinnedFeet);

  test("springs below zero, or of no number", () => {
    const feet = [-1, Infinity, Number.NaN, Infinity, 0, 5] as FeetSupport;
    expect(told(() => responsesOnFeet(frame, feet))).toEqual([
      "out-of-range support.0 -1",
      "not-a-number support.2 NaN",
    ]);
  });

  test("places beside the hoop", () => {
    for (const s of [-1e-9, 14 + 1e-9]) {
      const words = [`out-of-range s ${s}`];
      expect(told(() => pointOnLine(line, s))).toEqual(words);
      expect(told(() => tangentOnLine(line, s))).toEqual(words);
      expect(told(() => hoopForcesAt(frame, response, s))).toEqual(words);
      expect(told(() => hoopShapeAt(frame, response, s))).toEqual(words);
      expect(told(() => new HoopStations(frame, [3, s]))).toEqual(words);
    }
    expect(told(() => pointOnLine(line, Number.NaN))).toEqual(["not-a-number s NaN"]);
    expect(told(() => [pointOnLine(line, 0), hoopForcesAt(frame, response, 14)])).toEqual([]);
  });
});
