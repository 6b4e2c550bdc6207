import { derived, formula } from "@hoopstay/core";

const seen = derived("the wind sees the outside of the hoop tubes");

const grown = (id: string, symbol: string, name: string, expression: string, share: number) =>
  formula({
    id,
    symbol,
    name,
    measure: "length",
    arguments: [
      ["a", "centre-line size", "length"],
      ["d", "diameter of the hoop tube", "length"],
    ],
    expression,
    citation: seen,
    evaluate: (size, diameter) => size + share * diameter,
  });

export const shellSpan = grown("shell-span", "b", "span of the shell", "a + d", 1);
export const shellRise = grown("shell-rise", "f", "rise of the shell", "a + d / 2", 0.5);
export const shellLength = grown("shell-length", "L", "length of the shell", "a + d", 1);

export const springingHeight = formula({
  id: "springing-height",
  symbol: "z_s",
  name: "height of the springing: rail, shoulder, straight leg",
  measure: "length",
  arguments: [
    ["z_r", "rail and shoulder", "length"],
    ["l", "straight leg", "length"],
  ],
  expression: "z_r + l",
  citation: derived("heights added"),
  evaluate: (below, leg) => below + leg,
});

export const riseRatioOf = formula({
  id: "rise-ratio",
  symbol: "r",
  name: "rise over span",
  measure: "ratio",
  arguments: [
    ["f", "rise of the shell", "length"],
    ["b", "span of the shell", "length"],
  ],
  expression: "f / b",
  citation: derived("argument of the arched-roof table"),
  range: "0 < r <= 0.6",
  evaluate: (rise, span) => rise / span,
});

export const meanRoofHeight = formula({
  id: "mean-roof-height",
  symbol: "h",
  name: "mean roof height: half way from springing to crown",
  measure: "length",
  arguments: [
    ["z_s", "height of the springing", "length"],
    ["f", "rise of the shell", "length"],
  ],
  expression: "z_s + f / 2",
  citation: derived("average of eave and crown"),
  evaluate: (springing, rise) => springing + rise / 2,
});

export const basePressure = formula({
  id: "base-pressure",
  symbol: "q",
  name: "K_d q_h: what every bracket of coefficients is multiplied with",
  measure: "pressure",
  arguments: [
    ["q_1", "K_d q_h at 1 m/s", "pressure"],
    ["V", "map speed", "speed"],
  ],
  expression: "q_1 * V^2",
  citation: derived("velocity pressure scales with the square of the speed"),
  evaluate: (perSpeedSquared, speed) => perSpeedSquared * speed * speed,
});

export const flooredHeight = formula({
  id: "profile-height",
  symbol: "z",
  name: "height in the wind profile, not below 15 ft",
  measure: "length",
  arguments: [["h", "mean roof height", "length"]],
  expression: "max(h, 4.572)",
  citation: derived("lowest height of the exposure table, 15 ft = 4.572 m"),
  evaluate: (height) => Math.max(height, 4.572),
});

export const openingShare = formula({
  id: "opening-share",
  symbol: "k_o",
  name: "openings of this wall over those of the rest of the envelope",
  measure: "ratio",
  arguments: [
    ["A_o", "openings of the wall", "area"],
    ["A_oi", "openings of the rest", "area"],
  ],
  expression: "A_o / A_oi",
  citation: derived("partially enclosed needs more than 1.10"),
  evaluate: (opening, others) => opening / others,
});

export const restShare = formula({
  id: "rest-share",
  symbol: "k_i",
  name: "openings of the rest of the envelope over its gross area",
  measure: "ratio",
  arguments: [
    ["A_oi", "openings of the rest", "area"],
    ["A_gi", "gross area of the rest", "area"],
  ],
  expression: "A_oi / A_gi",
  citation: derived("partially enclosed needs 0.20 at most"),
  evaluate: (openings, gross) => openings / gross,
});
