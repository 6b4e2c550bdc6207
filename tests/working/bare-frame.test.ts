import { chainOf, evaluate, makeReview } from "@hoopstay/house";
import { describe, expect, it } from "vitest";
import { bareDragAreaOf } from "../../packages/house/src/model/bar-face.ts";
import type { BarPart } from "../../packages/house/src/model/part.ts";
import { sloping } from "../hold-down/example-house.ts";

const files = { house: "", site: "" };
const meta = { version: "0", digest: "0", date: null, files, inputs: [] };
const evaluation = evaluate(sloping.house, sloping.site);
const review = makeReview(evaluation, meta, { full: true, chain: chainOf(evaluation) });

describe("the bare frame", () => {
  const place = { x: 0, y: 0, z: 1 };
  const bars = { kind: "bar", what: "brace", count: 3, length: 2, frame: true, ...place } as const;
  const drag = (tube: BarPart["tube"]) => bareDragAreaOf({ ...bars, tube });
  const [round, flat] = [1.2, 2.0];
  const plain = { convention: "other", galvanized: false } as const;

  it.each([
    ["an angle", { kind: "angle", legs: [0.05, 0.03], thickness: 0.003 }, flat * 0.3],
    ["a flat", { kind: "flat", width: 0.04, thickness: 0.005 }, flat * 0.24],
    [
      "a rectangular tube",
      { kind: "rectangular", depth: 0.05, width: 0.1, wall: 0.003, ...plain },
      flat * 0.6,
    ],
    ["a round bar", { kind: "bar", diameter: 0.012 }, round * 0.072],
    ["a round tube", { kind: "round", outside: 0.06, wall: 0.002, ...plain }, round * 0.36],
  ] as const)("shows the wind its largest size: %s (ASCE 7-16 figure 29.4-2)", (_, tube, area) => {
    expect(drag(tube)).toBeCloseTo(area, 12);
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
