import { cornerSets, jointSystem } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { emptyBasis } from "../../packages/stability/src/all-at-once/basis.ts";
import { askAt, demandOn } from "../../packages/stability/src/all-at-once/demand.ts";
import { beyond } from "../../packages/stability/src/all-at-once/facet.ts";
import { answers, walk } from "../../packages/stability/src/all-at-once/walk.ts";
import { problem } from "./fitted-problem.ts";
import { basisOf, column, smallSystem } from "./small-system.ts";

const asked = (...right: number[]) => Float64Array.from(right);
const one = smallSystem([[1]]);
const none = smallSystem([], [], null, 1);

describe("what a walk takes for rounding", () => {
  test("an unknown may lie 1e-12 outside its bounds, and then nothing is exchanged", () => {
    for (const sign of [1, -1]) {
      expect(answers(emptyBasis(one), asked(sign * 1e-12))).toBe(true);
      expect(answers(emptyBasis(one), asked(sign * 1.01e-12))).toBe(false);
    }
    expect(walk(emptyBasis(one), asked(1e-12)).held?.members[0]).toBe(-1);
    expect(walk(emptyBasis(one), asked(1.01e-12)).held?.members[0]).toBe(0);
  });

  test("where no exchange can mend it, 1e-10; more is a facet", () => {
    for (const sign of [1, -1]) {
      expect(walk(emptyBasis(none), asked(sign * 1e-10)).held).not.toBeNull();
      const { held, facet } = walk(emptyBasis(none), asked(sign * 1.01e-10));
      expect(held).toBeNull();
      expect(facet).toEqual({ normal: asked(sign), most: 0 });
    }
  });

  test("a share of 1e-9 moves nothing", () => {
    for (const of of [(share: number) => smallSystem([[share]]), fanOf]) {
      expect(walk(emptyBasis(of(1e-9)), asked(1)).facet).not.toBeNull();
      expect(walk(emptyBasis(of(1.01e-9)), asked(1)).held?.members[0]).toBe(0);
    }
  });

  test("an inverse whose answer misses a row by 3e-10 stays; one that misses by more is made anew", () => {
    const spoiled = basisOf(one, [0]);
    spoiled.inverse[0] = 0;
    expect(walk(spoiled, asked(3e-10)).held?.inverse[0]).toBe(0);
    expect(walk(spoiled, asked(3.01e-10)).held?.inverse[0]).toBe(1);
    expect(walk(spoiled, asked(-3.01e-10)).facet).toEqual({ normal: asked(-1), most: 0 });
    expect(spoiled.inverse[0]).toBe(0);
  });

  test("after an exchange, too", () => {
    const spoiled = basisOf(smallSystem([column(2, 0), column(2, 1)]), [-1, 1]);
    spoiled.inverse[3] = 0;
    expect(walk(spoiled, asked(1, 0.5)).held?.inverse).toEqual(asked(1, 0, 0, 1));
  });

  test("after 24 exchanges in any case", () => {
    // The last row's is spoiled: it lies outside by 0.3, all others farther, and no column would move it.
    const rows = 26;
    const last = rows - 1;
    const each = Array.from({ length: rows }, (_, row) => column(rows, row));
    const spoiled = basisOf(smallSystem(each), [0, ...each.slice(1).map(() => -1)]);
    spoiled.inverse[last * rows] = -0.01;
    spoiled.inverse[last * rows + last] = 0;
    const right = asked(30, ...each.slice(1).map((_, place) => last - place));
    expect([...(walk(spoiled, right).held?.members ?? [])]).toEqual([...each.keys()]);
  });

  test("what has been exchanged already is not again, whatever its inverse says", () => {
    const fan = smallSystem([], [], [1, 0]);
    const spoiled = basisOf(fan, [0, -1]);
    spoiled.inverse[2] = 1e-6;
    expect(walk(spoiled, asked(1, 1)).facet?.normal).toEqual(asked(1e-6, 1));
  });

  test("asked for no number it is lost, with its rounding taken out once", () => {
    let rebuilt = 0;
    const watched = {
      ...one,
      get caps() {
        rebuilt += 1;
        return one.caps;
      },
    };
    expect(walk(emptyBasis(watched), asked(Number.NaN))).toEqual({ held: null, facet: null });
    expect(rebuilt).toBe(1);
  });
});

function fanOf(share: number) {
  return smallSystem([], [], [share]);
}

test("a house with sixteen anchors, two in each place: no walk goes round in circles", () => {
  const lateral = { Q: 700, H: 500, cosDelta: 1, sinDelta: 0 };
  const places = [-3, 3].flatMap((x) => [-5, -5 / 3, 5 / 3, 5].map((y) => ({ x, y })));
  const anchors = [...places, ...places].map(({ x, y }) => {
    const toward = [0.12 * x, 0.48, -0.8] as const;
    return { x, y, pull: 700, toward };
  });
  const laterals = anchors.map((_, place) => (place % 5 === 3 ? null : lateral));
  const held = problem({ anchors, friction: 0.5, laterals });
  const [corners] = cornerSets(held.lines);
  if (!corners) throw new Error("no corners");
  const system = jointSystem(held, corners);
  const wind = asked(2000, 1000, 500, 0, 0, 5000);
  const demand = demandOn(system, { wind, slope: new Float64Array(6) });
  for (const units of [2, 4, 8]) {
    const right = askAt(demand, units * demand.unit, new Float64Array(system.rows));
    const { held: found, facet } = walk(emptyBasis(system), right);
    const told = found ? answers(found, right) : facet && beyond(facet, right);
    expect(told, `${units} units of wind`).toBe(true);
  }
});
