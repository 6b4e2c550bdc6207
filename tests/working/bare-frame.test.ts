import { chainOf, evaluate, makeReview } from "@hoopstay/house";
import { describe, expect, it } from "vitest";
import { bareAreaOf } from "../../packages/house/src/model/bar-face.ts";
import { sloping } from "../hold-down/example-house.ts";

const files = { house: "", site: "" };
const meta = { version: "0", digest: "0", date: null, files, inputs: [] };
const evaluation = evaluate(sloping.house, sloping.site);
const review = makeReview(evaluation, meta, { full: true, chain: chainOf(evaluation) });

describe("the bare frame", () => {
  it("shows the wind the largest size of every kind of bar, angles and flats too", () => {
    const place = { x: 0, y: 0, z: 1 };
    const bar = { kind: "bar", what: "brace", count: 3, length: 2, frame: true, ...place } as const;
    const area = (tube: Parameters<typeof bareAreaOf>[0]["tube"]) => bareAreaOf({ ...bar, tube });
    expect(area({ kind: "angle", legs: [0.05, 0.03], thickness: 0.003 })).toBeCloseTo(0.3, 12);
    expect(area({ kind: "flat", width: 0.04, thickness: 0.005 })).toBeCloseTo(0.24, 12);
    expect(area({ kind: "bar", diameter: 0.012 })).toBeCloseTo(0.072, 12);
  });
});

describe("the numbers of the governing checks", () => {
  const ids = new Set(review.cases.map(({ id }) => id));

  it("name the case and the state behind each, which are among the cases of the report", () => {
    for (const { check, from } of review.governing) {
      for (const one of [
        from.ratio.ASD,
        from.ratio.LRFD,
        from.codeSpeed.ASD,
        from.codeSpeed.LRFD,
      ]) {
        if (check !== "together") expect(ids).toContain(one.id);
        expect(review.states.map(({ words }) => words)).toContain(one.state);
      }
    }
  });

  it("have a working of the lowest wind that ends in the code speed of the table", () => {
    for (const [place, row] of review.governing.entries()) {
      if (row.check === "together" || !Number.isFinite(row.codeSpeed.ASD)) continue;
      const chapter =
        review.chapters.find(({ id }) => id === `L${place + 1}`) ??
        review.chapters.find(({ id }) => id === `C${place + 1}`);
      const speed = chapter?.steps.find(({ formula }) => formula.id === "code-speed");
      expect(speed?.value).toBeCloseTo(row.codeSpeed.ASD, 9);
    }
  });
});
