import * as z from "zod";
import { keys, quantity, words } from "./field.ts";
import { tubeSchema } from "./tube.ts";

const price = (about: string) =>
  z
    .number({ error: () => "a number without a unit, such as 46.50" })
    .positive()
    .max(1e6)
    .meta({ description: about });

const stick = keys(
  {
    tube: tubeSchema.optional(),
    for: z
      .string()
      .meta({ description: "in place of tube: a key of this file where it stands, as hoops.tube" })
      .optional(),
    length: quantity("length", "length of a stick as it is sold"),
    price: price("of one stick").optional(),
  },
  "a tube as it is sold",
);

const anchorPrice = keys({
  kind: z
    .string()
    .meta({ description: "id of its kind in anchor_kinds; left out: those whose pull is entered" })
    .optional(),
  price: price("of one, with what belongs to it"),
});

/** What the owner is asked for steel and anchors. Nothing is priced that is not told here. */
export const pricesSchema = keys(
  {
    currency: words("the money all prices are in"),
    saw_cut: quantity("length", "width of a saw cut", "not-negative").optional(),
    stock: z.array(stick).min(1).max(200).optional(),
    anchors: z.array(anchorPrice).min(1).max(50).optional(),
  },
  "prices, and the lengths that tube is sold in: compare and search use them",
);
