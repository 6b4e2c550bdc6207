import { describe, expect, test } from "vitest";
import { addTo, bandOf, residual } from "../../packages/frame/src/plan/band.ts";
import { factorise } from "../../packages/frame/src/plan/band-lu.ts";

/** A symmetric band from the entries on its diagonal and to the right of it. */
function bandFrom(rows: readonly (readonly number[])[], reach: number) {
  const band = bandOf(rows.length, reach);
  for (const [i, row] of rows.entries()) {
    for (const [k, entry] of row.entries()) addTo(band, i, i + k, entry);
  }
  return band;
}

test("what is left of a right-hand side: each row less its entries on both sides of the diagonal", () => {
  const band = bandFrom([[2, 3], [5, 7], [11]], 1);
  const rest = Float64Array.from([9, 9, 9]);
  residual(band, Float64Array.from([100, 200, 300]), Float64Array.from([1, 10, 100]), rest);
  expect([...rest]).toEqual([100 - 2 - 30, 200 - 3 - 50 - 700, 300 - 70 - 1100]);
});

describe("pivots", () => {
  test("count against the greatest entry of their whole row, left of the diagonal too", () => {
    // Behind column 0, in which the second row goes first, rows 0 1 1 and 0 0 0.001 are left; the
    // latter came from a row whose greatest entry is its first, of 1.
    expect(factorise(bandFrom([[0, 1, 1], [0, 0], [1e-3]], 2)).least).toBe(1e-3);
  });

  test("rows are exchanged for a better one only", () => {
    expect([...factorise(bandFrom([[1, 1], [0]], 1)).exchanged]).toEqual([0, 1]);
    expect([...factorise(bandFrom([[1, 2], [0]], 1)).exchanged]).toEqual([1, 1]);
  });
});
