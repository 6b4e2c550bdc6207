import {
  type FeetSupport,
  fixedFeet,
  type Hoop,
  type HoopBar,
  HoopFrame,
  pinnedFeet,
  responsesOnFeet,
  rightRoller,
  superpose,
} from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { arbitraryHoop, seed } from "./hoop-arbitrary.ts";
import { bareHoop, downAt, normalOn, portal, segment, solvedHoop } from "./hoop-simple.ts";

const tube = { A: 5.23e-4, I: 2.16e-7, E: 2e11 };
const line = segment(3, Math.PI / 2);
const plain = bareHoop(line, tube);
const at = (share: number): number => share * line.length;

const pinned = (from: HoopBar["from"], to: HoopBar["to"]): HoopBar => ({
  from,
  to,
  fromEnd: "pinned",
  toEnd: "pinned",
  section: tube,
  weight: 12,
});

describe("a mechanism is refused by name", () => {
  const hinged = (...shares: number[]): Hoop => ({ ...plain, hinges: shares.map(at) });
  test.each([
    ["two hinges and both feet turning", hinged(0.3, 0.6), pinnedFeet],
    ["three hinges and both feet turning", hinged(0.1, 0.5, 0.8), pinnedFeet],
    ["a hinge, one foot sliding", hinged(0.5), rightRoller],
    ["both feet free to slide", plain, [0, Infinity, 0, 0, Infinity, 0] as const],
    [
      "two hinges, with a bar between one side's own places",
      { ...hinged(0.3, 0.6), bars: [pinned({ s: at(0.35) }, { s: at(0.55) })] },
      pinnedFeet,
    ],
  ])("%s", (_, hoop, feet) => {
    const frame = new HoopFrame(hoop, [downAt(at(0.4))]);
    expect(() => responsesOnFeet(frame, feet)).toThrow(/mechanism/);
  });

  test.each([
    ["four hinges between clamped feet", hinged(0.2, 0.4, 0.6, 0.8), []],
    ["a joint that hangs by one bar", plain, [pinned({ s: at(0.5) }, { joint: 0 })]],
    [
      "a joint on the line between its two bars",
      plain,
      [pinned({ s: at(1 / 6) }, { joint: 0 }), pinned({ joint: 0 }, { s: at(5 / 6) })],
    ],
  ])("%s", (_, hoop, bars) => {
    const joints = bars.length > 0 ? [{ x: 0, z: 1.5 }] : [];
    expect(() => new HoopFrame({ ...hoop, joints, bars }, [])).toThrow(/mechanism/);
  });
});

test(`hinges one too many are told on every hoop, and none that it bears (seed ${seed})`, () => {
  const hoops = fc.record({
    hoop: arbitraryHoop.map((one): Hoop => ({ ...one, bars: [], joints: [] })),
    places: fc.uniqueArray(fc.integer({ min: 3, max: 61 }), { minLength: 1, maxLength: 5 }),
  });
  const outcome = (hoop: Hoop, feet: FeetSupport): string => {
    try {
      responsesOnFeet(new HoopFrame(hoop, [normalOn(0, hoop.line.length)]), feet);
      return "held";
    } catch (error) {
      return String(error).includes("mechanism") ? "mechanism" : String(error);
    }
  };
  fc.assert(
    fc.property(hoops, ({ hoop: bare, places }) => {
      const hoop = { ...bare, hinges: places.map((place) => (place / 64) * bare.line.length) };
      const told = (most: number): string => (places.length > most ? "mechanism" : "held");
      expect(outcome(hoop, pinnedFeet)).toBe(told(1));
      // Three hinges bear between clamped feet unless they stand in line, as in a portal's beam.
      if (places.length !== 3) expect(outcome(hoop, fixedFeet)).toBe(told(3));
      expect(outcome(hoop, rightRoller)).toBe("mechanism");
    }),
    { seed, numRuns: 200 },
  );
});

/** A joint that hangs below the line between its two bars, each of half the span. */
function sagging(sag: number): { hoop: Hoop; half: number; length: number } {
  const half = 3 * Math.cos(Math.PI / 6);
  const bars = [pinned({ s: at(1 / 6) }, { joint: 0 }), pinned({ joint: 0 }, { s: at(5 / 6) })];
  const hoop = { ...plain, joints: [{ x: 0, z: 1.5 - sag }], bars };
  return { hoop, half, length: Math.hypot(half, sag) };
}

describe("near a mechanism the answer holds or there is none", () => {
  test.each([0.3, 1e-2, 1e-3])("two bars that sag by %d m pull w L l/(2 sag) level", (sag) => {
    const { hoop, half, length } = sagging(sag);
    const { frame, response } = solvedHoop(hoop, fixedFeet, [[{ kind: "bar-weight" }, 1]]);
    expect(response[frame.jointAt(0) + 2], "nothing turns a joint of pinned bars").toBe(0);
    const level = (12 * length * half) / (2 * sag);
    const end = frame.barAt(0) + 3;
    const [N, V] = [response[end] as number, response[end + 1] as number];
    const [cos, sin] = [half / length, -sag / length];
    const near = 1e-12 * (half / sag);
    expectNear([N * cos + V * sin, N * sin - V * cos], [level, 0], near);
  });

  test("so near that its own weight would move it kilometres, it is a mechanism", () => {
    expect(() => new HoopFrame(sagging(1e-4).hoop, [])).toThrow(/mechanism/);
  });
});

describe("what hangs on a soft spring alone", () => {
  /** Fourteen metres: columns of four, a beam of six. */
  const frame = portal(4, 6);
  const bent = (48 * tube.E * tube.I) / 14 ** 3;
  const least = 1e-6 * bent;
  const stands = (hoop: Hoop, feet: FeetSupport): boolean => {
    try {
      responsesOnFeet(new HoopFrame(hoop, []), feet);
      return true;
    } catch (error) {
      expect(String(error)).toMatch(/mechanism/);
      return false;
    }
  };

  test("feet that slide: a millionth of a beam's stiffness holds them", () => {
    const sliding = (spring: number) =>
      stands(bareHoop(frame, tube), [spring, Infinity, 0, 0, Infinity, 0]);
    expect(sliding(2 * least)).toBe(true);
    expect(sliding(0.5 * least)).toBe(false);
  });

  test("columns that sway on hinges: the same over the developed length squared", () => {
    const hinged = { ...bareHoop(frame, tube), hinges: [4, 10] };
    const swaying = (spring: number) =>
      stands(hinged, [Infinity, Infinity, spring, Infinity, Infinity, 0]);
    expect(swaying(2 * least * 14 ** 2)).toBe(true);
    expect(swaying(0.5 * least * 14 ** 2)).toBe(false);
  });

  test("a joint that turns on one limp bar: its three E I / l", () => {
    const bar = (from: HoopBar["from"], to: HoopBar["to"]) => pinned(from, to);
    const turning = (spring: number) => {
      const I = (spring * 3) / (3 * tube.E);
      const limp: HoopBar = {
        ...bar({ joint: 0 }, { s: 7 }),
        fromEnd: "rigid",
        section: { ...tube, I },
      };
      const bars = [bar({ s: 4 }, { joint: 0 }), bar({ joint: 0 }, { s: 10 }), limp];
      const joints = [{ x: 3, z: 1 }];
      return stands({ ...bareHoop(frame, tube), joints, bars }, fixedFeet);
    };
    expect(turning(2 * least * 14 ** 2)).toBe(true);
    expect(turning(0.5 * least * 14 ** 2)).toBe(false);
  });
});

describe("a joint that no bar turns, beside one that bars hold rigid", () => {
  const [a, b] = [0.25, 0.75].map((share) => ({ s: at(share) })) as [{ s: number }, { s: number }];
  const joints = [
    { x: 0.2, z: 1 },
    { x: -0.3, z: 0.4 },
  ];
  const hung = (joint: number) => [pinned(a, { joint }), pinned({ joint }, b)];
  const [rigidAtStart, rigidAtEnd] = [
    { ...pinned({ joint: 0 }, { s: at(0.5) }), fromEnd: "rigid" as const },
    { ...pinned({ s: at(0.5) }, { joint: 0 }), toEnd: "rigid" as const },
  ];
  test.each([
    ["where they start", rigidAtStart],
    ["where they end", rigidAtEnd],
  ])("%s", (_, rigid) => {
    const bars = [...hung(0), ...hung(1), rigid];
    const { frame, response } = solvedHoop({ ...plain, joints, bars }, fixedFeet, [
      [downAt(at(0.4)), 300],
    ]);
    const turns = [0, 1].map((joint) => response[frame.jointAt(joint) + 2]);
    expect(turns).toEqual([expect.any(Number), 0]);
    expect(turns[0]).not.toBe(0);
  });
});

test("a frame answers for other feet, and again for the same, as it did", () => {
  const frame = new HoopFrame(plain, [normalOn(at(0.1), at(0.45)), { kind: "push" }]);
  const clamped = Array.from(frame.clamped);
  const first = Array.from(responsesOnFeet(frame, pinnedFeet));
  expect(Array.from(responsesOnFeet(frame, fixedFeet))).toEqual(clamped);
  expect(Array.from(responsesOnFeet(frame, pinnedFeet))).toEqual(first);
  expect(Array.from(frame.clamped)).toEqual(clamped);
});

test.each([2e-3, 2e-4])(
  "a joint %d of the hoop's length beside another, for a bar of no stiffness, changes nothing",
  (gap) => {
    const loads = [
      [normalOn(at(0.1), at(0.45)), 500],
      [{ kind: "weight" }, 40],
      [{ kind: "push" }, 60],
      [downAt(at(0.7)), 300],
    ] as const;
    const hoop = {
      ...plain,
      section: { A: 7.5e-5, I: 3.77e-9, E: 2e11 },
      hinges: [at(0.3)],
      bars: [pinned({ s: at(0.2) }, { s: at(0.8) })],
    };
    const ghost: HoopBar = {
      from: { s: at(0.2 + gap) },
      to: { s: at(0.3 + gap) },
      fromEnd: "rigid",
      toEnd: "rigid",
      section: { ...tube, E: 1e-6 },
      weight: 0,
    };
    const feet = [2e4, 3e4, 500, 2e4, 3e4, 500] as const;
    const found = [[], [ghost]].map((more) => {
      const bars = [...hoop.bars, ...more];
      const { frame, response } = solvedHoop({ ...hoop, bars }, feet, loads);
      return Array.from(response.subarray(0, frame.barAt(1)));
    });
    expectNear(found[1] ?? [], found[0] ?? [], 1e-11);
  },
);

test("foot stiffness is symmetrical, and a load turned round turns its answer round", () => {
  const { hoop } = sagging(0.2);
  const loads = [normalOn(at(0.1), at(0.45)), { kind: "push" }] as const;
  const frame = new HoopFrame(hoop, loads);
  const { footStiffness, footMoves, size } = frame;
  const columns = Array.from(
    { length: 36 },
    (_, i) => footMoves[(i % 6) * size + Math.floor(i / 6)],
  );
  expectNear(columns as number[], Array.from(footStiffness), 1e-12);
  const rows = responsesOnFeet(frame, pinnedFeet);
  const [there, back] = [1, -1].map((sign) => {
    const response = new Float64Array(size);
    superpose(rows, size, [300 * sign, 80 * sign], response);
    return Array.from(response);
  });
  expect(back?.map((value) => 0 - value)).toEqual(there?.map((value) => value + 0));
});
