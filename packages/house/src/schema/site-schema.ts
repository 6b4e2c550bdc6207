import * as z from "zod";
import { keys, quantity, words, yes } from "./field.ts";
import { groundSchema, pullTestSchema } from "./ground.ts";

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

const compass = (about: string) => z.enum(compassPoints).meta({ description: about });

/** Where the house stands today. Nothing of the house is repeated here. */
export const siteSchema = keys({
  $schema: z.string().optional(),
  site: words("name of the place"),
  date: words("date of the visit").optional(),
  wind: keys({
    standard: z.enum(["ASCE 7-16", "ASCE 7-22"]),
    speed: quantity("speed", "wind speed"),
    basis: z
      .enum(["design", "service", "gust"])
      .meta({
        description:
          "design: strength-level map speed (ASCE 7-10 and later); service: older map speed; gust: a real 3-second gust at 10 m",
      })
      .optional(),
    risk_category: z
      .enum(["I", "II", "III", "IV"])
      .meta({ description: "of a design speed" })
      .optional(),
  }),
  exposure: z.enum(["B", "C", "D"]).meta({ description: "C unless known otherwise" }).optional(),
  upwind_fetch: words(
    "for exposure B: the built-up or wooded fetch upwind, as measured",
  ).optional(),
  elevation: quantity("length", "ground elevation above sea level", "any").optional(),
  hill: keys({
    shape: z.enum(["ridge", "escarpment", "hill"]),
    height: quantity("length", "height of the hill"),
    half_length: quantity("length", "from the crest upwind to half the height"),
    from_crest: quantity("length", "distance from the crest, downwind is plus", "any").optional(),
  }).optional(),
  slope: keys({
    angle: quantity("angle", "slope of the ground", "not-negative"),
    downhill: compass("where it falls to; left out where unknown").optional(),
  }).optional(),
  ground: groundSchema.optional(),
  pull_tests: z.array(pullTestSchema).meta({ description: "the pull log" }).optional(),
  every_anchor_proved: yes("every anchor in use is pulled to its proof load").optional(),
  services_located: yes("buried pipes and cables have been located").optional(),
  drag_slope: quantity("angle", "steepest slope on the way of a move", "not-negative").optional(),
  front_faces: compass("where the front of the house points").optional(),
  combination: z.enum(["ASD", "LRFD"]).optional(),
  quarter_reading: keys({
    reading: z.enum(["arc", "span"]),
    reason: words("why one reading is enough; printed in the report"),
  }).optional(),
  now: z.string().meta({ description: "state the house stands in now, such as shut" }).optional(),
});

export type SiteInput = z.output<typeof siteSchema>;
