import { Given, readPublished, tubeOf } from "@hoopstay/evidence";
import {
  catalogue,
  findSize,
  massPerLength,
  nearestSizes,
  properties,
  tubeOfSize,
} from "@hoopstay/section";
import { describe, expect, test } from "vitest";
import { fixtureTexts } from "../published/fixture-texts.ts";

const lists = ["aisc-shapes-15", "uk-section-lists", "asme-b36-10"];
const published = readPublished(fixtureTexts).filter(
  ({ source, quantity, file }) =>
    lists.includes(source) && quantity === "tube properties" && !file.endsWith("design-wall.yaml"),
);

/** The European lists print sizes without the prefix of their list. */
function designation(place: string, name: string): string {
  return `${/^[CH]F[CS]HS/.exec(place)?.[0] ?? ""}${name.split(",")[0]}`;
}

describe("catalogue", () => {
  for (const file of published) {
    test.each(file.cases.map((one) => [designation(file.place, one.name), one] as const))(
      `${file.file}: %s is listed with the published dimensions`,
      (name, one) => {
        const size = findSize(name);
        if (!size) throw new Error(`${name} is not in the catalogue`);
        const listed = tubeOfSize(size, false);
        const given = tubeOf(new Given(file, one));
        expect(listed.kind).toBe(given.kind);
        expect(massPerLength(listed) / massPerLength(given)).toBeCloseTo(1, 12);
        const [ours, theirs] = [properties(listed), properties(given)];
        expect(ours.secondMomentX / theirs.secondMomentX).toBeCloseTo(1, 12);
        expect(ours.secondMomentY / theirs.secondMomentY).toBeCloseTo(1, 12);
      },
    );
  }

  test("every size has properties, finished or not, and a name of its own", () => {
    for (const size of catalogue) {
      expect(properties(tubeOfSize(size, true)).area, size.name).toBeGreaterThan(0);
      expect(findSize(size.name), size.name).toBe(size);
      for (const alias of size.aliases) expect(findSize(alias), alias).toBe(size);
    }
    expect(new Set(catalogue.map((size) => size.name)).size).toBe(catalogue.length);
  });

  test.each([
    ["hss4x3x3/16", "HSS4X3X3/16"],
    ["HSS 4 × 3 × 3/16", "HSS4X3X3/16"],
    ['HSS 2 1/2" x 2 1/2" x 1/8"', "HSS2-1/2X2-1/2X1/8"],
    ["HSS1.9x.12", "HSS1.900X0.120"],
    ["pipe 1-1/2 std", "Pipe1-1/2STD"],
    ["NPS 1–1/2 Schedule 40", "Pipe1-1/2STD"],
    ["Pipe 2 XS", "Pipe2XS"],
    ["chs 48.3 x 3", "CFCHS48.3x3.0"],
    ["HFCHS 48.3x3.20", "HFCHS48.3x3.2"],
    ["SHS80x80x4", "CFSHS80x80x4.0"],
    ["fence 1 5/8 x 16 ga bwg", "Fence 1-5/8 x 16ga BWG"],
    ["L2x2x1/8", "L2X2X1/8"],
  ])("%s is %s", (typed, name) => {
    expect(findSize(typed)?.name).toBe(name);
  });

  test.each(["", "HSS", "HSS4X3", "2 inch pipe", "1-5/8", "Fence 1-3/8 x 16ga BWG", "constructor"])(
    "%j is no size",
    (typed) => {
      expect(findSize(typed)).toBeUndefined();
    },
  );

  test("a hostile text is no size, at once", () => {
    expect(findSize(`1.${"0".repeat(1_000_000)}1`)).toBeUndefined();
  });

  test("a fence size carries its true diameter and is marked as not listed", () => {
    const size = findSize("Fence 1-5/8 x 16ga BWG");
    if (size?.shape.kind !== "round") throw new Error("no such round tube");
    expect(size.shape.outside / 0.0254).toBeCloseTo(1.66, 12);
    expect(size.shape.wall / 0.0254).toBeCloseTo(0.065, 12);
    expect(properties(tubeOfSize(size, true)).listed).toBe(false);
  });

  test("a slip of the pen finds the size meant", () => {
    expect(nearestSizes("HSS4X3X3/61", 1).map((size) => size.name)).toEqual(["HSS4X3X3/16"]);
    expect(nearestSizes("Fence 1-3/8 x 16ga BWG", 2).map((size) => size.name)).toEqual([
      "Fence 1-3/8 OD 1.315 x 16ga BWG",
      "Fence 1-3/8 OD 1.375 x 16ga BWG",
    ]);
    expect(nearestSizes("x".repeat(100_000), 3)).toHaveLength(3);
  });
});
