import {
  type Anchor,
  type BaseLine,
  type CheckTerms,
  extremesOf,
  lrfd,
  type Slope,
} from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { takeSlides } from "../../packages/stability/src/governing-slides.ts";
import { WorstOfChecks } from "../../packages/stability/src/worst.ts";

const none = Number.POSITIVE_INFINITY;
const loose = { weightMoment: 1e9, anchorMoment: 0, slopeMoment: 0 };
const upright: Anchor = { x: 2, y: 0, pull: 1000, toward: [0, 0, -1] };
/** Aslant, but so weak that friction alone is left. */
const aslant: Anchor = { x: 2, y: 0, pull: 0, toward: [0.6, 0, -0.8] };
const unknown: Slope = { angle: 0.1, downhill: null };
const across: Slope = { angle: 0.1, downhill: [0, 1] };

interface House {
  readonly deadNormal?: number;
  readonly downslope?: number;
  readonly slope?: Slope | null;
  readonly anchor?: Anchor;
  readonly span?: number;
}

/** Wind across, its uplift and its moment about y per unit of K_d q_h; the arch adds nothing. */
type Row = readonly [fx: number, fz: number, my?: number];

/**
 * The worst slide at 100 Pa of a house with a friction of 0.5, in LRFD, so that the wind is not
 * lessened; how many slides were worked out one by one, and how often the tethers were looked at.
 */
function slides(of: House, rows: readonly Row[]) {
  const { deadNormal = 6000, downslope = 0, slope = null, anchor = upright, span = 4 } = of;
  const lines = ([1, -1] as const).map((nx): BaseLine => {
    const check = nx === 1 ? "tip-right" : "tip-left";
    return { check, nx, ny: 0, distance: span / 2, moved: false };
  });
  let [worked, looks] = [0, 0];
  const holding = {
    weight: { name: "low" as const, W: 1, x: 0, y: 0, z: 1 },
    get anchors() {
      looks += 1;
      return [anchor];
    },
    slope,
    friction: 0.5,
  };
  const terms = {
    holding,
    combination: lrfd,
    deadNormal,
    downslope,
    anchorDown: 0,
    sideways: anchor === aslant,
  };
  const held = {
    terms,
    lines: lines.map((line) => ({ line, terms: loose })),
    get sliding() {
      worked += 1;
      return { terms, right: loose, left: loose };
    },
  };
  const all: CheckTerms = { combination: lrfd, pressure: 100, holdings: [held] };
  const table = {
    count: rows.length,
    components: Float64Array.from(rows.flatMap(([fx, fz, my = 0]) => [fx, 0, fz, 0, my, 0, fx])),
  };
  const worst = new WorstOfChecks();
  takeSlides(worst, all, table, extremesOf(table, lines, [anchor]));
  return { ratio: worst.ratio("slide"), limit: worst.limit("slide"), worked, looks };
}

describe("slides on friction alone, in closed form", () => {
  test("(q h + S) / (mu (D - q v)), and where it reaches one", () => {
    const { ratio, limit } = slides({ downslope: 500, slope: unknown }, [[5, 20]]);
    expect(ratio).toBeCloseTo((500 + 500) / (0.5 * (6000 - 2000)), 12);
    expect(limit).toBeCloseTo((3000 - 500) / (5 + 0.5 * 20), 9);
  });

  test("pressed down as fast as it is pushed, or faster, it never slides", () => {
    for (const fz of [-10, -11, -20, -1000]) expect(slides({}, [[5, fz]]).limit).toBe(none);
    expect(slides({}, [[5, -9.99]]).limit / (3000 / 0.005)).toBeCloseTo(1, 9);
  });

  test("a slope that takes all friction slides on a breath of wind, unless this presses it down", () => {
    const verge = { downslope: 3000, slope: unknown };
    expect(slides(verge, [[5, 0]]).limit).toBe(0);
    expect(slides(verge, [[5, -20]]).limit).toBe(none);
    expect(slides({ ...verge, downslope: 3001 }, [[5, -20]]).limit).toBe(0);
  });

  test("lifted off the ground: any push is beyond bounds, none is none", () => {
    expect(slides({}, [[1, 100]]).ratio).toBe(none);
    expect(slides({}, [[0, 100]]).ratio).toBe(0);
  });
});

describe("which slides are worked out one by one", () => {
  const rows: readonly Row[] = [
    [10, 20],
    [-10, 20],
  ];

  test("none without tethers aslant where the slope is none, or straight along the wind", () => {
    expect(slides({}, rows).worked).toBe(0);
    expect(slides({ downslope: 300, slope: unknown }, rows).worked).toBe(0);
    expect(slides({ downslope: 300, slope: across }, rows).worked).toBeGreaterThan(0);
    expect(slides({ anchor: aslant }, rows).worked).toBeGreaterThan(0);
    expect(slides({ anchor: aslant, downslope: 300, slope: unknown }, rows).worked).toBeGreaterThan(
      0,
    );
  });

  test("on level ground all, but their tethers only once for all weights", () => {
    const { worked, looks } = slides({ anchor: aslant }, rows);
    expect(worked).toBe(4);
    expect(looks).toBe(0);
  });

  test("on a slope those that no other beats, wherever these stand", () => {
    const worked = (...of: Row[]) =>
      slides({ anchor: aslant, downslope: 300, slope: across }, of).worked;
    expect(worked([10, 20])).toBe(1);
    expect(worked([10, 20], [10, 20])).toBe(1);
    expect(worked([10, 20], [10, 10])).toBe(1);
    expect(worked([10, 10], [10, 20])).toBe(1);
    expect(worked([10, 10], [10, 5], [10, 20])).toBe(1);
    expect(worked([10, 20], [-10, 20])).toBe(2);
    expect(worked([10, 20], [10, 20, 5], [10, 20, -5])).toBe(3);
  });

  test("the greatest uplift governs, however narrow the house", () => {
    for (const span of [0, 4]) {
      const of = { anchor: aslant, downslope: 300, slope: across, span };
      for (const order of [
        [20, 10],
        [10, 20],
        [10, 20, 5],
      ]) {
        // Push 400 N across a slope of 300 N: 500 N on 0.5 (6000 - 2000) N.
        const { ratio } = slides(
          of,
          order.map((fz) => [4, fz] as const),
        );
        expect(ratio, `${order}`).toBeCloseTo(0.25, 12);
      }
    }
  });
});
