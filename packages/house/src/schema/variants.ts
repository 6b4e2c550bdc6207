import * as z from "zod";
import { keys, words } from "./field.ts";

/** A house like today's with some keys changed. What a change leads to is checked by compare. */
const variant = keys({
  name: words("what the variant is called"),
  change: z.record(z.string(), z.unknown()).meta({
    description:
      "keys of this file, such as hoops.tube.gauge, with the value that would stand there; null takes a key out",
    examples: [{ "rails.tube.size": "HSS3X3X1/8", "hoops.count": 11 }],
  }),
});

export const variantsSchema = z
  .array(variant)
  .min(1)
  .max(6)
  .meta({ description: "variants of this house: compare sets them beside it" });
