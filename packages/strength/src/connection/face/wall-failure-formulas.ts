import { cite, constant, derived, formula, type Measure, power } from "@hoopstay/core";
import { KSI } from "../common/customary.ts";

const yieldStrength = ["F_y", "yield strength of the rail", "pressure"] as const;
const wall = ["t", "design wall of the rail", "length"] as const;
const width = ["B", "width of the rail's face", "length"] as const;
const depth = ["H", "depth of the rail", "length"] as const;
const branch = ["B_b", "side of the equivalent square", "length"] as const;
const punching = ["B_ep", "width that works in punching", "length"] as const;
const modulus = ["E", "modulus of elasticity of steel", "pressure"] as const;
const stress = ["Q_f", "what the rail's own stress leaves", "ratio"] as const;

const punched = cite("aisc-360-22", "table C-K1.1, shear yielding (punching)", "read");

/** E of steel, Pa. */
export const railModulus = constant(
  "rail-modulus",
  "E",
  "modulus of elasticity of steel",
  29_000 * KSI,
  "pressure",
  cite("aisc-360-22", "symbols, E = 29,000 ksi", "read"),
);

export const punchingAxial = formula({
  id: "face-punching",
  symbol: "P_n",
  name: "punching of the face, force along the stub",
  measure: "force",
  arguments: [yieldStrength, wall, branch, punching],
  expression: "0.6 * F_y * t * (2 * B_b + 2 * B_ep)",
  citation: punched,
  evaluate: (Fy, t, Bb, Bep) => 0.6 * Fy * t * (2 * Bb + 2 * Bep),
});

/** Two sides along the rail fully plastic in shear, and B_ep of each side across it. */
export const punchingInPlane = formula({
  id: "face-punching-in-plane",
  symbol: "M_ip",
  name: "punching of the face, moment along the rail",
  measure: "moment",
  arguments: [yieldStrength, wall, branch, punching],
  expression: "0.6 * F_y * t * (2 * B_ep + B_b) * B_b / 2",
  citation: punched,
  evaluate: (Fy, t, Bb, Bep) => (0.6 * Fy * t * (2 * Bep + Bb) * Bb) / 2,
});

/** The same turned: both sides along the rail at full arm, B_ep shared by the corners across it. */
export const punchingOutOfPlane = formula({
  id: "face-punching-out-of-plane",
  symbol: "M_op",
  name: "punching of the face, moment across the rail",
  measure: "moment",
  arguments: [yieldStrength, wall, branch, punching],
  expression: "0.6 * F_y * t * (B_b^2 + B_ep * B_b - B_ep^2 / 2)",
  citation: derived("plastic shear on the outline, as for the moment along the rail"),
  evaluate: (Fy, t, Bb, Bep) => 0.6 * Fy * t * (Bb * Bb + Bep * Bb - (Bep * Bep) / 2),
});

/** Written with the branch's side in the standards, with the rail's depth elsewhere: the lesser. */
export const chordDistortion = formula({
  id: "chord-distortion",
  symbol: "M_op",
  name: "distortion of the rail's section, moment across the rail",
  measure: "moment",
  arguments: [yieldStrength, wall, width, depth, branch],
  expression: "2 * F_y * t * (min(B_b, H) * t + sqrt(B * H * t * (B + H)))",
  citation: cite("aisc-360-10", "table K3.2, chord distortional failure", "memory"),
  evaluate: (Fy, t, B, H, Bb) =>
    2 * Fy * t * (Math.min(Bb, H) * t + Math.sqrt(B * H * t * (B + H))),
});

export const sideWallYielding = formula({
  id: "side-wall-yielding",
  symbol: "P_n",
  name: "yielding of the rail's side walls under the stub",
  measure: "force",
  arguments: [yieldStrength, wall, branch],
  expression: "2 * F_y * t * (5 * t + B_b)",
  citation: cite("aisc-360-22", "J10.2, equation J10-2, two walls, k = t", "read"),
  evaluate: (Fy, t, Bb) => 2 * Fy * t * (5 * t + Bb),
});

export const sideWallCrippling = formula({
  id: "side-wall-crippling",
  symbol: "P_n",
  name: "crippling of the rail's side walls under the stub",
  measure: "force",
  arguments: [wall, depth, branch, modulus, yieldStrength, stress],
  expression: "1.6 * t^2 * (1 + 3 * B_b / (H - 3 * t)) * sqrt(E * F_y) * Q_f",
  citation: cite("aisc-360-22", "J10.3, equation J10-4, two walls, t_f = t_w", "memory"),
  evaluate: (t, H, Bb, E, Fy, Q) =>
    1.6 * t * t * (1 + (3 * Bb) / (H - 3 * t)) * Math.sqrt(E * Fy) * Q,
});

export const sideWallBuckling = formula({
  id: "side-wall-buckling",
  symbol: "P_n",
  name: "buckling of the rail's side walls between stub and ground",
  measure: "force",
  arguments: [wall, depth, modulus, yieldStrength, stress],
  expression: "48 * t^3 / (H - 3 * t) * sqrt(E * F_y) * Q_f",
  citation: cite("aisc-360-22", "J10.5, equation J10-8, two walls", "memory"),
  evaluate: (t, H, E, Fy, Q) => ((48 * power(t, 3)) / (H - 3 * t)) * Math.sqrt(E * Fy) * Q,
});

export const sideWallInPlane = formula({
  id: "side-wall-in-plane",
  symbol: "M_ip",
  name: "yielding of the rail's side walls, moment along the rail",
  measure: "moment",
  arguments: [yieldStrength, wall, branch],
  expression: "0.5 * F_y * t * (B_b + 5 * t)^2",
  citation: cite("aisc-360-22", "table C-K1.1, side wall local yielding", "read"),
  evaluate: (Fy, t, Bb) => 0.5 * Fy * t * (Bb + 5 * t) ** 2,
});

export const sideWallOutOfPlane = formula({
  id: "side-wall-out-of-plane",
  symbol: "M_op",
  name: "yielding of the rail's side walls, moment across the rail",
  measure: "moment",
  arguments: [yieldStrength, wall, width, branch],
  expression: "F_y * t * (B - t) * (B_b + 5 * t)",
  citation: cite("aisc-360-10", "table K3.2, side wall local yielding", "memory"),
  evaluate: (Fy, t, B, Bb) => Fy * t * (B - t) * (Bb + 5 * t),
});

/** K1: a stub nearer to an open end than `endLengthNeeded` has half the strength. */
export const halvedAtOpenEnd = (measure: Measure) =>
  formula({
    id: `halved-at-open-end-${measure}`,
    symbol: "R",
    name: "strength left near the rail's open end",
    measure,
    arguments: [["R_n", "strength away from the end", measure]],
    expression: "R_n / 2",
    citation: cite("aisc-360-22", "K1.1, end distance, equation K1-7", "read"),
    evaluate: (strength) => strength / 2,
  });
