import { HoopFrame, type HoopLoad, hoopLine } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { bareHoop, downAt, normalOn, portal, segment } from "./hoop-simple.ts";

const tube = { A: 5e-4, I: 2e-7, E: 2e11 };
const breaksOf = (line: ReturnType<typeof portal>, ...loads: HoopLoad[]): number[] =>
  Array.from(new HoopFrame(bareHoop(line, tube), loads).breaks);
const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));
const right = Math.PI / 2;

describe("the places between which a hoop is smooth", () => {
  test("ends of pieces and of loads, each once, rising", () => {
    const found = breaksOf(portal(4, 6), normalOn(3, 7), downAt(7), normalOn(1, 4), downAt(1));
    expect(found).toEqual(near(0, 1, 3, 4, 7, 10, 14));
  });

  test("a straight piece is not cut, an arc beside it into right angles at most", () => {
    const line = hoopLine([
      { kind: "straight", from: { x: -3, z: 0 }, to: { x: -3, z: 2 } },
      { kind: "arc", centre: { x: 0, z: 2 }, radius: 3, fromAngle: Math.PI, toAngle: 0 },
      { kind: "straight", from: { x: 3, z: 2 }, to: { x: 3, z: 0 } },
    ]);
    expect(breaksOf(line)).toEqual(near(0, 2, 2 + 3 * right, 2 + 6 * right, 4 + 6 * right));
  });

  test.each([
    [0.9, 1],
    [1, 1],
    [1.1, 2],
    [2, 2],
    [2.8, 3],
    [3, 3],
    [3.5, 4],
  ])("an arc of %d right angles in %d even parts", (turn, parts) => {
    const line = segment(2.5, (turn * right) / 2);
    const part = (2.5 * turn * right) / parts;
    expect(breaksOf(line)).toEqual(near(...Array.from({ length: parts + 1 }, (_, i) => i * part)));
  });
});
