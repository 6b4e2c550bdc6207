import { type Citation, cite, formula } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");

const forces = [
  ["P_r", "axial force", "force"],
  ["P_c", "axial strength", "force"],
  ["M_rx", "moment about x", "moment"],
  ["M_cx", "strength about x", "moment"],
  ["M_ry", "moment about y", "moment"],
  ["M_cy", "strength about y", "moment"],
] as const;

/** Forces without sign, strengths of one method. */
export const largeAxialInteraction = formula({
  id: "interaction-large-axial",
  symbol: "u",
  name: "share of the strength used by axial force and bending",
  measure: "ratio",
  arguments: forces,
  expression: "P_r / P_c + 8 / 9 * (M_rx / M_cx + M_ry / M_cy)",
  citation: read("equation H1-1a"),
  range: "P_r/P_c from 0.2 up",
  evaluate: (Pr, Pc, Mrx, Mcx, Mry, Mcy) => Pr / Pc + (8 / 9) * (Mrx / Mcx + Mry / Mcy),
});

export const smallAxialInteraction = formula({
  id: "interaction-small-axial",
  symbol: "u",
  name: "share of the strength used by axial force and bending",
  measure: "ratio",
  arguments: forces,
  expression: "P_r / (2 * P_c) + M_rx / M_cx + M_ry / M_cy",
  citation: read("equation H1-1b"),
  range: "P_r/P_c below 0.2",
  evaluate: (Pr, Pc, Mrx, Mcx, Mry, Mcy) => Pr / (2 * Pc) + Mrx / Mcx + Mry / Mcy,
});

const shares = [
  ["p", "axial force over its strength", "ratio"],
  ["m_x", "moment about x over its strength", "ratio"],
  ["m_y", "moment about y over its strength", "ratio"],
] as const;

export const torsionInteraction = formula({
  id: "interaction-with-torsion",
  symbol: "u",
  name: "share of the strength used by axial force, bending, shear and torsion",
  measure: "ratio",
  arguments: [
    ...shares,
    ["v", "shear over its strength", "ratio"],
    ["t", "torsion over its strength", "ratio"],
  ],
  expression: "p + m_x + m_y + (v + t)^2",
  citation: read("equation H3-6"),
  range: "torsion above a fifth of its strength",
  evaluate: (p, mx, my, v, t) => p + mx + my + (v + t) * (v + t),
});

const envelope: Citation = cite(
  "statics",
  "H1-1a and H1-1b meet at 1; the larger of both has the same verdict and grows with the load",
  "derived",
);

export const interactionEnvelope = formula({
  id: "interaction-envelope",
  symbol: "u",
  name: "share of the strength used: the larger of both forms",
  measure: "ratio",
  arguments: shares,
  expression: "max(p + 8 / 9 * (m_x + m_y), p / 2 + m_x + m_y)",
  citation: envelope,
  evaluate: (p, mx, my) => Math.max(p + (8 / 9) * (mx + my), p / 2 + mx + my),
});
