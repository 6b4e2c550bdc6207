import { derived, formula } from "@hoopstay/core";

const radius = ["R", "radius of the disc", "length"] as const;
const width = ["w", "width of the strip through its middle", "length"] as const;
const citation = derived("strip through the middle of a disc, integrated in closed form");

/** Half the strip's end angle is asin(w/2R), written with atan. */
const angleOf = (R: number, half: number): number =>
  Math.atan(half / Math.sqrt(R * R - half * half));
const angle = "atan(w / 2 / sqrt(R^2 - w^2 / 4))";

export const stripArea = formula({
  id: "strip-area",
  symbol: "A_s",
  name: "area of the strip",
  measure: "area",
  arguments: [radius, width],
  expression: `w * sqrt(R^2 - w^2 / 4) + 2 * R^2 * ${angle}`,
  citation,
  range: "w below 2 R",
  evaluate: (R, w) => {
    const half = w / 2;
    return w * Math.sqrt(R * R - half * half) + 2 * R * R * angleOf(R, half);
  },
});

/** About the axis across the strip: its ends lie at the extreme fibres. */
export const stripLengthwise = formula({
  id: "strip-lengthwise",
  symbol: "I_s",
  name: "second moment of the strip about the axis across it",
  measure: "second-moment",
  arguments: [radius, width],
  expression: `w / 12 * (5 * R^2 - w^2 / 2) * sqrt(R^2 - w^2 / 4) + R^4 / 2 * ${angle}`,
  citation,
  range: "w below 2 R",
  evaluate: (R, w) => {
    const half = w / 2;
    const square = R * R;
    const root = Math.sqrt(square - half * half);
    return (
      (w / 12) * (5 * square - 2 * half * half) * root + (square * square * angleOf(R, half)) / 2
    );
  },
});

/** About the axis along the strip, which is the neutral axis. */
export const stripCrosswise = formula({
  id: "strip-crosswise",
  symbol: "I_s",
  name: "second moment of the strip about the axis along it",
  measure: "second-moment",
  arguments: [radius, width],
  expression: `w / 4 * (w^2 / 2 - R^2) * sqrt(R^2 - w^2 / 4) + R^4 / 2 * ${angle}`,
  citation,
  range: "w below 2 R",
  evaluate: (R, w) => {
    const half = w / 2;
    const square = R * R;
    const root = Math.sqrt(square - half * half);
    return (w / 4) * (2 * half * half - square) * root + (square * square * angleOf(R, half)) / 2;
  },
});
