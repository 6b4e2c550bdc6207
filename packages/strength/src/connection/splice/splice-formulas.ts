import { cite, derived, formula, judged, power } from "@hoopstay/core";

const count = ["n", "plates", "ratio"] as const;
const width = ["b", "width of a plate", "length"] as const;
const thickness = ["t", "thickness of a plate", "length"] as const;

export const coupleArm = formula({
  id: "splice-couple-arm",
  symbol: "z",
  name: "distance between the plates of two opposite faces",
  measure: "length",
  arguments: [["D", "rail from face to face", "length"], thickness],
  expression: "D + t",
  citation: derived("middle of plate to middle of plate"),
  evaluate: (across, t) => across + t,
});

/** Half of the plates pull on one face, the other half push on the opposite one. */
export const coupleMoment = formula({
  id: "splice-couple-moment",
  symbol: "M",
  name: "moment carried by plates on two opposite faces",
  measure: "moment",
  arguments: [
    count,
    ["R", "force that one plate can take", "force"],
    ["z", "distance between the plates", "length"],
  ],
  expression: "n / 2 * R * z",
  citation: derived("couple of equal forces"),
  range: "an even number of plates",
  evaluate: (n, force, arm) => (n / 2) * force * arm,
});

export const platesTogether = formula({
  id: "splice-plates-together",
  symbol: "M",
  name: "moment carried by plates that bend alike",
  measure: "moment",
  arguments: [count, ["M_1", "moment that one plate can take", "moment"]],
  expression: "n * M_1",
  citation: derived("equal shares"),
  evaluate: (n, one) => n * one,
});

/** Two lines along the long edges of a plate: equal and opposite forces along them. */
export const edgeWeldMoment = formula({
  id: "splice-edge-weld-moment",
  symbol: "M_1",
  name: "moment that the welds along both edges of one plate end can take",
  measure: "moment",
  arguments: [
    ["r", "strength of the weld per length", "force-per-length"],
    ["L_w", "length of one line", "length"],
    width,
  ],
  expression: "r * L_w * b",
  citation: derived("equilibrium with forces along the lines only: a lower bound"),
  evaluate: (strength, length, b) => strength * length * b,
});

export const edgeWeldForce = formula({
  id: "splice-edge-weld-force",
  symbol: "R",
  name: "force that the welds along both edges of one plate end can take",
  measure: "force",
  arguments: [
    ["r", "strength of the weld per length", "force-per-length"],
    ["L_w", "length of one line", "length"],
  ],
  expression: "2 * r * L_w",
  citation: derived("two lines"),
  evaluate: (strength, length) => 2 * strength * length,
});

export const boltRowMoment = formula({
  id: "splice-bolt-row-moment",
  symbol: "M_1",
  name: "moment that the bolts of one plate end can take",
  measure: "moment",
  arguments: [
    ["R_b", "force that one bolt can take", "force"],
    ["m", "bolts in the row", "ratio"],
    ["s", "bolt spacing", "length"],
  ],
  expression: "R_b * s * m * (m + 1) / 6",
  citation: derived("row of even bolts, forces in proportion to the distance from its middle"),
  range: "two bolts or more",
  evaluate: (force, m, s) => (force * s * m * (m + 1)) / 6,
});

export const boltRowForce = formula({
  id: "splice-bolt-row-force",
  symbol: "R",
  name: "force that the bolts of one plate end can take",
  measure: "force",
  arguments: [
    ["R_b", "force that one bolt can take", "force"],
    ["m", "bolts in the row", "ratio"],
  ],
  expression: "m * R_b",
  citation: derived("equal shares"),
  evaluate: (force, m) => m * force,
});

export const plateNetArea = formula({
  id: "plate-net-area",
  symbol: "A_n",
  name: "net area of a plate at a bolt",
  measure: "area",
  arguments: [width, thickness, ["d_h", "hole diameter", "length"]],
  expression: "(b - d_h - 0.0015875) * t",
  citation: cite("aisc-360-22", "B4.3b: hole width plus 1/16 in", "read"),
  evaluate: (b, t, dh) => (b - dh - 0.0015875) * t,
});

export const plateRuptureMoment = formula({
  id: "plate-rupture-moment",
  symbol: "M_n",
  name: "rupture in bending of a plate at a hole on its middle line",
  measure: "moment",
  arguments: [
    ["F_u", "tensile strength", "pressure"],
    width,
    thickness,
    ["d_h", "hole diameter", "length"],
  ],
  expression: "F_u * t * (b^3 - (d_h + 0.0015875)^3) / (6 * b)",
  citation: judged("elastic net modulus, where AISC's Manual takes the plastic one; safe side"),
  evaluate: (Fu, b, t, dh) => (Fu * t * (power(b, 3) - power(dh + 0.0015875, 3))) / (6 * b),
});

/** A ply gripped between head and nut, hole deformation considered. */
export const grippedBearing = formula({
  id: "gripped-bearing-strength",
  symbol: "R_n",
  name: "bearing of a bolt on a plate",
  measure: "force",
  arguments: [["d", "bolt diameter", "length"], thickness, ["F_u", "tensile strength", "pressure"]],
  expression: "2.4 * d * t * F_u",
  citation: cite("aisc-360-22", "J3.11a, bearing, hole deformation considered", "read"),
  evaluate: (d, t, Fu) => 2.4 * d * t * Fu,
});
