import { cite, constant, judged } from "@hoopstay/core";

const sled = (place: string) => cite("farm-sled-tests", place, "read");

/** Never used for holding: friction that may be counted against wind is lower. */
export const draggingFrictionLow = constant(
  "dragging-friction-low",
  "mu_low",
  "friction of a dragged skid, lowest measured running",
  0.31,
  "ratio",
  sled("sled running on firm grass"),
);

export const draggingFrictionHigh = constant(
  "dragging-friction-high",
  "mu_high",
  "friction of a dragged skid, highest measured running",
  0.51,
  "ratio",
  sled("highest running pull over weight"),
);

export const startingFriction = constant(
  "starting-friction",
  "mu_start",
  "friction of a skid at the start of a pull",
  0.58,
  "ratio",
  sled("sled starting on firm grass"),
);

/** After freezing or sinking a start may take this many times the usual starting pull. */
export const breakOut = {
  least: 1.5,
  most: 2,
  citation: judged("frozen or sunken skids; for the driver's information, no verdict rests on it"),
} as const;
