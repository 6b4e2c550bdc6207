import * as z from "zod/mini";
import { described } from "./described.ts";
import { keys, list, words } from "./field.ts";

/** A house like today's with some keys changed. What a change leads to is checked by compare. */
const variant = keys({
  name: words("what the variant is called"),
  change: described(
    z.record(z.string(), z.unknown()),
    "keys of this file, such as hoops.tube.gauge, with the value that would stand there; null takes a key out",
    [{ "rails.tube.size": "HSS3X3X1/8", "hoops.count": 11 }],
  ),
});

export const variantsSchema = list(variant, {
  about: "variants of this house: compare sets them beside it",
  least: 1,
  most: 6,
});
