import { derived, formula, judged } from "@hoopstay/core";

export const heldByFixedBallast = formula({
  id: "held-by-fixed-ballast",
  symbol: "R_b",
  name: "what a piece made fast on the house holds at one rail",
  measure: "force",
  arguments: [
    ["gamma_D", "weight factor of the combination", "ratio"],
    ["W", "weight of the piece as it counts", "force"],
    ["d", "distance of the piece from that rail", "length"],
    ["s", "distance between the rails", "length"],
  ],
  expression: "gamma_D * W * (1 - d / s)",
  citation: derived("lever rule across the two rails"),
  range: "d from 0 (on the rail) to s (on the other rail, where it holds nothing here)",
  evaluate: (factor, weight, away, span) => factor * weight * (1 - away / span),
});

export const heldByTie = formula({
  id: "held-by-tied-block",
  symbol: "R_b",
  name: "what a block on a tether holds down at its rail",
  measure: "force",
  arguments: [
    ["T", "pull the block holds along the tether", "force"],
    ["a", "tether above the ground", "angle"],
  ],
  expression: "T * sin(a)",
  citation: judged("only the part straight down is counted against lift; safe side"),
  evaluate: (pull, angle) => pull * Math.sin(angle),
});
