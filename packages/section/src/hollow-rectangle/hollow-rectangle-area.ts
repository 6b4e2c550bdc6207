import type { CornerRadii } from "../tube/corner-radii.ts";
import { hollowArea } from "./hollow-formulas.ts";
import { roundedRectangleArea } from "./rounded-rectangle.ts";

/**
 * Steel area of a square or rectangular tube with rounded corners.
 *
 * @param depth outside depth, m
 * @param width outside width, m
 * @param wall wall to compute with, m
 * @param corners corner radii over the wall
 * @returns m2
 * @example hollowRectangleArea(0.06, 0.06, 0.003, { outside: 2, inside: 1 }) // 6.61 cm2: 60x60x3.0
 */
export function hollowRectangleArea(
  depth: number,
  width: number,
  wall: number,
  corners: CornerRadii,
): number {
  return hollowArea.evaluate(
    roundedRectangleArea.evaluate(depth, width, corners.outside * wall),
    roundedRectangleArea.evaluate(depth - 2 * wall, width - 2 * wall, corners.inside * wall),
  );
}
