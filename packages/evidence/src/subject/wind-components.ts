import {
  asce716,
  componentNet,
  componentPressure,
  componentRatioOf,
  cornerOutward,
  effectiveArea,
  gablePerimeter,
  pressureFactors,
  wallInward,
  wallOutward,
} from "@hoopstay/load";
import type { Computations, Given } from "../published/given.ts";

function coefficient(given: Given, column: string): number {
  if (column === "effective")
    return effectiveArea.evaluate(given.number("span"), given.number("width"));
  const columns: Record<string, () => number> = {
    inward: () => wallInward.evaluate(given.number("area")),
    outward: () => wallOutward.evaluate(given.number("area")),
    corner: () => cornerOutward.evaluate(given.number("area")),
    gable_inward: () => gablePerimeter(given.number("slope")).inward.evaluate(given.number("area")),
    gable_outward: () =>
      gablePerimeter(given.number("slope")).outward.evaluate(given.number("area")),
  };
  return columns[column]?.() ?? Number.NaN;
}

/** How coefficients and pressures of parts of the cover are computed, SI. */
export const componentComputations: Computations = {
  "component coefficient": coefficient,
  "component net pressure": (given, column) => {
    const place = { edition: asce716, exposure: "B" } as const;
    const q =
      pressureFactors(place, given.number("height")).perSpeedSquared * given.number("speed") ** 2;
    const outside = coefficient(given, column);
    const inside = [given.number("GCpi"), -given.number("GCpi")];
    const net = componentNet({ inward: outside, outward: outside }, inside, 1);
    const toward = column === "inward" || column === "gable_inward";
    return componentPressure.evaluate(q, toward ? net.inward : net.outward);
  },
  "component exposure coefficient": (given, exposure) => {
    const place = { edition: asce716, exposure: exposure as "B" | "C" | "D" };
    const height = given.number("height");
    return pressureFactors(place, height).kz * componentRatioOf(place, height);
  },
};
