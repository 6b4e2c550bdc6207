import { derived, formula } from "@hoopstay/core";
import { type BallastMaterial, ballastDensities } from "./weight-densities.ts";

export const submergedFactor = formula({
  id: "submerged-factor",
  symbol: "f_w",
  name: "what of a weight is left under water",
  measure: "ratio",
  arguments: [
    ["gamma_w", "weight density of water, N/m3", "ratio"],
    ["gamma", "weight density of the ballast, N/m3", "ratio"],
  ],
  expression: "1 - gamma_w / gamma",
  citation: derived("buoyancy of a sealed or solid body"),
  evaluate: (water, ballast) => 1 - water / ballast,
});

export const weightLeft = formula({
  id: "weight-left",
  symbol: "W_b",
  name: "weight of ballast as it counts",
  measure: "force",
  arguments: [
    ["f_w", "what is left under water, 1 where the ground cannot flood", "ratio"],
    ["W", "weight in air", "force"],
  ],
  expression: "f_w * W",
  citation: derived("buoyancy"),
  evaluate: (factor, weight) => factor * weight,
});

/** What a weight of this material is multiplied by: under 1 only where the ground can flood. */
export const floodFactor = (material: BallastMaterial, canFlood: boolean): number =>
  canFlood
    ? submergedFactor.evaluate(ballastDensities.water.value, ballastDensities[material].value)
    : 1;
