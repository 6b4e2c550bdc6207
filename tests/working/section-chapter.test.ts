import { Chapter } from "@hoopstay/core";
import { chainOf, evaluate, makeReview } from "@hoopstay/house";
import { conventionRules, properties, type Tube } from "@hoopstay/section";
import { describe, expect, it } from "vitest";
import { steelOfTube } from "../../packages/house/src/chain/steel.ts";
import { sectionSteps } from "../../packages/house/src/working/section-steps.ts";
import { sloping } from "../hold-down/example-house.ts";

const tubes: readonly (readonly [string, Tube])[] = [
  [
    "round tube",
    { kind: "round", outside: 0.06, wall: 0.003, convention: "AISC", galvanized: false },
  ],
  [
    "square tube",
    {
      kind: "rectangular",
      depth: 0.05,
      width: 0.05,
      wall: 0.003,
      convention: "AISC",
      galvanized: false,
    },
  ],
  [
    "cold-formed European tube, on its side",
    {
      kind: "rectangular",
      depth: 0.04,
      width: 0.08,
      wall: 0.004,
      convention: "EN 10219-2",
      galvanized: false,
    },
  ],
  ["round bar", { kind: "bar", diameter: 0.016 }],
  ["angle of unequal legs", { kind: "angle", legs: [0.06, 0.04], thickness: 0.005 }],
  ["flat", { kind: "flat", width: 0.05, thickness: 0.006 }],
];

describe("the working of a section", () => {
  it.each(tubes)("comes to every property that the checks take: %s", (_, tube) => {
    const chapter = new Chapter("X", "one section");
    sectionSteps(chapter, tube);
    const all = properties(tube);
    const worked = new Set(chapter.steps.map(({ value }) => value));
    const names = ["area", "secondMomentX", "secondMomentY", "torsionConstant"] as const;
    for (const name of [...names, "radiusX", "radiusY"] as const) {
      expect(
        [...worked].some((value) => Math.abs(value / all[name] - 1) < 1e-12),
        name,
      ).toBe(true);
    }
  });
});

describe("the chapter on sections and steel", () => {
  const evaluation = evaluate(sloping.house, sloping.site);
  const meta = {
    version: "0",
    digest: "0",
    date: null,
    files: { house: "", site: "" },
    inputs: [],
  };
  const review = makeReview(evaluation, meta, { full: true, chain: chainOf(evaluation) });
  const chapter = review.chapters.find(({ id }) => id === "X") as Chapter;
  const { hoop } = sloping.house.links;

  it("has the hoop's steel, and its design wall as AISC 360-22 B4.2 has it", () => {
    const { yieldStrength, citation } = steelOfTube(hoop);
    const told = chapter.steps.find(
      ({ symbol, value }) => symbol === "F_y" && value === yieldStrength,
    );
    expect(told?.formula.citation).toStrictEqual(citation);
    if (hoop.tube.kind !== "round") throw new Error("the hoop is round");
    const factor = conventionRules[hoop.tube.convention].wallFactor.value;
    const { wall } = hoop.tube;
    expect(
      chapter.steps.some(({ symbol, value }) => symbol === "t" && value === factor * wall),
    ).toBe(true);
  });

  it("stands before every link", () => {
    const ids = review.chapters.map(({ id }) => id);
    expect(ids.indexOf("X")).toBeLessThan(ids.indexOf("S1"));
    expect(review.chapters.find(({ id }) => id === "S1")?.restsOn).toContain("X");
  });
});
