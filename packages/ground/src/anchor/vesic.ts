import { type Chapter, cite, derived, formula } from "@hoopstay/core";
import { requireWithin } from "../soil/require.ts";
import { bracket, interpolated } from "./common-formulas.ts";
import { embedmentRatio } from "./plate-formulas.ts";

const citation = cite("vesic-1971", "breakout factors of a shallow circular plate", "memory");

/** Friction angle in degrees and F_q at each H/B. The row of 20 degrees is not to hand. */
export const vesic = {
  citation,
  ratios: [0.5, 1, 1.5, 2.5, 5],
  rows: [
    { angle: 0, factors: [1, 1, 1, 1, 1] },
    { angle: 10, factors: [1.18, 1.37, 1.59, 2.08, 3.67] },
    { angle: 30, factors: [1.52, 2.11, 2.79, 4.41, 9.89] },
    { angle: 40, factors: [1.65, 2.41, 3.3, 5.45, 13] },
    { angle: 50, factors: [1.73, 2.61, 3.56, 6.27, 15.7] },
  ],
} as const;

const growth = formula({
  id: "vesic-growth",
  symbol: "g",
  name: "growth of Vesic's factor per unit of depth over breadth",
  measure: "ratio",
  arguments: [
    ["F", "breakout factor as printed", "ratio"],
    ["lambda", "depth over breadth of its column", "ratio"],
  ],
  expression: "(F - 1) / lambda",
  citation,
  evaluate: (factor, ratio) => (factor - 1) / ratio,
});

const factorFromGrowth = formula({
  id: "breakout-factor-vesic",
  symbol: "F_qV",
  name: "breakout factor of a circular plate in sand, Vesic",
  measure: "ratio",
  arguments: [
    ["g", "growth per unit of depth over breadth", "ratio"],
    ["lambda", "depth over breadth, at most 5", "ratio"],
  ],
  expression: "1 + g * lambda",
  citation: derived(
    "the printed factors are 1 + a lambda + b lambda^2; between columns this is it",
  ),
  range: "lambda 0.5 to 5, phi 0 to 50 degrees",
  evaluate: (g, ratio) => 1 + g * ratio,
});

/**
 * Vesic's breakout factor. Between columns (F_q - 1)/(H/B) runs on a straight line, which hits
 * every printed value and stays below the chord between them (up to 5 % at H/B 3.75); between rows
 * it runs on a straight line in phi. From 10 to 30 degrees the chord stands in for the missing row
 * of 20. Beyond H/B 5 the factor stays. Above H/B 0.5 only.
 *
 * @param breadth side or diameter, m
 * @param depth vertical depth of the plate's centre, m
 * @param frictionAngle rad, 0 to 50 degrees
 * @throws Refusal `ground-outside` for H/B below 0.5 or phi outside the rows
 */
export function vesicFactor(
  breadth: number,
  depth: number,
  frictionAngle: number,
  chapter: Chapter,
): number {
  const degrees = (frictionAngle * 180) / Math.PI;
  const mend = "No breakout factors are printed there: set the plate deeper or test the anchor.";
  requireWithin(degrees, [0, 50], "a friction angle in degrees", mend);
  requireWithin(depth / breadth, [0.5, Number.MAX_VALUE], "depth over plate breadth", mend);
  const ratio = chapter.work(embedmentRatio, [depth, breadth, 5]);
  const columns = vesic.ratios.map((at, place) => ({ at, place }));
  const [left, right] = bracket(columns, (column) => column.at, ratio);
  const rowGrowth = (row: (typeof vesic.rows)[number]): number => {
    const [one, other] = [left, right].map(({ at, place }) =>
      chapter.work(growth, [row.factors[place] as number, at], { note: `row of ${row.angle} deg` }),
    ) as [number, number];
    return chapter.work(interpolated, [ratio, left.at, right.at, one, other], { symbol: "g" });
  };
  const [before, after] = bracket(vesic.rows, (row) => row.angle, degrees);
  const values = [degrees, before.angle, after.angle, rowGrowth(before), rowGrowth(after)] as const;
  const between = chapter.work(interpolated, values, { symbol: "g" });
  return chapter.work(factorFromGrowth, [between, ratio]);
}
