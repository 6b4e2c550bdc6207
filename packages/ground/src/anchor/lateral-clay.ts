import { cite, derived, formula } from "@hoopstay/core";

const broms = cite(
  "broms-1964",
  "short free-head pile in clay (read in Fundamentals of Foundation Engineering, 6.24)",
  "second-hand",
);
const plastic = derived(
  "equilibrium of a rigid shaft under 9 c_u d from 1.5 d down (Broms 1964) and a plate force near " +
    "the surface; without a plate it is Broms's H = 9 c_u d f",
);
const pull = ["e", "height of the pull above ground", "length"] as const;
const depth = ["L", "depth of the shaft's end", "length"] as const;
const start = ["a", "depth where the shaft begins to count", "length"] as const;
const strength = ["c_u", "undrained strength for a sideways pull", "pressure"] as const;
const diameter = ["d", "shaft diameter", "length"] as const;
const plate = ["R", "force of the stabiliser", "force"] as const;
const plateDepth = ["z_s", "depth of the stabiliser's middle", "length"] as const;

/** Down to 1.5 d, and over a stabiliser's depth, the shaft itself counts nothing. */
export const clayStart = formula({
  id: "clay-start",
  symbol: "a",
  name: "depth where the shaft begins to count",
  measure: "length",
  arguments: [diameter, ["z_2", "bottom of the stabiliser", "length"]],
  expression: "max(1.5 * d, z_2)",
  citation: broms,
  evaluate: (d, bottom) => Math.max(1.5 * d, bottom),
});

export const clayPlate = formula({
  id: "stabiliser-clay",
  symbol: "R_p",
  name: "force of a stabiliser in clay",
  measure: "force",
  arguments: [
    strength,
    ["b", "breadth of the stabiliser", "length"],
    ["h", "height of the stabiliser", "length"],
  ],
  expression: "3 * c_u * b * h",
  citation: cite("judgement", "3 c_u over its own depth, near the surface", "judgement"),
  evaluate: (cu, breadth, height) => 3 * cu * breadth * height,
});

/**
 * The part of the plate's force that the shaft can balance: no more than holds the end of the shaft,
 * and none below the point about which the shaft turns.
 */
export const clayPlateUsed = formula({
  id: "stabiliser-clay-used",
  symbol: "R",
  name: "force of the stabiliser that the shaft can balance",
  measure: "force",
  arguments: [
    ["R_p", "force of the stabiliser", "force"],
    strength,
    diameter,
    pull,
    start,
    depth,
    plateDepth,
  ],
  expression:
    "max(0, min(R_p, 9 * c_u * d * ((e + L)^2 - (e + a)^2) / (2 * (e + z_s)), " +
    "9 * c_u * d * ((e + L)^2 + (e + a)^2 - 2 * (e + z_s)^2) / (2 * (e + z_s))))",
  citation: plastic,
  evaluate: (force, cu, d, e, a, L, z) => {
    const p = 9 * cu * d;
    const [top, end, at] = [(e + a) ** 2, (e + L) ** 2, e + z];
    const held = (p * (end - top)) / (2 * at);
    const turned = (p * (end + top - 2 * at * at)) / (2 * at);
    return Math.max(0, Math.min(force, held, turned));
  },
});

export const clayLateral = formula({
  id: "lateral-clay",
  symbol: "H_u",
  name: "sideways pull at which the ground fails, clay",
  measure: "force",
  arguments: [strength, diameter, pull, start, depth, plate, plateDepth],
  expression:
    "R + 9 * c_u * d * (2 * sqrt(((e + a)^2 + (e + L)^2) / 2 - R * (e + z_s) / (9 * c_u * d)) " +
    "- 2 * e - a - L)",
  citation: plastic,
  range: "a below L; rigid shaft, free head",
  evaluate: (cu, d, e, a, L, force, z) => {
    const p = 9 * cu * d;
    const turning = Math.sqrt(((e + a) ** 2 + (e + L) ** 2) / 2 - (force * (e + z)) / p);
    return force + p * (2 * turning - 2 * e - a - L);
  },
});

/**
 * The pull whose greatest moment the shaft takes: Broms's long pile with the ground's strength and
 * the plate's force divided by the same factor as the ground's own limit.
 */
export const clayShaftPull = formula({
  id: "lateral-shaft-clay",
  symbol: "H_m",
  name: "sideways pull that the shaft takes in bending, clay",
  measure: "force",
  arguments: [
    ["M", "greatest moment allowed", "moment"],
    strength,
    diameter,
    pull,
    start,
    ["R_m", "force of the stabiliser", "force"],
    plateDepth,
    ["FS", "factor on the ground", "ratio"],
  ],
  expression:
    "R_m + 2 * max(0, M - R_m * (e + z_s)) / " +
    "(sqrt((e + a)^2 + 2 * max(0, M - R_m * (e + z_s)) * FS / (9 * c_u * d)) + e + a)",
  citation: plastic,
  range: "R_m at most M/(e + z_s)",
  evaluate: (moment, cu, d, e, a, force, z, factor) => {
    const p = (9 * cu * d) / factor;
    const twice = 2 * Math.max(0, moment - force * (e + z));
    return force + twice / (Math.sqrt((e + a) ** 2 + twice / p) + e + a);
  },
});
