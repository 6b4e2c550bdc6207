import { HoopFrame, hoopImbalance, hoopLine, pinnedFeet } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { checkedImbalance, loadSize } from "../../packages/frame/src/hoop/balance.ts";
import { expectNear } from "./held-rail.ts";
import { bareHoop, solvedHoop } from "./hoop-simple.ts";

/** Fifteen metres: a column of four from (1, 2), a beam of six, a column of five to (7, 1). */
const line = hoopLine([
  { kind: "straight", from: { x: 1, z: 2 }, to: { x: 1, z: 6 } },
  { kind: "straight", from: { x: 1, z: 6 }, to: { x: 7, z: 6 } },
  { kind: "straight", from: { x: 7, z: 6 }, to: { x: 7, z: 1 } },
]);
const section = { A: 5e-4, I: 2e-7, E: 2e11 };
/** From (1, 3) to (4, 6), or 3 sqrt(2) m. */
const brace = {
  from: { s: 1 },
  to: { s: 7 },
  fromEnd: "pinned",
  toEnd: "pinned",
  section,
  weight: 10,
} as const;
const frame = new HoopFrame({ ...bareHoop(line, section), bars: [brace] }, []);

/** A response of nought but for a few numbers. */
const response = (numbers: Record<number, number>): Float64Array => {
  const made = new Float64Array(frame.size);
  for (const [at, value] of Object.entries(numbers)) made[Number(at)] = value;
  return made;
};

test("bars have seven numbers each in a response, free joints three", () => {
  const joints = [
    { x: 3, z: 3 },
    { x: 5, z: 3 },
  ];
  const to = (joint: number) => ({ ...brace, to: { joint } });
  const ties = [to(0), { ...to(0), from: { s: 9 } }, to(1), { ...to(1), from: { s: 11 } }];
  const tied = new HoopFrame({ ...bareHoop(line, section), joints, bars: ties }, []);
  const bar = (place: number) => tied.barAt(place);
  const joint = (place: number) => tied.jointAt(place);
  expect([bar(1) - bar(0), bar(3) - bar(0)]).toEqual([7, 21]);
  expect([joint(0) - bar(3), joint(1) - joint(0)]).toEqual([7, 3]);
  expect(tied.statesAt - joint(1)).toBe(3);
});

test("joints within a billionth of the hoop's length are one place: the same frame in balance", () => {
  const same = 1e-9 * line.length;
  const feetWith = (gap: number): number[] => {
    const bars = [
      brace,
      { ...brace, from: { s: 1 + gap }, to: { s: 12 } },
      { ...brace, from: { s: gap }, to: { s: 9 - gap } },
      { ...brace, from: { s: 9 }, to: { s: 15 - gap } },
    ];
    const loads = [{ kind: "weight" }, { kind: "bar-weight" }, { kind: "push" }] as const;
    const hoop = { ...bareHoop(line, section), bars };
    const { response } = solvedHoop(
      hoop,
      pinnedFeet,
      loads.map((load) => [load, 30]),
    );
    return Array.from(response.subarray(0, 6));
  };
  for (const part of [0.1, 0.7, 0.9999]) expectNear(feetWith(part * same), feetWith(0), 1e-8);
});

describe("what is left over of the sums of equilibrium, by hand", () => {
  const cases: readonly [string, Record<number, number>, number][] = [
    ["nothing acts", {}, 0],
    ["one foot pushes alone, level", { 0: -8 }, 1],
    ["one foot pushes alone, upward", { 4: 8 }, 1],
    ["both feet push one way", { 0: 3, 3: 5 }, 8 / 5],
    ["both feet push upward", { 1: 3, 4: 5 }, 8 / 5],
    ["upward here, downward there: six metres apart", { 1: -8, 4: 8 }, 6 / 15],
    ["level one way and the other: one metre apart", { 0: -8, 3: 8 }, 1 / 15],
    ["couples at the feet", { 2: 30, 5: -15 }, 1 / 2],
    ["a load in x taken by the left foot, two metres above the origin", { 0: -8, 12: 8 }, 2 / 15],
    ["a load in z taken by the left foot, one metre beside the origin", { 1: -8, 13: 8 }, 1 / 15],
    ["a couple of the load taken by the left foot", { 2: -30, 14: 30 }, 0],
    ["loads alone", { 6: 1, 12: 1e6 }, 1e6 / ((48 * 2e11 * 2e-7) / 15 ** 3)],
  ];
  test.each(cases)("%s", (_, numbers, expected) => {
    expect(hoopImbalance(frame, response(numbers))).toBeCloseTo(expected, 12);
  });

  test("is held to what rounding may make of it", () => {
    const off = response({ 0: 3, 3: 5 });
    const imbalance = hoopImbalance(frame, off);
    expect(() => checkedImbalance(frame, off, imbalance)).not.toThrow();
    expect(() => checkedImbalance(frame, off, imbalance * (1 - 1e-12))).toThrow(/out of balance/);
  });
});

describe("the size of what acts, by hand", () => {
  const states = frame.statesAt;
  const bending = (48 * section.E * section.I) / 15 ** 3;
  const last = states + 9 * (frame.intervals.count - 1);
  const cases: readonly [string, Record<number, number>, number][] = [
    ["a bar's weight over its length", { [frame.barAt(0) + 6]: 10 }, 10 * Math.hypot(3, 3)],
    [
      "loads on a part of the hoop, without sign",
      { [states + 6]: -10, [states + 7]: 20, [states + 8]: -30 },
      60 * 1,
    ],
    ["loads on its last part", { [last + 6]: 7 }, 7 * 5],
    ["forces inside, the greater of two", { [states + 3]: -9, [states + 4]: 8 }, 9],
    ["forces inside, the other one", { [last + 3]: 4, [last + 4]: -9 }, 9],
    ["a moment over the developed length", { [states + 5]: -45 }, 3],
    ["a moment in the last part", { [last + 5]: 45 }, 3],
    ["forces on the feet", { 0: 1, 4: -7 }, 7],
    ["couples on the feet over the developed length", { 2: 30, 5: -60 }, 4],
    ["feet that move, by what bending them takes", { 9: -0.5 }, 0.5 * bending],
    ["feet that turn", { 8: 0.5, 11: -0.25 }, 0.5 * 15 * bending],
    ["forces inside beside smaller loads", { [last + 6]: 1, 0: 8 }, 8],
    ["loads beside smaller forces", { [last + 6]: 2, 0: 8 }, 10],
  ];
  test.each(cases)("%s", (_, numbers, expected) => {
    expect(loadSize(frame, response(numbers))).toBeCloseTo(expected, 9);
  });
});
