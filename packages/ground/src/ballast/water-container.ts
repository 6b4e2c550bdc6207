import { derived, formula, Refusal } from "@hoopstay/core";
import { ballastDensities } from "./weight-densities.ts";

/** A water container on the house or tied to it. */
export interface WaterContainer {
  /** Full volume, m3. */
  readonly volume: number;
  /** How full it was found, 0 to 1. */
  readonly fill: number;
  /** Whether it keeps its water when tilted. */
  readonly closed: boolean;
  /** Whether the level was looked at and written down. */
  readonly levelRecorded: boolean;
  /** Whether the ground can flood, or the animals or a leak drain it. */
  readonly floodOrDrain: boolean;
}

export type WaterNotCounted = "open container" | "level not recorded" | "flood or drain";

export const waterWeight = formula({
  id: "water-weight",
  symbol: "W",
  name: "weight of the water in a container",
  measure: "force",
  arguments: [
    ["gamma_w", "weight density of water, N/m3", "ratio"],
    ["V", "full volume, m3", "ratio"],
    ["f", "share that is full", "ratio"],
  ],
  expression: "gamma_w * V * f",
  citation: derived("volume times weight density; the container itself is not counted"),
  evaluate: (density, volume, fill) => density * volume * fill,
});

/**
 * Weight of water that may be counted for holding down, N. Nothing unless the container is closed,
 * its level recorded, and it can neither flood nor drain.
 *
 * @throws Refusal `not-positive` for a volume, `out-of-range` for a fill outside 0 to 1
 */
export function countedWater(container: WaterContainer): {
  readonly weight: number;
  readonly why?: WaterNotCounted;
} {
  const { volume, fill, closed, levelRecorded, floodOrDrain } = container;
  if (!(volume > 0 && Number.isFinite(volume))) {
    const mend = "Give the volume of the full container.";
    throw new Refusal([{ code: "not-positive", expected: "a volume above zero", mend }]);
  }
  if (!(fill >= 0 && fill <= 1)) {
    const mend = "Give how full it is, as a share of the whole.";
    throw new Refusal([{ code: "out-of-range", expected: "a fill between 0 and 1", mend }]);
  }
  if (!closed) return { weight: 0, why: "open container" };
  if (!levelRecorded) return { weight: 0, why: "level not recorded" };
  if (floodOrDrain) return { weight: 0, why: "flood or drain" };
  return { weight: waterWeight.evaluate(ballastDensities.water.value, volume, fill) };
}
