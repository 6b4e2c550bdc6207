import { derived, formula, judged } from "@hoopstay/core";

export const uprightStiffness = formula({
  id: "anchor-upright-stiffness",
  symbol: "k_v",
  name: "stiffness of an anchor against a lift of the rail, N/m",
  measure: "ratio",
  arguments: [
    ["k", "stiffness along the tether, N/m", "ratio"],
    ["s_a", "sine of the tether's angle above the ground", "ratio"],
  ],
  expression: "k * s_a^2",
  citation: derived("a lift stretches the tether by its sine, and its pull acts by its sine"),
  evaluate: (stiffness, sine) => stiffness * sine * sine,
});

export const tetherTension = formula({
  id: "tether-tension",
  symbol: "T",
  name: "pull along the tether",
  measure: "force",
  arguments: [
    ["T_v", "upright pull that the rail needs", "force"],
    ["s_a", "sine of the tether's angle above the ground", "ratio"],
  ],
  expression: "T_v / s_a",
  citation: derived("resolution of the tether's pull"),
  evaluate: (upright, sine) => upright / sine,
});

export const sidePull = formula({
  id: "tether-side-pull",
  symbol: "T_s",
  name: "level part of the pull along the tether",
  measure: "force",
  arguments: [
    ["T", "pull along the tether", "force"],
    ["s_a", "sine of the tether's angle above the ground", "ratio"],
  ],
  expression: "T * sqrt(1 - s_a^2)",
  citation: derived("resolution of the tether's pull"),
  evaluate: (tension, sine) => tension * Math.sqrt(1 - sine * sine),
});

/** Every pull is run at the anchor's stiffness and at four times it; the worse is kept. */
export const stiffnessTimes = {
  values: [1, 4],
  citation: judged("an anchor's stiffness is known within a factor of four; the worse kept"),
} as const;
