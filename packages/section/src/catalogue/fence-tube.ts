import { cite } from "@hoopstay/core";
import { wallOfGauge } from "../gauge/wall-of-gauge.ts";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

/**
 * Trade size and true outside diameter, inches. The trade sells two tubes as 1-3/8, so their
 * designation carries the diameter and the bare trade size is not known here.
 */
const diameters = [
  ["1-3/8 OD 1.315", "1.315"],
  ["1-3/8 OD 1.375", "1.375"],
  ["1-5/8", "1.660"],
  ["2", "1.900"],
  ["2-3/8", "2.375"],
] as const;

const gauges = [18, 17, 16, 14, 13, 12, 11] as const;

/** Light fence and greenhouse tube by Birmingham gauge; outside the listed standards. */
export const fenceTube: readonly CatalogueSize[] = diameters.flatMap(([trade, outside]) =>
  gauges.flatMap((gauge) => {
    const wall = wallOfGauge(gauge, "birmingham");
    if (wall === undefined) return [];
    return {
      name: `Fence ${trade} x ${gauge}ga BWG`,
      aliases: [`OD ${outside} x ${gauge}ga BWG`],
      shape: {
        kind: "round" as const,
        outside: tradeInches(outside),
        wall,
        convention: "other" as const,
      },
      citation: cite(
        "common-practice",
        "true outside diameter of fence trade sizes; wall by Birmingham gauge",
        "memory",
      ),
    };
  }),
);
