import {
  flatTorsionConstant,
  flatTorsionModulus,
  gaugeTables,
  massPerLength,
  printedThickness,
  zincMassPerLength,
  zincOnOneFace,
} from "@hoopstay/section";
import { describe, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { readPublished } from "../published/read-published.ts";
import { columnOf, of, tubeOfCase } from "./published-tube.ts";
import { worthOf } from "./source-units.ts";

type Compute = (file: PublishedFile, one: PublishedCase, column: string) => number | undefined;

const hollow = (file: PublishedFile, one: PublishedCase) => of(tubeOfCase(file, one), "round");

/** How each quantity of a published file is computed, SI. */
const computations: Readonly<Record<string, Compute>> = {
  "tube properties": (file, one, column) => columnOf(column, tubeOfCase(file, one)),
  "gauge thickness": (_, { given }) =>
    printedThickness(given.gauge as number, given.table as keyof typeof gaugeTables),
  "zinc thickness": (_, { given }) => zincOnOneFace((given.wall as number) * worthOf("in")),
  "zinc weight": (file, one, column) => {
    const zinc = zincMassPerLength(hollow(file, one));
    return column === "zinc" ? zinc : zinc / massPerLength(hollow(file, one));
  },
  "statute weight": (_, { given }) => 40 * thicknessInches(given.gauge) * worthOf("lb/ft2"),
  "thickness from statute weight": (_, { given }) => {
    const inches = (40 * thicknessInches(given.gauge)) / 41.82;
    return Number(inches.toFixed(4)) * worthOf("in");
  },
  "rectangular bar in torsion": (_, { given }, column) => {
    const ratio = given.ratio as number;
    return column === "k1"
      ? flatTorsionConstant.evaluate(ratio, 1) / ratio
      : flatTorsionModulus.evaluate(ratio, 1) / ratio;
  },
};

const thicknessInches = (gauge: unknown): number =>
  gaugeTables["us-standard"].rows.find(([number]) => number === gauge)?.[1] ?? Number.NaN;

const folders = [
  "aisc-shapes-15",
  "uk-section-lists",
  "asme-b36-10",
  "holtzapffel",
  "sheet-gauge-table",
  "15-usc-206",
  "astm-a123",
  "timoshenko-goodier-3",
  "statics",
] as const;

for (const file of folders.flatMap((folder) => readPublished(folder))) {
  const compute = computations[file.quantity];
  if (!compute) continue;
  describe(file.file, () => {
    for (const one of file.cases) {
      for (const value of one.values) {
        const known = value.disagreement ? " (disagrees)" : "";
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}${known}`, () => {
          const computed = compute(file, one, value.quantity) ?? Number.NaN;
          expectPublished(computed / worthOf(value.unit), value);
        });
      }
    }
  });
}
