import { derived, formula } from "@hoopstay/core";
import { sizes } from "./arc-sizes.ts";

export const halfSpan = formula({
  id: "half-span",
  symbol: "x_s",
  name: "distance of a springing from the middle",
  measure: "length",
  arguments: [sizes.b],
  expression: "b / 2",
  citation: derived("half of the span on either side"),
  evaluate: (b) => b / 2,
});

export const quarterOfSpan = formula({
  id: "quarter-of-span",
  symbol: "x_q",
  name: "where the quarter of the span ends, from the middle",
  measure: "length",
  arguments: [sizes.b],
  expression: "b / 4",
  citation: derived("a quarter of the span from each springing"),
  evaluate: (b) => b / 4,
});

export const aboveGround = formula({
  id: "above-ground",
  symbol: "z",
  name: "height above the ground of a point of the arc",
  measure: "length",
  arguments: [sizes.zs, ["y", "its height above the springing", "length"]],
  expression: "z_s + y",
  citation: derived("heights added"),
  evaluate: (springing, height) => springing + height,
});
