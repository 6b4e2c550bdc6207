import { cite, derived, formula, judged } from "@hoopstay/core";
import { rowChoiceCitation } from "@hoopstay/load";

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
  citation: cite("asce-7-16", "26.2, mean roof height; the springing taken as the eave", "memory"),
  evaluate: (springing, rise) => springing + rise / 2,
});

export const springingShare = formula({
  id: "springing-share",
  symbol: "k_z",
  name: "height of the springing over rise: up to 0.1 the row springing from the ground runs alone, up to 0.5 both rows",
  measure: "ratio",
  arguments: [
    ["z_s", "height of the springing", "length"],
    ["f", "rise of the shell", "length"],
  ],
  expression: "z_s / f",
  citation: rowChoiceCitation,
  evaluate: (springing, rise) => springing / rise,
});

export const hoopArc = formula({
  id: "hoop-arc",
  symbol: "s_a",
  name: "length of the arc of the shell, springing to springing",
  measure: "length",
  arguments: [
    ["R", "radius of the arcs", "length"],
    ["t_0", "angle of the springing, seen from the arc's centre", "angle"],
    ["t_1", "angle of the crown, seen from the arc's centre", "angle"],
  ],
  expression: "2 * R * (t_1 - t_0)",
  citation: derived("two mirrored arcs"),
  evaluate: (R, t0, t1) => 2 * R * (t1 - t0),
});

const quarterAsWall = judged(
  "an arch has no wall of its own: its outer quarters count as side walls in the enclosure class",
);

export const sideWallArea = formula({
  id: "side-wall-area",
  symbol: "A_side",
  name: "gross area of a side wall: the strip and the outer quarter of the arc",
  measure: "area",
  arguments: [
    ["L", "length of the shell", "length"],
    ["z_s", "height of the springing", "length"],
    ["s_a", "length of the arc", "length"],
  ],
  expression: "L * (z_s + s_a / 4)",
  citation: quarterAsWall,
  evaluate: (length, springing, arc) => length * (springing + arc / 4),
});

export const roofArea = formula({
  id: "roof-gross-area",
  symbol: "A_roof",
  name: "gross area of the roof: the middle half of the arc",
  measure: "area",
  arguments: [
    ["L", "length of the shell", "length"],
    ["s_a", "length of the arc", "length"],
  ],
  expression: "L * s_a / 2",
  citation: quarterAsWall,
  evaluate: (length, arc) => (length * arc) / 2,
});

export const restArea = formula({
  id: "rest-gross-area",
  symbol: "A_gi",
  name: "gross area of the envelope without this wall",
  measure: "area",
  arguments: [
    ["A_side", "gross area of a side wall", "area"],
    ["A_e", "gross area of an end wall", "area"],
    ["A_roof", "gross area of the roof", "area"],
    ["A_g", "gross area of this wall", "area"],
  ],
  expression: "2 * A_side + 2 * A_e + A_roof - A_g",
  citation: cite("asce-7-16", "26.2, partially enclosed: A_gi", "second-hand"),
  evaluate: (side, end, roof, own) => 2 * side + 2 * end + roof - own,
});

export const basePressure = formula({
  id: "base-pressure",
  symbol: "q",
  name: "K_d q_h: velocity pressure with K_d in it once (in q_h by 7-16, beside it by 7-22), for every bracket of coefficients",
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
  citation: cite("asce-7-16", "26.2, partially enclosed: more than 1.10", "second-hand"),
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
  citation: cite("asce-7-16", "26.2, partially enclosed: 0.20 at most", "second-hand"),
  evaluate: (openings, gross) => openings / gross,
});
