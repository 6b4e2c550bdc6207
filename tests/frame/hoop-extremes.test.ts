import { extremeAt, HoopFrame, hoopExtremes, hoopForcesAt, rightRoller } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { loadedHoop, seed } from "./hoop-arbitrary.ts";
import {
  bareHoop,
  normalOn,
  portal,
  type SolvedHoop,
  sectionOf,
  segment,
  solvedHoop,
} from "./hoop-simple.ts";

const extremesOf = ({ frame, response }: SolvedHoop): Float64Array => {
  const found = new Float64Array(12);
  hoopExtremes(frame, response, found);
  return found;
};

/** Where u tan u = 1, by halving. */
const root = (() => {
  let [low, high] = [0, 1.5];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (middle * Math.tan(middle) < 1) low = middle;
    else high = middle;
  }
  return low;
})();

describe("semicircle, one foot sliding, so that statics alone decide", () => {
  const radius = 2.3;
  const line = segment(radius, Math.PI / 2);
  const hoop = bareHoop(line, sectionOf(1e-4, radius));

  test("self weight: V = g R u cos u at u from the crown, greatest where u tan u = 1", () => {
    const found = extremesOf(solvedHoop(hoop, rightRoller, [[{ kind: "weight" }, 40]]));
    const most = 40 * radius * root * Math.cos(root);
    const [high, low] = [extremeAt.shearMost, extremeAt.shearLeast].map((at) => [
      found[at] as number,
      (found[at + 1] as number) / radius,
    ]);
    expectNear(high ?? [], [most, Math.PI / 2 - root], 1e-10);
    expectNear(low ?? [], [-most, Math.PI / 2 + root], 1e-10);
  });
});

test("shallow arches under their own weight, one foot sliding: the crown bends most, by statics", () => {
  // Uncut at the crown, where the slope of the moment passes zero and the slope of that as well.
  for (let i = 0; i < 60; i += 1) {
    const [radius, half] = [1.5 + 0.0824 * i, 0.2 + (0.58 * (i % 19)) / 19];
    const line = segment(radius, half);
    const hoop = bareHoop(line, sectionOf(1e-4, radius));
    const found = extremesOf(solvedHoop(hoop, rightRoller, [[{ kind: "weight" }, 40]]));
    // Half of it weighs R a, R (1 - cos a)/a beside the crown, and stands on R sin a.
    const most = 40 * radius ** 2 * (half * Math.sin(half) - (1 - Math.cos(half)));
    const [moment, place] = Array.from(found).slice(extremeAt.momentMost);
    expectNear([moment ?? NaN], [most], 1e-9);
    expectNear([place ?? NaN], [line.length / 2], 1e-5);
  }
});

test("of places that are equal the first from the left foot is told", () => {
  const frame = new HoopFrame(bareHoop(portal(4, 6), sectionOf(1e-4, 4)), []);
  const nothing = new Float64Array(frame.size);
  const found = extremesOf({ frame, response: nothing });
  expect(Array.from(found).filter((_, i) => i % 2 === 1)).toEqual([0, 0, 0, 0, 0, 0]);
});

test("held at its right foot alone: the greatest moment is there, at the very end", () => {
  const hoop = bareHoop(portal(4, 6), sectionOf(1e-4, 4));
  const right = [0, 0, 0, Infinity, Infinity, Infinity] as const;
  const found = extremesOf(solvedHoop(hoop, right, [[normalOn(0, 4), 50]]));
  const moment = Array.from(found).slice(extremeAt.momentMost, extremeAt.momentMost + 2);
  // 50 N/m on four metres of the left column, two metres above the foot.
  expectNear(moment, [50 * 4 * 2, 14], 1e-10);
});

test(`no place goes beyond the extremes, and at theirs they are met (seed ${seed})`, () => {
  fc.assert(
    fc.property(loadedHoop, (one) => {
      const { frame, response } = solvedHoop(one.hoop, one.feet, one.loads);
      const found = extremesOf({ frame, response });
      const { length } = one.hoop.line;
      const at = (s: number) =>
        (["left", "right"] as const).map((side) =>
          Object.values(hoopForcesAt(frame, response, s, side)),
        );
      const sampled = Array.from({ length: 401 }, (_, i) => at((i / 400) * length)).flat();
      for (const force of [0, 1, 2]) {
        const [most, mostAt, least, leastAt] = Array.from(found).slice(4 * force) as [
          number,
          number,
          number,
          number,
        ];
        const all = sampled.map((forces) => forces[force] as number);
        const size = Math.max(...all.map(Math.abs));
        const slack = 1e-9 * size;
        expect(Math.max(...all)).toBeLessThanOrEqual(most + slack);
        expect(Math.min(...all)).toBeGreaterThanOrEqual(least - slack);
        for (const [value, s] of [
          [most, mostAt],
          [least, leastAt],
        ] as const) {
          const off = at(s).map((forces) => Math.abs((forces[force] as number) - value));
          expect(Math.min(...off)).toBeLessThanOrEqual(slack);
        }
      }
    }),
    { seed, numRuns: 40 },
  );
});
