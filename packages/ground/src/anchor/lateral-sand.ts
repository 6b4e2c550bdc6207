import { cite, derived, formula, power } from "@hoopstay/core";

const broms = cite("broms-1964", "short free-head pile in sand, 3 K_p gamma z", "memory");
const plastic = derived("moments about the shaft's end, as in Broms 1964, with the plate added");
const pull = ["e", "height of the pull above ground", "length"] as const;
const depth = ["L", "depth of the shaft's end", "length"] as const;
const rate = ["k", "growth of reaction with depth, per length of shaft", "pressure"] as const;
const plate = ["R", "force of the stabiliser beyond the shaft", "force"] as const;
const plateDepth = ["z_R", "depth at which it acts", "length"] as const;
const top = ["z_1", "top of the stabiliser", "length"] as const;
const bottom = ["z_2", "bottom of the stabiliser", "length"] as const;

export const passiveCoefficient = formula({
  id: "passive-coefficient",
  symbol: "K_p",
  name: "passive pressure coefficient",
  measure: "ratio",
  arguments: [["phi", "friction angle", "angle"]],
  expression: "(1 + sin(phi)) / (1 - sin(phi))",
  citation: derived("Rankine"),
  evaluate: (angle) => (1 + Math.sin(angle)) / (1 - Math.sin(angle)),
});

export const sandReactionRate = formula({
  id: "sand-reaction-rate",
  symbol: "k",
  name: "growth of the sand's reaction with depth, per length of shaft",
  measure: "pressure",
  arguments: [
    ["K_p", "passive pressure coefficient", "ratio"],
    ["gamma", "effective weight of the soil, per metre of depth", "unit-weight"],
    ["d", "shaft diameter", "length"],
  ],
  expression: "3 * K_p * gamma * d",
  citation: broms,
  evaluate: (coefficient, weight, d) => 3 * coefficient * weight * d,
});

/** The breadth beyond the shaft's own, so that nothing counts twice. */
export const sandPlate = formula({
  id: "stabiliser-sand",
  symbol: "R",
  name: "force of a stabiliser in sand, beyond the shaft's own",
  measure: "force",
  arguments: [rate, ["d", "shaft diameter", "length"], ["b", "its breadth", "length"], top, bottom],
  expression: "k * (b - d) / d * (z_2^2 - z_1^2) / 2",
  citation: cite("judgement", "3 K_p gamma' z over its own depth", "judgement"),
  evaluate: (k, d, b, z1, z2) => (((k * (b - d)) / d) * (z2 * z2 - z1 * z1)) / 2,
});

export const sandPlateDepth = formula({
  id: "stabiliser-sand-depth",
  symbol: "z_R",
  name: "depth at which the stabiliser's force acts",
  measure: "length",
  arguments: [top, bottom],
  expression: "2 / 3 * (z_2^3 - z_1^3) / (z_2^2 - z_1^2)",
  citation: derived("centroid of a pressure that grows with depth"),
  evaluate: (z1, z2) => ((2 / 3) * (power(z2, 3) - power(z1, 3))) / (z2 * z2 - z1 * z1),
});

export const sandLateral = formula({
  id: "lateral-sand",
  symbol: "H_u",
  name: "sideways pull at which the ground fails, sand",
  measure: "force",
  arguments: [rate, pull, depth, plate, plateDepth],
  expression: "(k * L^3 / 6 + R * (L - z_R)) / (e + L)",
  citation: plastic,
  range: "rigid shaft, free head",
  evaluate: (k, e, L, force, z) => ((k * power(L, 3)) / 6 + force * (L - z)) / (e + L),
});

/**
 * 1.5 M over the sum of 1.5 e and the depth of the greatest moment, which solves
 * f^3 + 1.5 e f^2 = q. The root is closed in on from both sides; the last step lies above it by
 * less than 1 %, so the pull is that much low. The ground's strength and the plate's force are
 * divided by the same factor as the ground's own limit.
 */
export const sandShaftPull = formula({
  id: "lateral-shaft-sand",
  symbol: "H_m",
  name: "sideways pull that the shaft takes in bending, sand",
  measure: "force",
  arguments: [
    ["M", "moment left for the ground's reaction on the shaft", "moment"],
    ["q", "3 M FS/k, cube of a length", "section-modulus"],
    pull,
    ["R_m", "force of the stabiliser", "force"],
  ],
  expression: "R_m + 1.5 * M / (sqrt(q / (sqrt(q / (q^(1 / 3) + 1.5 * e)) + 1.5 * e)) + 1.5 * e)",
  citation: plastic,
  range: "M above zero",
  evaluate: (moment, q, e, force) => {
    const closer = (depth: number) => Math.sqrt(q / (depth + 1.5 * e));
    return force + (1.5 * moment) / (closer(closer(Math.cbrt(q))) + 1.5 * e);
  },
});

export const sandMomentCube = formula({
  id: "moment-cube-sand",
  symbol: "q",
  name: "cube of a length that measures moment over ground",
  measure: "section-modulus",
  arguments: [
    ["M", "moment left for the ground's reaction on the shaft", "moment"],
    ["FS", "factor on the ground", "ratio"],
    rate,
  ],
  expression: "3 * M * FS / k",
  citation: plastic,
  evaluate: (moment, factor, k) => (3 * moment * factor) / k,
});
