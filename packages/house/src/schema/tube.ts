import { type GaugeTable, gaugeTableNames } from "@hoopstay/section";
import type * as z from "zod/mini";
import { choice, count, keys, optional, text, yes } from "./field.ts";
import { quantity } from "./quantity.ts";

export const tubeStandards = {
  A500: "AISC",
  A53: "AISC",
  A1085: "ASTM A1085",
  A1065: "ASTM A1065",
  "EN 10219": "EN 10219-2",
  "EN 10210": "EN 10210-2",
  other: "other",
} as const;

/** Grades of steel, by what stands on the mill certificate or the tag. */
export const tubeGrades = [
  "A500 B",
  "A500 C",
  "A53 B",
  "A1085",
  "A513 1008",
  "A513 1010",
  "A513 1015",
  "A513 1020",
  "A36",
  "S235",
  "S355",
] as const;

const wall = {
  wall: optional(quantity("length", "nominal wall thickness")),
  gauge: optional(count("gauge, only with gauge_table", 3, 24)),
  gauge_table: optional(
    choice(gaugeTableNames as [GaugeTable, ...GaugeTable[]], "the table the gauge is from"),
  ),
};

/**
 * A tube, bar or angle: a catalogue size, or its dimensions. A gauge is no thickness and needs the
 * table it is from.
 */
export const tubeSchema = keys(
  {
    size: optional(text("catalogue size", ["HSS4X3X3/16", "NPS 2 sch 40"])),
    outside: optional(quantity("length", "outside diameter of a round tube")),
    depth: optional(quantity("length", "outside depth of a rectangular tube, upright")),
    width: optional(quantity("length", "outside width of a rectangular tube, lying")),
    ...wall,
    standard: optional(
      choice(
        Object.keys(tubeStandards) as [keyof typeof tubeStandards],
        "the standard the tube was made to",
      ),
    ),
    galvanized: optional(yes("hot-dip galvanized inside and out")),
    grade: optional(choice(tubeGrades, "grade of the steel within its standard")),
    yield: optional(quantity("pressure", "yield strength by the mill certificate")),
    tensile: optional(quantity("pressure", "tensile strength by the mill certificate")),
  },
  "a catalogue size, or outside (round) or depth and width (rectangular) with wall or gauge",
);

export type TubeInput = z.output<typeof tubeSchema>;
