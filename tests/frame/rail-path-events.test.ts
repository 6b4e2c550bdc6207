import type { RailSupport } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { nextEvent } from "../../packages/frame/src/rail/path-event.ts";
import { giving, holding, idle } from "../../packages/frame/src/rail/support-set.ts";
import { lyingAt, supportAtEach } from "./shaped-rail.ts";

/** Three springs of 2 N/m that may be given 30 N, with their part, preload and both deflections. */
interface Path {
  readonly kind: "anchor" | "ground";
  readonly parts: readonly number[];
  readonly preload: readonly number[];
  readonly start: readonly number[];
  readonly end: readonly number[];
  readonly size?: number;
  readonly from?: number;
  readonly cap?: number;
}

function eventOn({ kind, parts, preload, start, end, size = 0, from = 0, cap }: Path) {
  const support: Omit<RailSupport, "x"> = { kind, stiffness: 2, ...(cap ? { cap } : {}) };
  const one = supportAtEach([support, support, support]);
  // Told for ground; an anchor is its mirror image, up for down.
  const up = kind === "ground" ? 1 : -1;
  const turned = (values: readonly number[]) => values.map((value) => up * value);
  one.set.set(parts);
  one.size = size;
  one.preload.set(turned(preload));
  one.bent.deflection.set(turned(end));
  return nextEvent(one, lyingAt(one, turned(start)), from);
}

const none = [0, 0, 0];
const allHold = [holding, holding, holding];
const pressed = { parts: allHold, preload: [10, 10, 10], start: none };
const at = (place: number, support: number, part: number) => ({
  at: expect.closeTo(place, 12),
  support,
  part,
});

// A spring's force at t is (1 - t) (preload - 2 start) - 2 t end.
const cases: readonly [string, Omit<Path, "kind">, unknown][] = [
  ["the force runs out: 10 to -10", { ...pressed, end: [-1, 5, 1] }, at(1 / 2, 1, idle)],
  ["of several the first: 10 to -10, to -30", { ...pressed, end: [5, 15, 1] }, at(1 / 4, 1, idle)],
  ["of two at once the first support", { ...pressed, end: [-1, 5, 5] }, at(1 / 2, 1, idle)],
  ["none that is past already", { ...pressed, end: [5, 1, 1], from: 0.7 }, at(0.7, 0, idle)],
  ["all forces stay", { ...pressed, end: [-1, 0, -5] }, undefined],
  [
    "gone from the start: -8 to -2",
    { ...pressed, preload: [-8, 10, 10], end: [1, 0, 0], from: 0.25 },
    at(0.25, 0, idle),
  ],
  ["what rounding of the loads may be", { ...pressed, end: [0.4, 0, 0], size: 1e10 }, undefined],
  ["and beyond it", { ...pressed, end: [0.6, 0, 0], size: 1e10 }, at(10 / 11.2, 0, idle)],
  ["nothing left is enough to stay", { ...pressed, end: none, size: 1e10 }, undefined],
  [
    "the cap is reached: 10 to 40 of 30",
    { ...pressed, end: [-20, -15, -5], cap: 30 },
    at(2 / 3, 0, giving),
  ],
  ["the cap is kept", { ...pressed, end: [-15, -15, -5], cap: 30 }, undefined],
  [
    "an idle one is met: its preload moves it by 5, and the rail comes from 4 beyond to 4 within",
    { ...pressed, parts: [holding, idle, holding], start: [0, 9, 0], end: [0, -4, 0] },
    at(1 / 2, 1, holding),
  ],
  [
    "an idle one that is only touched stays idle",
    { ...pressed, parts: [holding, idle, holding], start: [0, 9, 0], end: [-1, 0, 0] },
    undefined,
  ],
  [
    "what rounding of the ways may be",
    { ...pressed, parts: [holding, idle, idle], start: [0, 9, 9], end: [-1e10, -0.9, 0] },
    undefined,
  ],
  [
    "and beyond it: a way of 4 to -1.1",
    { ...pressed, parts: [holding, idle, idle], start: [0, 9, 9], end: [-1e10, 0, -1.1] },
    at(4 / 5.1, 2, holding),
  ],
  [
    "a giving one holds again: from 4 beyond its cap to 4 short of it",
    {
      ...pressed,
      parts: [holding, giving, holding],
      start: [0, -14, 0],
      end: [0, -11, 0],
      cap: 30,
    },
    at(1 / 2, 1, holding),
  ],
];

describe.each(["ground", "anchor"] as const)("events on the path, %s", (kind) => {
  test.each(cases)("%s", (_, path, expected) => {
    expect(eventOn({ ...path, kind })).toEqual(expected);
  });

  test("a rigid one has no way of its own: met and left where the rail is undeflected", () => {
    const one = supportAtEach([{ kind, stiffness: "rigid", cap: 30 }]);
    const up = kind === "ground" ? 1 : -1;
    one.preload.fill(10 * up);
    one.bent.deflection.fill(-4 * up);
    one.set.fill(idle);
    expect(nextEvent(one, lyingAt(one, [4 * up]), 0)).toEqual(at(1 / 2, 0, holding));
    one.bent.deflection.fill(4 * up);
    one.set.fill(giving);
    expect(nextEvent(one, lyingAt(one, [-4 * up]), 0)).toEqual(at(1 / 2, 0, holding));
  });
});
