import { caseStride, type ParentLoad, type WindSurfaces, writeCases } from "@hoopstay/load";
import { describe, expect, test } from "vitest";

// Numbers that no wind would give: each part of either parent has its own share in a case.
const across: ParentLoad = {
  fx: 2,
  fxArch: 3,
  fy: 5,
  fz: 7,
  mxHorizontal: 11,
  mxVertical: 13,
  myHorizontal: 17,
  myVertical: 19,
  mz: 23,
};
const along: ParentLoad = {
  fx: 29,
  fxArch: 0,
  fy: 31,
  fz: 37,
  mxHorizontal: 41,
  mxVertical: 43,
  myHorizontal: 47,
  myVertical: 53,
  mz: 59,
};
const surfaces: WindSurfaces = {
  covering: "covered",
  ends: { front: true, back: true },
  across: [[{ sense: 1, set: null, load: across }]],
  along: [[{ sense: 1, set: null, load: along }]],
  inside: { fy: 61, fz: 67, mx: 71 },
};

describe("whatever pushes along either axis counts in a case (ASCE 7-16, figure 27.3-8)", () => {
  const into = new Float64Array(4 * caseStride);
  writeCases(surfaces, [-0.5], into);
  const rows = [0, 1, 2, 3].map((row) => [...into.slice(row * caseStride, (row + 1) * caseStride)]);

  test("case 1: a parent by itself, with inside pressure", () => {
    expect(rows[0]).toEqual([2, 5 - 30.5, 7 - 33.5, 11 + 13 - 35.5, 17 + 19, 23, 2 - 3]);
    expect(rows[1]).toEqual([29, 31 - 30.5, 37 - 33.5, 41 + 43 - 35.5, 47 + 53, 59, 29]);
  });

  test("case 3: three quarters of both, the uplift of either in full", () => {
    const [fx, fy] = [0.75 * (2 + 29), 0.75 * (5 + 31) - 30.5];
    const mz = 0.75 * (23 + 59);
    const mx = 0.75 * (11 + 41) - 35.5;
    const my = 0.75 * (17 + 47);
    expect(rows[2]).toEqual([fx, fy, 7 - 33.5, mx + 13, my + 19, mz, fx - 0.75 * 3]);
    expect(rows[3]).toEqual([fx, fy, 37 - 33.5, mx + 43, my + 53, mz, fx - 0.75 * 3]);
  });
});
