import {
  flatTorsionConstant,
  flatTorsionModulus,
  gaugeTables,
  massPerLength,
  printedThickness,
  zincMassPerLength,
  zincOnOneFace,
} from "@hoopstay/section";
import type { Computations } from "../published/given.ts";
import { worthOf } from "../published/units.ts";
import { columnOf, of, tubeOf } from "./tube-columns.ts";

/** How properties of tubes, gauges and zinc are computed, SI. */
export const sectionComputations: Computations = {
  "tube properties": (given, column) => columnOf(column, tubeOf(given)),
  "gauge thickness": (given) =>
    printedThickness(given.number("gauge"), given.text("table") as keyof typeof gaugeTables),
  "zinc thickness": (given) => zincOnOneFace(given.number("wall")),
  "zinc weight": (given, column) => {
    const tube = of(tubeOf(given), "round");
    const zinc = zincMassPerLength(tube);
    return column === "zinc" ? zinc : zinc / massPerLength(tube);
  },
  "statute weight": (given) => 40 * thicknessInches(given.plain("gauge")) * worthOf("lb/ft2"),
  "thickness from statute weight": (given) => {
    const inches = (40 * thicknessInches(given.plain("gauge"))) / 41.82;
    return Number(inches.toFixed(4)) * worthOf("in");
  },
  "rectangular bar in torsion": (given, column) => {
    const ratio = given.number("ratio");
    return column === "k1"
      ? flatTorsionConstant.evaluate(ratio, 1) / ratio
      : flatTorsionModulus.evaluate(ratio, 1) / ratio;
  },
};

const thicknessInches = (gauge: unknown): number =>
  gaugeTables["us-standard"].rows.find(([number]) => number === gauge)?.[1] ?? Number.NaN;
