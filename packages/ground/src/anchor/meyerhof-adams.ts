import { type Chapter, cite, formula } from "@hoopstay/core";
import { requireWithin } from "../soil/require.ts";
import { bracket, interpolated } from "./common-formulas.ts";
import { embedmentRatio } from "./plate-formulas.ts";

const citation = cite("das-earth-anchors", "Meyerhof and Adams 1968, table of K_u and m", "memory");

/** Friction angle in degrees, K_u, m and critical H/B of a square or circular plate. */
export const meyerhofAdams = {
  citation,
  rows: [
    { angle: 20, upliftCoefficient: 0.856, shape: 0.05, critical: 2.5 },
    { angle: 25, upliftCoefficient: 0.888, shape: 0.1, critical: 3 },
    { angle: 30, upliftCoefficient: 0.92, shape: 0.15, critical: 4 },
    { angle: 35, upliftCoefficient: 0.936, shape: 0.25, critical: 5 },
    { angle: 40, upliftCoefficient: 0.96, shape: 0.35, critical: 7 },
    { angle: 45, upliftCoefficient: 0.96, shape: 0.5, critical: 9 },
  ],
} as const;

/** The form of Meyerhof and Adams; four rows of Niroumand, appendix G, agree [read]. */
export const breakoutFactor = formula({
  id: "breakout-factor-meyerhof-adams",
  symbol: "F_qM",
  name: "breakout factor of a square or circular plate in sand",
  measure: "ratio",
  arguments: [
    ["m", "shape coefficient", "ratio"],
    ["lambda", "depth over breadth, at most the critical", "ratio"],
    ["K_u", "uplift coefficient", "ratio"],
    ["phi", "friction angle", "angle"],
  ],
  expression: "1 + 2 * (1 + m * lambda) * lambda * K_u * tan(phi)",
  citation,
  range: "phi 20 to 45 degrees",
  evaluate: (m, ratio, coefficient, angle) =>
    1 + 2 * (1 + m * ratio) * ratio * coefficient * Math.tan(angle),
});

/**
 * K_u, m and critical H/B at a friction angle, each on a straight line between rows 5 degrees
 * apart.
 *
 * @param frictionAngle rad, 20 to 45 degrees
 * @throws Refusal `ground-outside`
 */
export function sandCoefficients(frictionAngle: number, chapter: Chapter) {
  const degrees = (frictionAngle * 180) / Math.PI;
  requireWithin(
    degrees,
    [20, 45],
    "a friction angle in degrees",
    "No breakout factors are printed there: test the anchor.",
  );
  const [before, after] = bracket(meyerhofAdams.rows, (row) => row.angle, degrees);
  const at = (symbol: string, column: "upliftCoefficient" | "shape" | "critical") =>
    chapter.work(
      { ...interpolated, citation },
      [degrees, before.angle, after.angle, before[column], after[column]],
      { symbol },
    );
  return {
    upliftCoefficient: at("K_u", "upliftCoefficient"),
    shape: at("m", "shape"),
    critical: at("lambda_cr", "critical"),
  };
}

/**
 * Breakout factor by Meyerhof and Adams 1968: parameters are interpolated in phi, then the factor is
 * computed. Beyond the critical H/B it stays.
 *
 * @param breadth side or diameter, m
 * @param depth vertical depth of the plate's centre, m
 * @param frictionAngle rad
 * @throws Refusal `ground-outside` for phi outside 20 to 45 degrees
 */
export function meyerhofAdamsFactor(
  breadth: number,
  depth: number,
  frictionAngle: number,
  chapter: Chapter,
): number {
  const { upliftCoefficient, shape, critical } = sandCoefficients(frictionAngle, chapter);
  const ratio = chapter.work(embedmentRatio, [depth, breadth, critical]);
  return chapter.work(breakoutFactor, [shape, ratio, upliftCoefficient, frictionAngle]);
}
