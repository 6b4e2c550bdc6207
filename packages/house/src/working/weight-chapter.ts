import { Chapter, derived, formula } from "@hoopstay/core";
import {
  angleArea,
  bothOutlines,
  conventionRules,
  cornerRadii,
  flatArea,
  poundSteelWeight,
  roundArea,
  steelWeight,
  type Tube,
  toleranceOf,
  weightPerLength,
  zincOnOneFace,
  zincWeight,
} from "@hoopstay/section";
import type { BarPart } from "../model/part.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { hollowAreaStep } from "./hollow-steps.ts";
import { mustAgree } from "./must-agree.ts";

const toleratedSize = formula({
  id: "tolerated-size",
  symbol: "t",
  name: "wall at the end of its tolerance",
  measure: "length",
  arguments: [
    ["k", "factor of the tolerance on the nominal wall", "ratio"],
    ["t_n", "nominal wall", "length"],
  ],
  expression: "k * t_n",
  citation: derived("tolerance on the wall"),
  evaluate: (factor, wall) => factor * wall,
});

const weightWithZinc = formula({
  id: "weight-with-zinc",
  symbol: "w",
  name: "weight per length with zinc",
  measure: "force-per-length",
  arguments: [
    ["w_s", "steel per length", "force-per-length"],
    ["w_z", "zinc per length", "force-per-length"],
  ],
  expression: "w_s + w_z",
  citation: derived("sum"),
  evaluate: (steel, zinc) => steel + zinc,
});

const toleratedWeight = formula({
  id: "tolerated-weight",
  symbol: "w",
  name: "weight per length at the end of its tolerance",
  measure: "force-per-length",
  arguments: [
    ["k", "factor of the tolerance on the weight", "ratio"],
    ["w_n", "nominal weight per length", "force-per-length"],
  ],
  expression: "k * w_n",
  citation: derived("tolerance on the weight"),
  evaluate: (factor, weight) => factor * weight,
});

type End = "low" | "high";
const perLength = "force-per-length" as const;

/** Steel area with a given wall, step by step. */
function areaOf(chapter: Chapter, tube: Tube, wall: number): number {
  switch (tube.kind) {
    case "round":
      return chapter.work(roundArea, [tube.outside, wall]);
    case "rectangular": {
      const corners = cornerRadii(tube.convention, tube.wall);
      const { depth, width } = tube;
      return hollowAreaStep(chapter, { depth, width, t: wall, corners });
    }
    case "flat":
      return chapter.work(flatArea, [tube.width, tube.thickness]);
    case "angle":
      return chapter.work(angleArea, [tube.legs[0], tube.legs[1], tube.thickness]);
    case "bar":
      return chapter.work(roundArea, [tube.diameter, tube.diameter / 2]);
  }
}

function weightSteps(chapter: Chapter, tube: Tube, end: End): number {
  const tolerance = toleranceOf(tube);
  const factor = tolerance[end];
  const symbol = `w_${end}`;
  if (tube.kind !== "round" && tube.kind !== "rectangular") {
    const nominal = { ...steelWeight, measure: perLength };
    const weight = chapter.work(nominal, [areaOf(chapter, tube, 0), 1], { symbol: "w_n" });
    const cited = { ...toleratedWeight, citation: tolerance.citation };
    return chapter.work(cited, [factor, weight], { symbol });
  }
  const cited = { ...toleratedSize, citation: tolerance.citation };
  const wall = chapter.work(cited, [factor, tube.wall], { symbol: `t_${end}` });
  const pounds = conventionRules[tube.convention].steel === "490 lb/ft3";
  const law = pounds ? poundSteelWeight : steelWeight;
  const steel = { ...law, measure: perLength };
  const galvanized = tube.galvanized && end === "high";
  const area = areaOf(chapter, tube, wall);
  const weight = chapter.work(steel, [area, 1], { symbol: galvanized ? "w_s" : symbol });
  if (!galvanized) return weight;
  const zinc = chapter.work(
    { ...zincWeight, measure: perLength },
    [bothOutlines(tube), zincOnOneFace(tube.wall), 1],
    { symbol: "w_z" },
  );
  return chapter.work(weightWithZinc, [weight, zinc], { symbol });
}

/** Low and high weight per length of every tube, bar and plate size of the take-off. */
export function weightChapter({ house }: Evaluation): Chapter | null {
  const sizes = new Map<string, { tube: Tube; of: string[] }>();
  for (const part of house.parts) {
    if (part.kind !== "bar") continue;
    const { tube, what } = part satisfies BarPart;
    const key = JSON.stringify(tube);
    const known = sizes.get(key) ?? { tube, of: [] };
    known.of.push(what);
    sizes.set(key, known);
  }
  if (sizes.size === 0) return null;
  const chapter = new Chapter("W", "Weight per length of every tube of the take-off, low and high");
  for (const { tube, of } of sizes.values()) {
    const known = weightPerLength(tube);
    for (const end of ["low", "high"] as const) {
      const from = chapter.steps.length;
      const weight = weightSteps(chapter, tube, end);
      const step = chapter.steps[from];
      if (step) chapter.steps[from] = { ...step, note: `${of.join(", ")}; ${end} weight` };
      mustAgree(`the weight of ${of.join(", ")}`, weight, known[end], known[end]);
    }
  }
  return chapter;
}
