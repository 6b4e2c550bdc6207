import { cite, formula } from "@hoopstay/core";

const outside = ["D", "outside diameter of the stub", "length"] as const;
const width = ["B", "width of the rail's face", "length"] as const;
const wall = ["t", "design wall of the rail", "length"] as const;
const equivalent = ["B_b", "side of the equivalent square", "length"] as const;
const beta = ["beta", "width ratio", "ratio"] as const;

/** A round branch on a flat face counts as a square one of the same outline length. */
export const equivalentSquare = formula({
  id: "equivalent-square",
  symbol: "B_b",
  name: "side of the square that stands for the round stub",
  measure: "length",
  arguments: [outside],
  expression: "3.141592653589793 * D / 4",
  citation: cite("aisc-360-22", "commentary K3", "read"),
  range: "D / B under 0.85 as printed; kept above it, where punching and side walls run beside",
  evaluate: (D) => (Math.PI * D) / 4,
});

export const widthRatio = formula({
  id: "width-ratio",
  symbol: "beta",
  name: "width of the branch over that of the face",
  measure: "ratio",
  arguments: [equivalent, width],
  expression: "B_b / B",
  citation: cite("aisc-360-22", "K1.2", "read"),
  evaluate: (Bb, B) => Bb / B,
});

/** Unloaded length the face needs between the stub and an open end, else half its strength. */
export const endLengthNeeded = formula({
  id: "end-length-needed",
  symbol: "l_end",
  name: "rail needed beyond the stub for the face's whole strength",
  measure: "length",
  arguments: [width, beta],
  expression: "B * sqrt(1 - beta)",
  citation: cite("aisc-360-22", "equation K1-7", "read"),
  evaluate: (B, b) => B * Math.sqrt(1 - b),
});

export const punchingWidth = formula({
  id: "punching-width",
  symbol: "B_ep",
  name: "width of the stub that works in punching across the rail",
  measure: "length",
  arguments: [equivalent, width, wall],
  expression: "min(B_b, 10 * B_b * t / B)",
  citation: cite("aisc-360-22", "table C-K1.1", "read"),
  evaluate: (Bb, B, t) => Math.min(Bb, (10 * Bb * t) / B),
});

/** Rail stress at the stub over its available stress; signs dropped, all of it as compression. */
export const faceUtilization = formula({
  id: "face-utilization",
  symbol: "U",
  name: "stress of the rail at the stub over what it may have",
  measure: "ratio",
  arguments: [
    ["sigma_v", "stress from bending in the vertical plane", "pressure"],
    ["sigma_p", "stress from bending in plan", "pressure"],
    ["F_c", "available stress: F_y (LRFD), 0.6 F_y (ASD)", "pressure"],
  ],
  expression: "(abs(sigma_v) + abs(sigma_p)) / F_c",
  citation: cite("aisc-360-22", "table K3.2, U", "read"),
  evaluate: (vertical, plan, available) => (Math.abs(vertical) + Math.abs(plan)) / available,
});

export const chordStressFactor = formula({
  id: "chord-stress-factor",
  symbol: "Q_f",
  name: "what the rail's own stress leaves of the face",
  measure: "ratio",
  arguments: [["U", "stress of the rail over what it may have", "ratio"], beta],
  expression: "max(0.4, min(1, 1.3 - 0.4 * U / beta))",
  citation: cite("aisc-360-22", "table K3.2, Q_f for T-connections", "read"),
  range: "U at most 1; a face in tension has 1, which is not used here",
  evaluate: (U, b) => Math.max(0.4, Math.min(1, 1.3 - (0.4 * U) / b)),
});

export const enChordStressFactor = formula({
  id: "en-chord-stress-factor",
  symbol: "k_n",
  name: "what the rail's own stress leaves of the face, European form",
  measure: "ratio",
  arguments: [["U", "stress of the rail over what it may have", "ratio"], beta],
  expression: "min(1, 1.3 - 0.4 * U / beta)",
  citation: cite("en-1993-1-8", "table 7.10, k_n in compression", "second-hand"),
  range: "U at most 1",
  evaluate: (U, b) => Math.min(1, 1.3 - (0.4 * U) / b),
});
