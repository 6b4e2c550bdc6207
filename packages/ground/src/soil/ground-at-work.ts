import { type Chapter, cite, constant, derived, formula, judged } from "@hoopstay/core";
import { POUND_PER_CUBIC_FOOT } from "./class-values.ts";
import { requirePositive, requireWithin } from "./require.ts";
import type { Clay, GroundState, Sand } from "./soil.ts";

const waterWeight = constant(
  "water-unit-weight",
  "gamma_w",
  "weight of water, per metre of depth",
  62.4 * POUND_PER_CUBIC_FOOT,
  "unit-weight",
  cite("salvage-handbook", "fresh water, 62.4 lb per cubic foot", "memory"),
);

export const buoyantUnitWeight = formula({
  id: "buoyant-unit-weight",
  symbol: "gamma_e",
  name: "effective weight of wet sand, per metre of depth",
  measure: "unit-weight",
  arguments: [
    ["gamma", "moist weight of the soil, per metre of depth", "unit-weight"],
    ["gamma_w", "weight of water, per metre of depth", "unit-weight"],
  ],
  expression: "gamma - gamma_w",
  citation: derived("buoyancy of soil under water; the moist weight is below the saturated one"),
  evaluate: (moist, water) => moist - water,
});

/** Wet over dry undrained strength, and wet over dry sideways hold of a stake. */
export const wetStrengthFactor = constant(
  "wet-strength-factor",
  "k_w",
  "wet strength over dry",
  0.5,
  "ratio",
  judged(
    "a stake in saturated ground held about half of the same dry (staking study, read in the " +
      "trade press); taken for c_u found dry as well, since as-compacted cohesion falls further",
  ),
);

export const wetShearStrength = formula({
  id: "wet-shear-strength",
  symbol: "c_u",
  name: "undrained strength, wet",
  measure: "pressure",
  arguments: [
    ["k_w", "wet strength over dry", "ratio"],
    ["c_g", "undrained strength as given", "pressure"],
  ],
  expression: "k_w * c_g",
  citation: wetStrengthFactor.citation,
  evaluate: (factor, given) => factor * given,
});

export interface SandAtWork {
  readonly likeness: "sand";
  readonly frictionAngle: number;
  /** Effective unit weight, N/m3. */
  readonly unitWeight: number;
  readonly wet: boolean;
}

export interface ClayAtWork {
  readonly likeness: "clay";
  /** Undrained strength for uplift, Pa. */
  readonly shearStrength: number;
  /** Undrained strength for a sideways pull, Pa: halved in wet ground, once. */
  readonly sidewaysStrength: number;
  /** Total unit weight, N/m3. */
  readonly unitWeight: number;
  readonly wet: boolean;
}

export type GroundAtWork = SandAtWork | ClayAtWork;

/** Unit weights in the tables used here run from 70 to 150 pcf (Gunaratne, table 2.2). */
const unitWeights = [70 * POUND_PER_CUBIC_FOOT, 150 * POUND_PER_CUBIC_FOOT] as const;

/**
 * The soil as it holds the anchor, in the state for which it is rated. Wet unless said to be dry;
 * frozen is wet; dry ground whose water table stands above the anchor's deepest point is wet to the
 * surface (safe side). Wet sand weighs its moist weight less water. Clay strength found dry is
 * halved for wet ground; a sideways pull in wet clay is halved once, whichever state it was found
 * in.
 *
 * @param deepest depth of the anchor's deepest point, m
 * @throws Refusal `not-positive`, or `ground-outside` for unit weights outside 70 to 150 pcf
 */
export function groundAtWork(
  soil: Sand | Clay,
  state: GroundState,
  deepest: number,
  chapter: Chapter,
): GroundAtWork {
  requirePositive(soil.unitWeight, "a unit weight");
  const mend = "Enter the unit weight of a mineral soil, or test the anchor.";
  requireWithin(soil.unitWeight, unitWeights, "a unit weight in N/m3", mend);
  const wet = isWet(state, deepest);
  if (soil.likeness === "sand") {
    const { frictionAngle, unitWeight } = soil;
    if (!wet) return { likeness: "sand", frictionAngle, unitWeight, wet };
    const water = chapter.work(waterWeight, []);
    const buoyant = chapter.work(buoyantUnitWeight, [unitWeight, water]);
    return { likeness: "sand", frictionAngle, unitWeight: buoyant, wet };
  }
  const { shearStrength: given, unitWeight, measured } = soil;
  requirePositive(given, "an undrained strength");
  if (!wet) {
    const plain = { shearStrength: given, sidewaysStrength: given };
    return { likeness: "clay", ...plain, unitWeight, wet };
  }
  const factor = chapter.work(wetStrengthFactor, []);
  // Strength found wet is halved for a sideways pull only.
  const symbol = measured === "dry" ? "c_u" : "c_h";
  const halved = chapter.work(wetShearStrength, [factor, given], { symbol });
  const shearStrength = measured === "dry" ? halved : given;
  return { likeness: "clay", shearStrength, sidewaysStrength: halved, unitWeight, wet };
}

/** Whether the ground is rated as wet down to a depth. */
function isWet({ wetness, waterTable }: GroundState, deepest: number): boolean {
  return wetness !== "dry" || (waterTable !== undefined && waterTable <= deepest);
}
