import {
  bendingStrength,
  compressionStrength,
  shearStrength,
  tensionStrength,
  torsionStrength,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { codeOf } from "./bolt-examples.ts";
import { box, grade50, round } from "./member-examples.ts";

const tube = round(0.05, 0.003);
const lengths: Readonly<Record<string, (length: number) => unknown>> = {
  "buckling about x": (length) =>
    compressionStrength(tube, grade50, { bucklingX: length, bucklingY: 1 }),
  "buckling about y": (length) =>
    compressionStrength(tube, grade50, { bucklingX: 1, bucklingY: length }),
  "held sideways": (length) => bendingStrength(box(0.1, 0.05, 0.003), "x", grade50, length),
  shear: (length) => shearStrength(tube, "x", grade50, length),
  torsion: (length) => torsionStrength(tube, grade50, length),
};

describe("lengths of members: 0.1 mm to 100 m", () => {
  test.each(Object.entries(lengths))("%s", (_, at) => {
    const code = (length: number) => codeOf(() => at(length));
    expect([1e-4, 0.5, 21, 100].map(code)).toEqual(["", "", "", ""]);
    expect([0, -1, Number.NaN].map(code)).toEqual(Array(3).fill("not-positive"));
    expect([0.99e-4, 100.1].map(code)).toEqual(Array(2).fill("out-of-range"));
  });
});

describe("a net section", () => {
  const code = (share: number, shearLag = 1) =>
    codeOf(() => tensionStrength(tube, grade50, { area: share * tube.area, shearLag }));

  test("above zero and up to the gross area", () => {
    expect([1e-6, 1].map((share) => code(share))).toEqual(["", ""]);
    const broken = [0, -0.1, 1 + 1e-9, Number.NaN];
    expect(broken.map((share) => code(share))).toEqual(Array(4).fill("out-of-range"));
  });

  test("a shear lag factor above zero and up to 1", () => {
    expect([1e-6, 1].map((lag) => code(0.5, lag))).toEqual(["", ""]);
    const broken = [0, -0.1, 1.001, Number.NaN];
    expect(broken.map((lag) => code(0.5, lag))).toEqual(Array(4).fill("out-of-range"));
  });
});
