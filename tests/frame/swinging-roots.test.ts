import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mostRoots, swingingRoots } from "../../packages/frame/src/hoop/swinging-roots.ts";
import { seed } from "./hoop-arbitrary.ts";

const rootsOf = (a: number, b: number, c: number, d: number, end: number): number[] => {
  const into = new Float64Array(mostRoots);
  const count = swingingRoots(a, b, c, d, end, into);
  return [...into.subarray(0, count)];
};
const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));
const right = Math.PI / 2;

describe("roots of (a + b t) cos t + (c + d t) sin t", () => {
  test("cos and sin alone, ends left out", () => {
    expect(rootsOf(1, 0, 0, 0, 2)).toEqual(near(right));
    expect(rootsOf(1, 0, 0, 0, right)).toEqual([]);
    expect(rootsOf(1, 0, 0, 0, 1.5)).toEqual([]);
    expect(rootsOf(0, 0, 1, 0, 3)).toEqual([]);
    expect(rootsOf(-1, 0, 1, 0, right)).toEqual(near(right / 2));
    expect(rootsOf(1, 0, -1, 0, right)).toEqual(near(right / 2));
    expect(rootsOf(1, 0, 1, 0, right)).toEqual([]);
    expect(rootsOf(0, 0, 0, 0, right)).toEqual([]);
  });

  /** (t - r) cos(t - p): roots at r and where the cosine has its own. */
  const product = (r: number, p: number) =>
    [-r * Math.cos(p), Math.cos(p), -r * Math.sin(p), Math.sin(p)] as const;

  test.each([
    [0.4, 0, [0.4]],
    [0.4, -0.5, [0.4, right - 0.5]],
    [1.2, -0.5, [right - 0.5, 1.2]],
    [2, -0.5, [right - 0.5]],
    [-1, -0.5, [right - 0.5]],
    [-1, 0.5, []],
    [0.7, Math.PI - 0.9, [0.7 - 0, right - 0.9].sort()],
    [0.3, right, [0.3]],
    [0, -0.5, [right - 0.5]],
  ])("a line through %d times a cosine about %d", (r, p, expected) => {
    expect(rootsOf(...product(r, p), right)).toEqual(near(...expected));
  });

  test(`every change of sign has its root, and there is no other (seed ${seed})`, () => {
    const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const part = fc.oneof(fc.constantFrom(0, 1, -1), double(-3, 3));
    const four = fc.oneof(
      fc.tuple(part, part, part, part),
      fc.tuple(double(0, right), double(-1.5, 1.5)).map(([r, p]) => product(r, p)),
    );
    let several = 0;
    fc.assert(
      fc.property(four, double(0.1, right), ([a, b, c, d], end) => {
        const value = (t: number) => (a + b * t) * Math.cos(t) + (c + d * t) * Math.sin(t);
        const none = 1e-12 * Math.max(...[a, b, c, d].map(Math.abs));
        const roots = rootsOf(a, b, c, d, end);
        if (roots.length > 1) several += 1;
        for (const [i, root] of roots.entries()) {
          expect(root).toBeGreaterThan(roots[i - 1] ?? 0);
          expect(root).toBeLessThan(end);
          expect(Math.abs(value(root))).toBeLessThanOrEqual(none);
        }
        for (let place = 1; place < 500; place += 1) {
          const [from, to] = [(end * place) / 500, (end * (place + 1)) / 500];
          const [before, after] = [value(from), value(to)];
          // Next to a root rounding alone may make a sign.
          if (Math.min(Math.abs(before), Math.abs(after)) <= none) continue;
          const found = roots.filter((root) => root > from && root < to).length;
          if ((found % 2 === 1) !== before * after < 0) throw new Error(`from ${from} to ${to}`);
        }
      }),
      { seed, numRuns: 300 },
    );
    expect(several).toBeGreaterThan(0);
  });

  test("a line times a sine, or times a cosine", () => {
    expect(rootsOf(0, 0, -1, 2, 1.5)).toEqual(near(0.5));
    expect(rootsOf(-1, 2, 0, 0, 1.5)).toEqual(near(0.5));
  });

  /** The function of this kind with roots at three places: minors of its values there. */
  const through = (places: readonly number[]): [number, number, number, number] => {
    const rows = places.map((t) => [Math.cos(t), t * Math.cos(t), Math.sin(t), t * Math.sin(t)]);
    const minor = (without: number): number => {
      const [x, y, z] = rows.map((row) => row.filter((_, column) => column !== without));
      const entry = (row: number[] | undefined, column: number) => row?.[column % 3] ?? NaN;
      return [0, 1, 2].reduce(
        (sum, i) =>
          sum +
          entry(x, i) * (entry(y, i + 1) * entry(z, i + 2) - entry(y, i + 2) * entry(z, i + 1)),
        0,
      );
    };
    return [minor(0), -minor(1), minor(2), -minor(3)];
  };
  const expectAll = (places: readonly number[], end: number): void =>
    expect(rootsOf(...through(places), end)).toEqual(
      places.map((place) => expect.closeTo(place, 9)),
    );
  /** Three places between 0 and an end, rising, none near another or an end. */
  const three = fc
    .tuple(
      fc.constantFrom(right, 2.9),
      ...[0, 1, 2].map((third) =>
        fc.double({ min: (third + 0.1) / 3, max: (third + 0.9) / 3, noNaN: true }),
      ),
    )
    .map(([end, ...shares]) => ({ end, places: shares.map((share) => share * end) }));

  test(`any three places are the roots of one, and all three are found (seed ${seed})`, () => {
    fc.assert(
      fc.property(three, ({ places, end }) => {
        expectAll(places, end);
      }),
      { seed, numRuns: 300 },
    );
  });

  test.each([
    [0.05, 0.55, 1.05],
    [0.1, 0.2, 0.3],
    [0.05, 1.2, 1.5],
    ...[
      [0.28, 0.33, 0.37],
      [0.62, 0.66, 0.7],
      [0.71, 0.73, 0.87],
    ].map((shares) => shares.map((share) => share * right)),
  ])("roots at %d, %d and %d", (...places) => {
    expectAll(places, right);
  });

  test("roots so near each other that rounding hides where they are: as the signs at the ends say", () => {
    for (const gap of [1e-3, 1e-4, 1e-5]) {
      const [a, b, c, d] = through([0.5, 0.5 + gap, 0.5 + 2 * gap]);
      const differ = Math.sign(a) !== Math.sign(c + d * right);
      expect(rootsOf(a, b, c, d, right).length % 2).toBe(differ ? 1 : 0);
    }
  });

  test.each([0.3, 0.8, 1.297])("three roots in one at %d: sin u - u cos u about it", (place) => {
    const [cos, sin] = [Math.cos(place), Math.sin(place)];
    const found = rootsOf(place * cos - sin, -cos, cos + place * sin, -sin, right);
    // Rounding leaves a third of the digits.
    expect(found.map((root) => root.toFixed(4))).toContain(place.toFixed(4));
  });

  test("on a short arc a root is as good as on a long one, a part of the arc", () => {
    for (let share = 0.01; share < 1; share += 0.01) {
      const found = rootsOf(...product(share * 1e-3, 0.3), 1e-3);
      expect(found.map((root) => root / 1e-3)).toEqual([expect.closeTo(share, 13)]);
    }
  });

  test(`by Newton's steps, not by halving (seed ${seed})`, () => {
    const { cos } = Math;
    const cosinesFor = (work: () => void): number => {
      let count = 0;
      Math.cos = (t) => {
        count += 1;
        return cos(t);
      };
      try {
        work();
      } finally {
        Math.cos = cos;
      }
      return count;
    };
    // Two searches for a bend and four for a root, with their ends and some eight steps of four
    // cosines; to halve down to rounding takes 47 steps in each.
    const most = 6 * (3 * 2 + 8 * 4);
    fc.assert(
      fc.property(three, ({ places, end }) => {
        const four = through(places);
        expect(cosinesFor(() => rootsOf(...four, end))).toBeLessThanOrEqual(most);
      }),
      { seed, numRuns: 300 },
    );
    expect(
      cosinesFor(() => rootsOf(-1, 0, 1, 0, right)),
      "none for cos and sin alone",
    ).toBe(0);
  });

  test("three of them, where a line nearly follows the tangent", () => {
    // t cos t - k sin t with k just under 1 has a root beyond 0; a shift brings the one at 0 inside.
    const found = rootsOf(-1e-4, 1, -0.99, 0.003, right);
    const value = (t: number) => (-1e-4 + t) * Math.cos(t) + (-0.99 + 0.003 * t) * Math.sin(t);
    for (const root of found) expect(Math.abs(value(root))).toBeLessThan(1e-12);
    let changes = 0;
    for (let place = 0; place < 20_000; place += 1) {
      const [from, to] = [(right * place) / 20_000, (right * (place + 1)) / 20_000];
      if (value(from) * value(to) < 0) changes += 1;
    }
    expect(found).toHaveLength(changes);
    expect(changes).toBeGreaterThan(1);
  });
});
