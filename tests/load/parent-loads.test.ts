import {
  acrossParent,
  alongParent,
  bareParent,
  type EndsPresent,
  endWallMoments,
  insideEndWallMoments,
  type Obstacle,
  type ParentLoad,
  type RoofForce,
  type Sense,
  type Shell,
  shellOf,
  sumAcross,
  sumAlong,
  throughDrag,
  type Zone,
} from "@hoopstay/load";
import { describe, expect, test } from "vitest";

// ASCE 7-16, 26.11 and figure 27.3-1: G 0.85; C_p 0.8 windward, -0.3 leeward at L/B = 2, -0.7 at
// the sides; figure 29.3-1 and 29.4-1, bare tubes 1.2, free walls and boxes 1.3, film 0.02.
const shell: Shell = {
  ...shellOf({
    shape: "round",
    span: 4.95,
    rise: 2,
    length: 9.95,
    springing: 0.5,
    hoopDiameter: 0.05,
    hoopCount: 6,
  }),
  endArea: 2,
  endCentroid: 3,
};
const roof: RoofForce = { drag: 1, archDrag: 0.5, uplift: 2, dragMoment: 3, upliftMoment: 4 };
const box: Obstacle = { x: 2, y: 3, z: 1.5, areaAcross: 4, areaAlong: 5, outside: true };
const inner: Obstacle = { ...box, outside: false };
const both: EndsPresent = { front: true, back: true };
const none: EndsPresent = { front: false, back: false };
const frame = { dragArea: 0.6, x: 0.1, y: 0.2, z: 1 };
const senses: readonly Sense[] = [1, -1];

/** Force and moment about the origin that were added. */
const added = (one: ParentLoad, other: ParentLoad) => ({
  fx: one.fx - other.fx,
  fy: one.fy - other.fy,
  fz: one.fz - other.fz,
  mx: one.mxHorizontal - other.mxHorizontal,
  my: one.myHorizontal - other.myHorizontal,
  mz: one.mz - other.mz,
});
const near = (one: Readonly<Record<string, number>>, other: Readonly<Record<string, number>>) => {
  for (const key of Object.keys(other)) expect(one[key], key).toBeCloseTo(other[key] ?? 0, 12);
};

describe("a box adds its push at the middle of its face: moment is place cross force", () => {
  test.each(senses)("wind across, sense %s", (sense) => {
    const push = sense * 0.85 * 1.3 * 4;
    const expected = { fx: push, fy: 0, fz: 0, mx: 0, my: 1.5 * push, mz: -3 * push };
    const covered = (boxes: readonly Obstacle[]) => acrossParent(shell, roof, sense, both, boxes);
    near(added(covered([box]), covered([])), expected);
    near(added(covered([inner]), covered([])), { fx: 0, my: 0, mz: 0 });
    const bare = (boxes: readonly Obstacle[]) =>
      bareParent(shell, "across", sense, both, frame, boxes);
    near(added(bare([inner]), bare([])), expected);
    expect(covered([box]).fxArch).toBe(sense * 0.5);
  });

  test.each(senses)("wind along, sense %s", (sense) => {
    const push = sense * 0.85 * 1.3 * 5;
    const expected = { fx: 0, fy: push, fz: 0, mx: -1.5 * push, my: 0, mz: 2 * push };
    const covered = (boxes: readonly Obstacle[]) => alongParent(shell, roof, sense, both, boxes);
    near(added(covered([box]), covered([])), expected);
    near(added(covered([inner]), covered([])), { fy: 0, mx: 0, mz: 0 });
    const bare = (boxes: readonly Obstacle[]) =>
      bareParent(shell, "along", sense, both, frame, boxes);
    near(added(bare([inner]), bare([])), expected);
  });
});

describe("wind on tubes and end walls", () => {
  test.each(senses)("bare tubes push at their own centre, sense %s", (sense) => {
    const push = sense * 0.6;
    const across = bareParent(shell, "across", sense, both, frame, []);
    near({ ...across }, { fx: push, fy: 0, myHorizontal: push, mxHorizontal: 0, mz: -0.2 * push });
    const along = bareParent(shell, "along", sense, none, frame, []);
    near({ ...along }, { fx: 0, fy: push, mxHorizontal: -push, myHorizontal: 0, mz: 0.1 * push });
  });

  test.each(senses)("walls left standing on the bare frame, sense %s", (sense) => {
    const wall = sense * 1.3 * 2;
    const at = (ends: EndsPresent) => bareParent(shell, "along", sense, ends, frame, []);
    near(added(at(both), at(none)), { fy: 2 * wall, mx: -3 * 2 * wall });
    near(added(at({ front: true, back: false }), at(none)), { fy: wall, mx: -3 * wall });
    near(added(at({ front: false, back: true }), at(none)), { fy: wall, mx: -3 * wall });
    const across = (ends: EndsPresent) => bareParent(shell, "across", sense, ends, frame, []);
    near(added(across(both), across(none)), { fx: 0, fy: 0, mx: 0 });
  });

  test("closed by day: suction on both ends cancels; on one it pulls that end outward", () => {
    const at = (ends: EndsPresent) => acrossParent(shell, roof, 1, ends, []);
    const suction = 0.85 * 0.7 * 2;
    near({ ...at(both) }, { fy: 0, mxHorizontal: 0 });
    near({ ...at({ front: true, back: false }) }, { fy: suction, mxHorizontal: -3 * suction });
    near({ ...at({ front: false, back: true }) }, { fy: -suction, mxHorizontal: 3 * suction });
  });

  test("wind along: 0.8 to windward and 0.3 to leeward; without ends it blows through", () => {
    const at = (sense: Sense, ends: EndsPresent) => alongParent(shell, roof, sense, ends, []);
    const push = 0.85 * (0.8 + 0.3) * 2;
    near({ ...at(1, both) }, { fy: push, mxHorizontal: -3 * push, fz: 2, mxVertical: -4 });
    near({ ...at(-1, both) }, { fy: -push, mxHorizontal: 3 * push, fz: 2, mxVertical: 4 });
    const windward = 0.85 * 0.8 * 2;
    near({ ...at(1, { front: false, back: true }) }, { fy: windward, mxHorizontal: -3 * windward });
    const leeward = 0.85 * 0.3 * 2;
    near({ ...at(1, { front: true, back: false }) }, { fy: leeward, mxHorizontal: -3 * leeward });
    const { frame: tubes, friction, height } = throughDrag(shell);
    expect(tubes).toBeCloseTo(1.2 * 0.05 * shell.hoopLine * 6, 12);
    expect(friction).toBeCloseTo(0.02 * shell.hoopLine * 10, 12);
    const through = tubes + friction;
    near({ ...at(1, none) }, { fy: through, mxHorizontal: -height * through });
    near({ ...at(-1, none) }, { fy: -through, mxHorizontal: height * through });
  });
});

describe("what the end walls take of the moment about the ground", () => {
  test.each(senses)(
    "together it is all of it where nothing else is in the way, sense %s",
    (sense) => {
      for (const ends of [both, { front: true, back: false }, { front: false, back: true }]) {
        const across = endWallMoments(shell, "covered", ends, "across", sense);
        const all = acrossParent(shell, roof, sense, ends, []).mxHorizontal;
        expect(across.front + across.back).toBeCloseTo(all, 12);
        const along = endWallMoments(shell, "covered", ends, "along", sense);
        const allAlong = alongParent(shell, roof, sense, ends, []).mxHorizontal;
        expect(along.front + along.back).toBeCloseTo(allAlong, 12);
        const bare = endWallMoments(shell, "bare", ends, "along", sense);
        const standing = bareParent(shell, "along", sense, ends, frame, []).mxHorizontal;
        const tubes = bareParent(shell, "along", sense, none, frame, []).mxHorizontal;
        expect(bare.front + bare.back).toBeCloseTo(standing - tubes, 12);
      }
    },
  );

  test("each by itself: suction outward, 0.8 inward to windward, 0.3 outward to leeward", () => {
    const q = 0.85 * 2 * 3;
    near(
      { ...endWallMoments(shell, "covered", both, "across", 1) },
      { front: -0.7 * q, back: 0.7 * q },
    );
    near(
      { ...endWallMoments(shell, "covered", both, "along", 1) },
      { front: -0.3 * q, back: -0.8 * q },
    );
    near(
      { ...endWallMoments(shell, "covered", both, "along", -1) },
      { front: 0.8 * q, back: 0.3 * q },
    );
    near({ ...endWallMoments(shell, "bare", both, "along", 1) }, { front: -7.8, back: -7.8 });
    near({ ...endWallMoments(shell, "bare", both, "across", 1) }, { front: 0, back: 0 });
    near({ ...endWallMoments(shell, "covered", none, "along", 1) }, { front: 0, back: 0 });
    near({ ...insideEndWallMoments(shell, both) }, { front: -6, back: 6 });
  });
});

describe("sums over zones", () => {
  const at = { shapeCoefficient: 1, name: "?", from: 1, to: 4 } as const;
  const strip: Zone = {
    ...at,
    part: "windward strip",
    coefficient: 2,
    a: { x: -2, z: 0 },
    b: { x: -2, z: 1 },
  };
  const arch: Zone = {
    ...at,
    part: "arch",
    coefficient: -1,
    a: { x: -2, z: 1 },
    b: { x: 2, z: 3 },
  };

  test("across: the drag of the arch is told by itself", () => {
    const { drag, archDrag, uplift } = sumAcross([strip, arch]);
    expect([drag, archDrag, uplift]).toEqual([2 * 3 * 1 - 3 * 2, -3 * 2, 3 * 4]);
    expect(sumAcross([arch, arch]).archDrag).toBe(-12);
  });

  test("along: only the arch lifts, at the middle of the zone", () => {
    const { drag, uplift, upliftMoment } = sumAlong([strip, arch]);
    expect([drag, uplift, upliftMoment]).toEqual([0, 12, -2.5 * 12]);
    const leaning = { ...strip, b: { x: -1, z: 1 } };
    expect(sumAlong([leaning]).uplift).toBe(0);
  });
});

describe("the shell of a semicircle on legs, closed forms", () => {
  const [r, s] = [2, 0.75];
  const round = shellOf({
    shape: "round",
    span: 2 * r - 0.04,
    rise: r - 0.02,
    length: 10,
    springing: s,
    hoopDiameter: 0.04,
    hoopCount: 4,
  });

  test("end area and its middle, line of a hoop and its middle, mean roof height", () => {
    const half = (Math.PI * r * r) / 2;
    const area = half + 2 * r * s;
    expect(round.endArea).toBeCloseTo(area, 10);
    const moment = half * (s + (4 * r) / (3 * Math.PI)) + r * s * s;
    expect(round.endCentroid).toBeCloseTo(moment / area, 10);
    const line = Math.PI * r + 2 * s;
    expect(round.hoopLine).toBeCloseTo(line, 10);
    const lineMoment = Math.PI * r * (s + (2 * r) / Math.PI) + s * s;
    expect(round.hoopLineCentroid).toBeCloseTo(lineMoment / line, 10);
    expect(round.h).toBeCloseTo(s + r / 2, 10);
  });
});
