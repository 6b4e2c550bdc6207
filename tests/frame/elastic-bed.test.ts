import { groundSprings, type RailSupport, railAt, tributaryLengths } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear, heldRail } from "./held-rail.ts";
import { readReference } from "./reference-rails.ts";

interface BedCase {
  readonly case: string;
  readonly k: number;
  readonly EI: number;
  readonly L?: number;
  readonly P?: number;
  readonly beta?: number;
  readonly y_centre?: number;
  readonly M_centre?: number;
  readonly y_end?: number;
  readonly y0?: number;
  readonly M0?: number;
  readonly M_min?: number;
  readonly x_Mmin?: number;
}

const cases = readReference("boef_cases") as BedCase[];

/** A rail on a two-way bed, as the closed forms have it: springs at equal stations, down load P. */
function onBed({ k, EI, P = 1000 }: BedCase, length: number, count: number, at: number) {
  const stations = Array.from({ length: count + 1 }, (_, i) => (i * length) / count);
  const springs = tributaryLengths(length, stations).map(
    (part, i): RailSupport => ({
      kind: "two-way",
      x: stations[i] as number,
      stiffness: k * part,
    }),
  );
  const forces = [{ x: at, force: -P }];
  return heldRail({ length, stiffness: EI }, { forces }, springs);
}

/** What the file gives for a case, and what springs at `count` spaces give; y down positive. */
function compared(one: BedCase, count: number): { computed: number[]; expected: number[] } {
  const beta = one.beta ?? (one.k / (4 * one.EI)) ** 0.25;
  const length = one.L ?? 30 / beta;
  const atEnd = one.case.includes("end load") || one.case.includes("one end");
  const loaded = atEnd ? 0 : length / 2;
  const { bent, extremes } = onBed(one, length, count, loaded);
  const here = railAt(bent, loaded);
  const pairs: [number, number | undefined][] = [
    [-here.deflection, one.y_centre ?? one.y0 ?? (atEnd ? one.y_end : undefined)],
    [here.moment, one.M_centre ?? one.M0],
    [-railAt(bent, 0).deflection, atEnd ? undefined : one.y_end],
    [extremes.momentLeast.moment, one.M_min],
  ];
  const given = pairs.filter(([, value]) => value !== undefined);
  return {
    computed: given.map(([value]) => value),
    expected: given.map(([, value]) => value as number),
  };
}

describe("fixtures/statics/boef_cases.json: Hetenyi's closed forms", () => {
  test.each(cases.map((one, i) => [i, one.case, one] as const))("%d %s", (_, __, one) => {
    // Springs at stations err with the square of their spacing: the error at 300 spaces is under
    // 0.5 %, a quarter of that at 150, and two steps carried on to no spacing leave 0.05 % (the greatest
    // moment of an end load stands between stations). The free
    // end of the longest rail does not move (2e-8 m): its error counts against the load's place.
    const [coarse, fine] = [compared(one, 150), compared(one, 300)];
    for (const [i, value] of fine.expected.entries()) {
      const size = Math.max(Math.abs(value), i < 2 ? 0 : 1e-3 * Math.abs(fine.expected[0] ?? 0));
      const [first, second] = [coarse.computed[i] ?? Number.NaN, fine.computed[i] ?? Number.NaN];
      expect(Math.abs(second - value) / size, `${i}: ${second} for ${value}`).toBeLessThan(5e-3);
      const carriedOn = second + (second - first) / 3;
      expect(Math.abs(carriedOn - value) / size, `${i}: ${carriedOn}`).toBeLessThan(5e-4);
    }
  });

  test("the greatest moment of an end load stands where b x = pi/4", () => {
    const one = cases.find(({ x_Mmin }) => x_Mmin !== undefined) as BedCase;
    const beta = (one.k / (4 * one.EI)) ** 0.25;
    const { extremes } = onBed(one, 30 / beta, 3000, 0);
    expectNear([extremes.momentLeast.x], [one.x_Mmin as number], 1e-2);
  });
});

describe("ground springs", () => {
  const bed = { modulus: 20e6 * 0.1, greatestPush: 47_880 * 0.1 };
  const stations = [0, 0.4, 1.6, 2.8, 4];

  test("the whole length bears once", () => {
    expect(tributaryLengths(4, stations)).toEqual(
      [0.2, 0.8, 1.2, 1.2, 0.6].map((part) => expect.closeTo(part, 12)),
    );
    const whole = groundSprings(4, stations, bed).reduce((sum, { cap = 0 }) => sum + cap, 0);
    expectNear([whole], [4 * bed.greatestPush], 1e-12);
  });

  test("a stiff rail pressed evenly settles evenly, by load over modulus", () => {
    const rail = { length: 4, stiffness: 1e10 };
    const { supports } = heldRail(
      rail,
      { uniform: -900 },
      groundSprings(
        4,
        Array.from({ length: 21 }, (_, i) => i / 5),
        bed,
      ),
    );
    const middle = supports[10]?.deflection ?? 0;
    expectNear([middle], [-900 / bed.modulus], 1e-6);
  });

  test("stations that do not rise are refused", () => {
    expect(() => groundSprings(4, [0, 2, 2], bed)).toThrow("out-of-range");
  });
});
