import fc from "fast-check";
import { expect, test } from "vitest";
import { factorise, substitute } from "../../packages/frame/src/rail/banded.ts";
import { seed } from "./arbitrary-rail.ts";

const small = fc.integer({ min: -3, max: 3 });

test(`a symmetric band solved gives back what it was multiplied with, whatever stands beyond it (seed ${seed})`, () => {
  const rows = fc.array(fc.record({ next: small, second: small, wanted: small }), {
    minLength: 1,
    maxLength: 9,
  });
  fc.assert(
    fc.property(rows, fc.integer({ min: 5, max: 9 }), (given, beyond) => {
      const size = given.length;
      const room = (value: (row: number) => number) =>
        Float64Array.from({ length: size + 2 }, (_, row) => (row < size ? value(row) : beyond));
      // Diagonally dominant, so positive definite; the last rows reach beyond the unknowns, too.
      const diagonal = room(() => 13);
      const next = room((row) => given[row]?.next ?? NaN);
      const second = room((row) => given[row]?.second ?? NaN);
      const wanted = given.map((row) => row.wanted);
      const entry = (row: number, column: number): number => {
        const [low, high] = [Math.min(row, column), Math.max(row, column)];
        const from = [diagonal, next, second][high - low];
        return from?.[low] ?? 0;
      };
      const right = room((row) =>
        wanted.reduce((sum, value, column) => sum + entry(row, column) * value, 0),
      );
      factorise(size, diagonal, next, second);
      substitute(size, diagonal, next, second, right);
      const found = [...right.subarray(0, size)];
      expect(found).toEqual(wanted.map((value) => expect.closeTo(value, 12)));
    }),
    { seed, numRuns: 100 },
  );
});
