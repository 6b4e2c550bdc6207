import { describe, expect, test } from "vitest";
import { TetherRows } from "../../packages/stability/src/tether-rows.ts";

describe("what tethers do along the wind of every row, by hand", () => {
  const anchors = [
    { x: -2, y: 0, pull: 1000, toward: [0.6, 0, -0.8] },
    { x: 2, y: 0, pull: 2000, toward: [0, -0.5, -Math.sqrt(0.75)] },
    { x: 0, y: 0, pull: 500, toward: [0, 0.8, -0.6] },
    { x: 3, y: 0, pull: 400, toward: [0.8, 0, -0.6] },
  ] as const;
  // Toward (0.6, 0.8); without the arch straight along y. Then no wind at all, and toward -x.
  const rows = [3, 4, 0, 0, 0, 0, 0, 0, 0, 9, 0, 0, 0, 0, -5, 0, 0, 0, 0, 0, -5];
  const found = new TetherRows({ count: 3, components: Float64Array.from(rows) }, anchors);
  const parts = (row: number, scale: number) => {
    const { against, left, right, middle } = found.at(row, scale);
    return [against, left, right, middle];
  };
  const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 9));

  test("with the arch and without it", () => {
    expect(parts(0, 1)).toEqual(near(2000 * 0.4, 360, 400 * 0.48, 500 * 0.64));
    expect(parts(1, 1)).toEqual(near(1000, 0, 0, 400));
  });

  test("none in a calm; all against where the wind turns round", () => {
    expect(parts(2, 1)).toEqual(near(0, 0, 0, 0));
    expect(parts(4, 1)).toEqual(near(600 + 320, 0, 0, 0));
  });

  test("as much more as the allowable pulls are", () => {
    expect(parts(0, 1.5)).toEqual(near(1200, 540, 288, 480));
    expect(parts(0, 1)).toEqual(near(800, 360, 192, 320));
  });
});
