import { judged } from "@hoopstay/core";

/** Sides of the polygon that stands for a circle of friction or of side pull. */
export const polygonSides = 32;

export const polygonCitation = judged(
  "circles of friction and of side pull by a polygon of 32 sides within: up to 0.5 % on the safe side",
);

/**
 * Corners of the polygon inscribed in the unit circle, x and y in turn. The eighths are set by
 * reflection, so that a mirrored house meets exactly mirrored directions.
 */
export const polygonCorners: Float64Array = (() => {
  const corners = new Float64Array(2 * polygonSides);
  const quarter = polygonSides / 4;
  for (let side = 0; side < quarter; side += 1) {
    const angle = (2 * Math.PI * side) / polygonSides;
    const [c, s] = side === 0 ? [1, 0] : [Math.cos(angle), Math.sin(angle)];
    const turned = [c, s, -s, c, -c, -s, s, -c];
    for (let turn = 0; turn < 4; turn += 1) {
      corners[2 * (side + turn * quarter)] = turned[2 * turn] as number;
      corners[2 * (side + turn * quarter) + 1] = turned[2 * turn + 1] as number;
    }
  }
  return corners;
})();
