import { cite, formula } from "@hoopstay/core";
import { designWallOf } from "./properties.ts";
import type { RectangularTube, RoundTube } from "./tube.ts";

export const flatOverWallFormula = formula({
  id: "flat-over-wall",
  symbol: "b/t",
  name: "flat part of a side over the wall",
  measure: "ratio",
  arguments: [
    ["B", "outside width of the side", "length"],
    ["t", "design wall", "length"],
  ],
  expression: "(B - 3 * t) / t",
  citation: cite("aisc-360-22", "section B4.1b(d)", "read"),
  evaluate: (B, t) => (B - 3 * t) / t,
});

export const diameterOverWallFormula = formula({
  id: "diameter-over-wall",
  symbol: "D/t",
  name: "outside diameter over the wall",
  measure: "ratio",
  arguments: [
    ["D", "outside diameter", "length"],
    ["t", "design wall", "length"],
  ],
  expression: "D / t",
  citation: cite("aisc-360-22", "section B4.1b", "read"),
  evaluate: (D, t) => D / t,
});

/**
 * Flat part of the sides of a rectangular tube over the design wall, the slenderness that decides
 * local buckling; the flat is the side less three walls. The European lists use the same flat.
 *
 * @param tube rectangular tube, m
 * @returns ratios: `width` of the sides along the width (b/t), `depth` of the sides along the
 *   depth (h/t)
 * @example // HSS3X3X1/8: 22.9
 */
export function flatOverWall(tube: RectangularTube): { width: number; depth: number } {
  const wall = designWallOf(tube);
  return {
    width: flatOverWallFormula.evaluate(tube.width, wall),
    depth: flatOverWallFormula.evaluate(tube.depth, wall),
  };
}

/**
 * Outside diameter over the design wall of a round tube.
 *
 * @param tube round tube, m
 * @returns ratio
 * @example // HSS1.660X0.140: 12.8
 */
export function diameterOverWall(tube: RoundTube): number {
  return diameterOverWallFormula.evaluate(tube.outside, designWallOf(tube));
}
