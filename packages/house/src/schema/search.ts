import * as z from "zod/mini";
import { count, keys, list, optional, text } from "./field.ts";
import { quantity } from "./quantity.ts";
import { type TubeInput, tubeSchema } from "./tube.ts";

/** A tube, or the name of a catalogue size alone. */
const tubeOrSize = z.pipe(
  z.union([text(), tubeSchema], { error: () => "a catalogue size, or a tube by its dimensions" }),
  z.transform((given): TubeInput => (typeof given === "string" ? { size: given } : given)),
);
const tubes = list(tubeOrSize, {
  about: "tubes to look at: sizes of the catalogue, or tubes with their dimensions",
  least: 1,
  most: 100,
});

/** The range that search looks through; what is left out stays as it is today. */
export const searchSchema = keys(
  {
    hoops: optional(
      keys({
        tubes: optional(tubes),
        spacing: optional(list(quantity("length", "hoop to hoop"), { least: 1, most: 20 })),
        counts: optional(
          list(count("number of hoops, in place of spacing", 2), { least: 1, most: 20 }),
        ),
      }),
    ),
    rails: optional(keys({ tubes })),
    anchors: optional(
      keys({
        kind: text("id of a kind in anchor_kinds"),
        per_rail: list(count("anchors on each rail", 2), { least: 1, most: 20 }),
      }),
    ),
  },
  "range for search; without it a range round today's design is looked through",
);

export type SearchInput = z.output<typeof searchSchema>;
