import {
  type Citation,
  cite,
  FOOT,
  formula,
  judged,
  KILOGRAM_FORCE,
  POUND_FORCE,
  power,
} from "@hoopstay/core";

/** Oven-dry specific gravity by kind of wood. */
export const woodGravity = {
  "spruce-pine-fir": 0.42,
  "southern-pine": 0.55,
  "douglas-fir-larch": 0.5,
  "hem-fir": 0.43,
} as const;
const woodGravityCitation = cite("hud-densities", "wood, by species group", "read");

/** Weight density of water, N/m3, from 62.4 lb/ft3. */
const water = (62.4 * POUND_FORCE) / power(FOOT, 3);

const woodWeight = formula({
  id: "wood-weight",
  symbol: "gamma_w",
  name: "weight density of wood at a moisture content (N/m3)",
  measure: "ratio",
  arguments: [
    ["gamma_0", "weight density of water", "ratio"],
    ["G", "oven-dry specific gravity", "ratio"],
    ["m", "moisture content, %", "ratio"],
  ],
  expression: "gamma_0 * (G / (1 + 0.009 * G * m)) * (1 + m / 100)",
  citation: cite("wood-handbook", "chapter 4 density equation, NDS form", "second-hand"),
  evaluate: (density, gravity, moisture) =>
    density * (gravity / (1 + 0.009 * gravity * moisture)) * (1 + moisture / 100),
});

const dryMoisture = 12;
const wetMoisture = 30;
const moistureCitation = judged(
  "boards outdoors: 12 % in the low weight, 30 % (fibre saturation) in the high one",
);

/** Low and high weight density of wood, N/m3. */
export const woodDensities = (kind: keyof typeof woodGravity): { low: number; high: number } => ({
  low: woodWeight.evaluate(water, woodGravity[kind], dryMoisture),
  high: woodWeight.evaluate(water, woodGravity[kind], wetMoisture),
});

/** Weight density of polyethylene film, N/m3 (0.92 g/cm3). */
export const filmDensity = 920 * KILOGRAM_FORCE;
const filmDensityCitation = cite("common-practice", "polyethylene film, 0.92 g/cm3", "memory");

/** Low and high over nominal weight of film and sheet, and the high one of framing and doors. */
export const sheetTolerance = { low: 0.95, high: 1.1 } as const;
export const framingHigh = 1.1;
const toleranceCitation = judged(
  "film and sheet 5 % under to 10 % over their nominal mass, framing and doors 10 % over as entered",
);
/** One layer of greenhouse film where the owner does not know: 6 mil. */
export const commonFilm = 0.006 * (FOOT / 12);

/** Where the weights of the take-off come from. */
export const takeOffCitations: readonly Citation[] = [
  woodWeight.citation,
  woodGravityCitation,
  moistureCitation,
  filmDensityCitation,
  toleranceCitation,
  cite("astm-a500", "wall tolerance 10 %", "memory"),
  cite("astm-a123", "table 1, zinc of galvanised tube in the high weight", "second-hand"),
];
