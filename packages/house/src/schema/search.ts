import * as z from "zod";
import { count, keys, quantity } from "./field.ts";
import { type TubeInput, tubeSchema } from "./tube.ts";

/** A tube, or the name of a catalogue size alone. */
const tubeOrSize = z
  .union([z.string(), tubeSchema], { error: () => "a catalogue size, or a tube by its dimensions" })
  .transform((given): TubeInput => (typeof given === "string" ? { size: given } : given));
const tubes = z.array(tubeOrSize).min(1).max(100).meta({
  description: "tubes to look at: sizes of the catalogue, or tubes with their dimensions",
});

/** The range that search looks through; what is left out stays as it is today. */
export const searchSchema = keys(
  {
    hoops: keys({
      tubes: tubes.optional(),
      spacing: z.array(quantity("length", "hoop to hoop")).min(1).max(20).optional(),
      counts: z.array(count("number of hoops, in place of spacing", 2)).min(1).max(20).optional(),
    }).optional(),
    rails: keys({ tubes }).optional(),
    anchors: keys({
      kind: z.string().meta({ description: "id of a kind in anchor_kinds" }),
      per_rail: z.array(count("anchors on each rail", 2)).min(1).max(20),
    }).optional(),
  },
  "range for search; without it a range round today's design is looked through",
);

export type SearchInput = z.output<typeof searchSchema>;
