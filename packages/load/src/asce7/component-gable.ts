import { cite } from "@hoopstay/core";
import { cornerOutward, wallInward } from "./component-walls.ts";
import { fallingCoefficient } from "./falling-coefficient.ts";

const figure = cite("asce-7-10", "figure 30.4-2, gable roofs, corner zone 3", "memory");
const times = 10;

/** The corner zone of a gable roof up to a slope, deg: outward and inward, by effective area. */
const rows = [
  {
    slope: 7,
    outward: fallingCoefficient(
      "gable-7-outward",
      "component coefficient, corner of a gable up to 7 deg, outward",
      "-2.8 + 1.7",
      { first: -2.8, last: -1.1, times },
      figure,
    ),
    inward: fallingCoefficient(
      "gable-7-inward",
      "component coefficient, gable up to 7 deg, inward",
      "0.3 - 0.1",
      { first: 0.3, last: 0.2, times },
      figure,
    ),
  },
  {
    slope: 27,
    outward: fallingCoefficient(
      "gable-27-outward",
      "component coefficient, corner of a gable of 7 to 27 deg, outward",
      "-2.6 + 0.6",
      { first: -2.6, last: -2, times },
      figure,
    ),
    inward: fallingCoefficient(
      "gable-27-inward",
      "component coefficient, gable of 7 to 27 deg, inward",
      "0.5 - 0.2",
      { first: 0.5, last: 0.3, times },
      figure,
    ),
  },
  {
    slope: 45,
    outward: fallingCoefficient(
      "gable-45-outward",
      "component coefficient, corner of a gable of 27 to 45 deg, outward",
      "-1.2 + 0.2",
      { first: -1.2, last: -1, times },
      figure,
    ),
    inward: fallingCoefficient(
      "gable-45-inward",
      "component coefficient, gable of 27 to 45 deg, inward",
      "0.9 - 0.1",
      { first: 0.9, last: 0.8, times },
      figure,
    ),
  },
] as const;

/** Steeper than the figure: the edge of the arch stands like a wall. */
const steep = { slope: 90, outward: cornerOutward, inward: wallInward };

/**
 * The standard's rule for the edge of an arched roof: the gable roof as steep as the arch where it
 * springs.
 *
 * @param slope of the arch at its springing, rad from level
 * @returns formulas of the coefficient outward and inward, on the effective area
 */
export function gablePerimeter(slope: number): (typeof rows)[number] | typeof steep {
  const degrees = (slope * 180) / Math.PI;
  return rows.find((row) => degrees <= row.slope) ?? steep;
}
