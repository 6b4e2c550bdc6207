import type * as z from "zod/mini";
import { choice, keys, list, optional, text, words, yes } from "./field.ts";
import { groundSchema, pullTestSchema } from "./ground.ts";
import { quantity } from "./quantity.ts";

export const compassPoints = [
  "N",
  "NNE",
  "NE",
  "ENE",
  "E",
  "ESE",
  "SE",
  "SSE",
  "S",
  "SSW",
  "SW",
  "WSW",
  "W",
  "WNW",
  "NW",
  "NNW",
] as const;

const compass = (about: string) => choice(compassPoints, about);

/** Where the house stands today. Nothing of the house is repeated here. */
export const siteSchema = keys({
  $schema: optional(text()),
  site: words("name of the place"),
  date: optional(words("date of the visit")),
  wind: keys({
    standard: choice(["ASCE 7-16", "ASCE 7-22"]),
    speed: quantity("speed", "wind speed"),
    basis: optional(
      choice(
        ["design", "service", "gust"],
        "design: strength-level map speed (ASCE 7-10 and later); service: older map speed; gust: a real 3-second gust at 10 m",
      ),
    ),
    risk_category: optional(choice(["I", "II", "III", "IV"], "of a design speed")),
  }),
  exposure: optional(choice(["B", "C", "D"], "C unless known otherwise")),
  upwind_fetch: optional(words("for exposure B: the built-up or wooded fetch upwind, as measured")),
  elevation: optional(quantity("length", "ground elevation above sea level", "any")),
  hill: optional(
    keys({
      shape: choice(["ridge", "escarpment", "hill"]),
      height: quantity("length", "height of the hill"),
      half_length: quantity("length", "from the crest upwind to half the height"),
      from_crest: optional(quantity("length", "distance from the crest, downwind is plus", "any")),
    }),
  ),
  slope: optional(
    keys({
      angle: quantity("angle", "slope of the ground", "not-negative"),
      downhill: optional(compass("where it falls to; left out where unknown")),
    }),
  ),
  ground: optional(groundSchema),
  pull_tests: optional(list(pullTestSchema, { about: "the pull log" })),
  every_anchor_proved: optional(yes("every anchor in use is pulled to its proof load")),
  services_located: optional(yes("buried pipes and cables have been located")),
  drag_slope: optional(quantity("angle", "steepest slope on the way of a move", "not-negative")),
  front_faces: optional(compass("where the front of the house points")),
  combination: optional(choice(["ASD", "LRFD"])),
  quarter_reading: optional(
    keys({
      reading: choice(["arc", "span"]),
      reason: words("why one reading is enough; printed in the report"),
    }),
  ),
  now: optional(text("state the house stands in now, such as shut")),
});

export type SiteInput = z.output<typeof siteSchema>;
