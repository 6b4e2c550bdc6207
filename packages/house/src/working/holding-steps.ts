import { type Chapter, derived, formula, sumOf } from "@hoopstay/core";
import { leverMoment } from "@hoopstay/load";
import { type BaseLine, combinationCitations, type HoldingTerms } from "@hoopstay/stability";
import { mustAgree } from "./must-agree.ts";
import { workOnce } from "./work-once.ts";

export const factoredWeight = formula({
  id: "factored-weight",
  symbol: "D_n",
  name: "factored weight normal to the ground",
  measure: "force",
  arguments: [
    ["gamma_D", "weight factor of the combination", "ratio"],
    ["D", "weight", "force"],
    ["s", "slope of the ground", "angle"],
  ],
  expression: "gamma_D * D * cos(s)",
  citation: derived("component normal to the ground"),
  evaluate: (factor, weight, slope) => factor * weight * Math.cos(slope),
});

const armAbout = formula({
  id: "arm-about-line",
  symbol: "a_D",
  name: "arm about the base line",
  measure: "length",
  arguments: [
    ["a", "distance of the line from the middle of the house", "length"],
    ["n_x", "outward normal of the line, across", "ratio"],
    ["x", "place across, right is plus", "length"],
    ["n_y", "outward normal of the line, along", "ratio"],
    ["y", "place along, front is plus", "length"],
  ],
  expression: "a - n_x * x - n_y * y",
  citation: derived("distance from the line, inward"),
  evaluate: (distance, nx, x, ny, y) => distance - nx * x - ny * y,
});

const anchorDown = formula({
  id: "anchor-down",
  symbol: "T_1",
  name: "what an anchor counts downward",
  measure: "force",
  arguments: [
    ["gamma_T", "factor on the allowable pull in the combination: 1 in ASD, 1.5 in LRFD", "ratio"],
    ["T", "allowable pull along the tether", "force"],
    ["s_a", "sine of the tether's angle above the ground", "ratio"],
  ],
  expression: "gamma_T * T * s_a",
  citation: combinationCitations.anchor,
  evaluate: (factor, pull, sine) => factor * pull * sine,
});

/** The factored weight times its arm about a line. */
export function weightAbout(chapter: Chapter, terms: HoldingTerms, line: BaseLine): void {
  const { x, y } = terms.holding.weight;
  const { distance, nx, ny } = line;
  const note = "centre of the weight";
  const arm = workOnce(chapter, armAbout, [distance, nx, x, ny, y], { note });
  workOnce(chapter, leverMoment, [terms.deadNormal, arm], { symbol: "R_D" });
}

/** What every anchor counts, about a line where there is one, and the sum. */
export function anchorSteps(
  chapter: Chapter,
  { holding, combination }: HoldingTerms,
  line: BaseLine | null,
  whole: number,
  names: readonly string[],
): void {
  const measure = line ? ("moment" as const) : ("force" as const);
  const terms: { symbol: string; name: string; measure: typeof measure }[] = [];
  const values: number[] = [];
  holding.anchors.forEach(({ x, y, pull, toward }, index) => {
    const mark = String(index + 1);
    const arm = line ? line.distance - line.nx * x - line.ny * y : 1;
    if (pull === 0 || arm <= 0) return;
    const inputs = [combination.anchor, pull, -toward[2]] as const;
    const down = workOnce(chapter, anchorDown, inputs, {
      symbol: `T_${mark}`,
      note: names[index] ?? "",
    });
    let value = down;
    if (line) {
      const { distance, nx, ny } = line;
      const a = workOnce(chapter, armAbout, [distance, nx, x, ny, y], { symbol: `a_${mark}` });
      value = workOnce(chapter, leverMoment, [down, a], { symbol: `M_T${mark}` });
    }
    terms.push({ symbol: line ? `M_T${mark}` : `T_${mark}`, name: "", measure });
    values.push(value);
  });
  const words = line ? "anchors times their arms; none on or beyond the line" : "all anchors";
  const sum = sumOf("anchor-sum", "R_T", words, measure, terms, derived("sum"));
  const worked = workOnce(chapter, sum, values);
  mustAgree("the anchors", worked, whole, Math.max(Math.abs(whole), 1));
}
