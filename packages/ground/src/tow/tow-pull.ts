import { derived, formula, judged } from "@hoopstay/core";

const slope = ["s", "slope of the ground, uphill", "angle"] as const;

export const towPull = formula({
  id: "tow-pull",
  symbol: "P",
  name: "pull to drag the house uphill",
  measure: "force",
  arguments: [["W", "weight", "force"], ["mu", "friction of the skids", "ratio"], slope],
  expression: "W * (mu * cos(s) + sin(s))",
  citation: derived("friction and slope; ploughing of the skid noses is not in it"),
  range: "s from 0 to 45 degrees: steeper the pull falls again, and nobody tows there",
  evaluate: (weight, friction, s) => weight * (friction * Math.cos(s) + Math.sin(s)),
});

export const drawbarPull = formula({
  id: "drawbar-pull",
  symbol: "P_a",
  name: "pull that the tractor has left on the slope",
  measure: "force",
  arguments: [
    ["c", "net pull over weight on the driven wheels", "ratio"],
    ["W_d", "weight on the driven wheels", "force"],
    ["W_t", "weight of the tractor", "force"],
    slope,
  ],
  expression: "c * W_d * cos(s) - W_t * sin(s)",
  citation: derived("traction less what the tractor needs for itself"),
  evaluate: (ratio, driven, tractor, s) => ratio * driven * Math.cos(s) - tractor * Math.sin(s),
});

export const shareOfLeftSkid = formula({
  id: "left-skid-share",
  symbol: "r_left",
  name: "share of the weight, and of the friction, on the left skid",
  measure: "ratio",
  arguments: [
    ["x", "centre of gravity to the right of the left rail", "length"],
    ["s_r", "distance between the rails", "length"],
  ],
  expression: "1 - x / s_r",
  citation: derived("lever rule across the two rails, on level ground"),
  range: "x from 0 to s_r: outside, the house stands on one rail only",
  evaluate: (x, span) => 1 - x / span,
});

export const skidPull = formula({
  id: "skid-pull",
  symbol: "P_s",
  name: "pull on one skid",
  measure: "force",
  arguments: [
    ["r", "share of that skid", "ratio"],
    ["P", "pull of the house", "force"],
  ],
  expression: "r * P",
  citation: derived("the same friction under both skids"),
  evaluate: (share, pull) => share * pull,
});

export const breakOutPull = formula({
  id: "break-out-pull",
  symbol: "P_b",
  name: "pull to break frozen or sunken skids out",
  measure: "force",
  arguments: [
    ["f_b", "times the usual starting pull", "ratio"],
    ["P", "starting pull", "force"],
  ],
  expression: "f_b * P",
  citation: judged("1.5 to 2 times; for the driver's information, no verdict rests on it"),
  evaluate: (times, pull) => times * pull,
});
