import * as z from "zod/mini";
import { described } from "./described.ts";
import { keys, list, optional, text, words } from "./field.ts";
import { quantity } from "./quantity.ts";
import { tubeSchema } from "./tube.ts";

const price = (about: string) =>
  described(
    z
      .number({ error: () => "a number without a unit, such as 46.50" })
      .check(z.positive(), z.maximum(1e6)),
    about,
  );

const stick = keys(
  {
    tube: optional(tubeSchema),
    for: optional(text("in place of tube: a key of this file where it stands, as hoops.tube")),
    length: quantity("length", "length of a stick as it is sold"),
    price: optional(price("of one stick")),
  },
  "a tube as it is sold",
);

const anchorPrice = keys({
  kind: optional(text("id of its kind in anchor_kinds; left out: those whose pull is entered")),
  price: price("of one, with what belongs to it"),
});

/** What the owner is asked for steel and anchors. Nothing is priced that is not told here. */
export const pricesSchema = keys(
  {
    currency: words("the money all prices are in"),
    saw_cut: optional(quantity("length", "width of a saw cut", "not-negative")),
    stock: optional(list(stick, { least: 1, most: 200 })),
    anchors: optional(list(anchorPrice, { least: 1, most: 50 })),
  },
  "prices, and the lengths that tube is sold in: compare and search use them",
);
