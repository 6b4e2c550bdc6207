import { type GaugeTable, gaugeTableNames } from "@hoopstay/section";
import * as z from "zod";
import { keys, quantity, yes } from "./field.ts";

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
  wall: quantity("length", "nominal wall thickness").optional(),
  gauge: z.int().min(3).max(24).meta({ description: "gauge, only with gauge_table" }).optional(),
  gauge_table: z
    .enum(gaugeTableNames as [GaugeTable, ...GaugeTable[]])
    .meta({ description: "the table the gauge is from" })
    .optional(),
};

/**
 * A tube, bar or angle: a catalogue size, or its dimensions. A gauge is no thickness and needs the
 * table it is from.
 */
export const tubeSchema = keys(
  {
    size: z
      .string()
      .meta({ description: "catalogue size", examples: ["HSS4X3X3/16", "NPS 2 sch 40"] })
      .optional(),
    outside: quantity("length", "outside diameter of a round tube").optional(),
    depth: quantity("length", "outside depth of a rectangular tube, upright").optional(),
    width: quantity("length", "outside width of a rectangular tube, lying").optional(),
    ...wall,
    standard: z
      .enum(Object.keys(tubeStandards) as [keyof typeof tubeStandards])
      .meta({ description: "the standard the tube was made to" })
      .optional(),
    galvanized: yes("hot-dip galvanized inside and out").optional(),
    grade: z
      .enum(tubeGrades)
      .meta({ description: "grade of the steel within its standard" })
      .optional(),
    yield: quantity("pressure", "yield strength by the mill certificate").optional(),
    tensile: quantity("pressure", "tensile strength by the mill certificate").optional(),
  },
  "a catalogue size, or outside (round) or depth and width (rectangular) with wall or gauge",
);

export type TubeInput = z.output<typeof tubeSchema>;
