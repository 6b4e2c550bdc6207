import { cite, constant, formula } from "@hoopstay/core";

const clause = cite("asabe-d497", "Brixius form of the traction equations", "memory");

const number = ["B_n", "mobility number of tyre and ground", "ratio"] as const;
const slip = ["s_w", "slip of the driven wheels", "ratio"] as const;

export const motionResistanceRatio = formula({
  id: "motion-resistance-ratio",
  symbol: "rho",
  name: "motion resistance over weight on the wheel",
  measure: "ratio",
  arguments: [number, slip],
  expression: "1 / B_n + 0.04 + 0.5 * s_w / sqrt(B_n)",
  citation: clause,
  evaluate: (mobility, slipping) => 1 / mobility + 0.04 + (0.5 * slipping) / Math.sqrt(mobility),
});

export const grossTractionRatio = formula({
  id: "gross-traction-ratio",
  symbol: "mu_g",
  name: "gross traction over weight on the wheel",
  measure: "ratio",
  arguments: [number, slip],
  expression: "0.88 * (1 - exp(-0.1 * B_n)) * (1 - exp(-7.5 * s_w)) + 0.04",
  citation: clause,
  evaluate: (mobility, slipping) =>
    0.88 * (1 - Math.exp(-0.1 * mobility)) * (1 - Math.exp(-7.5 * slipping)) + 0.04,
});

export const netTractionRatio = formula({
  id: "net-traction-ratio",
  symbol: "mu_n",
  name: "net pull over weight on the driven wheel",
  measure: "ratio",
  arguments: [
    ["mu_g", "gross traction ratio", "ratio"],
    ["rho", "motion resistance ratio", "ratio"],
  ],
  expression: "mu_g - rho",
  citation: clause,
  evaluate: (gross, resistance) => gross - resistance,
});

/** Mobility numbers of the usual surfaces, softest last. */
export const mobilityNumbers = {
  citation: cite("asabe-d497", "table of B_n by surface", "memory"),
  rows: [
    ["hard", 80],
    ["firm", 55],
    ["tilled", 40],
    ["soft or sandy", 20],
  ],
} as const;

/** Soft ground at 10 % slip, and hard ground rounded up: what bounds a tractor on farm ground. */
export const pullRatioLow = constant(
  "pull-ratio-low",
  "c_low",
  "net pull over weight on the driven wheels, soft ground",
  0.34,
  "ratio",
  clause,
);

export const pullRatioHigh = constant(
  "pull-ratio-high",
  "c_high",
  "net pull over weight on the driven wheels, hard ground",
  0.45,
  "ratio",
  clause,
);
