import { cite, constant, judged } from "@hoopstay/core";

export const gustFactor = constant(
  "gust-factor",
  "G",
  "gust-effect factor of a rigid building",
  0.85,
  "ratio",
  cite("asce-7-16", "26.11.1; low-rise taken as rigid by 26.11.2", "second-hand"),
);

export const directionality = constant(
  "directionality",
  "K_d",
  "wind directionality factor, buildings and arched roofs",
  0.85,
  "ratio",
  cite("bnbc-2020", "table 6.2.12 (ASCE 7 table 26.6-1)", "read"),
);

/** C_f of one bare round tube, on its diameter and length, without G and without shielding. */
export const bareTubeDrag = constant(
  "bare-tube-drag",
  "C_f",
  "force coefficient of a bare round tube",
  1.2,
  "ratio",
  judged("smooth round tube below the drag crisis, no shielding; safe side"),
);

/** The same of a bar with flat faces, on its largest size and length. */
export const bareFlatDrag = constant(
  "bare-flat-drag",
  "C_f",
  "force coefficient of a bare tube or bar with flat faces",
  2,
  "ratio",
  cite("asce-7-16", "figure 29.4-2, flat-sided members, solidity below 0.1", "memory"),
);

/** Friction of wind along film, both faces. */
export const filmFriction = constant(
  "film-friction",
  "c_fr",
  "friction coefficient of the film, both faces together",
  0.02,
  "ratio",
  cite("en-1991-1-4", "7.5, smooth 0.01, taken on both faces", "read"),
);

export const freeWallDrag = constant(
  "free-wall-drag",
  "C_f",
  "force coefficient of an end wall left standing",
  1.3,
  "ratio",
  judged("free-standing wall, no shielding between the two; safe side"),
);

export const attachedBoxDrag = constant(
  "attached-box-drag",
  "C_f",
  "force coefficient of a bin or tank",
  1.3,
  "ratio",
  judged("square box near the ground, wind on its face; safe side against round tanks"),
);
