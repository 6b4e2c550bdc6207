import { picketSets } from "@hoopstay/ground";
import * as z from "zod";
import { keys, quantity, words, yes } from "./field.ts";

const length = (about: string) => quantity("length", about);

const anchorForms = ["screw", "driven plate", "stake", "picket set", "deadman", "block"] as const;
export const leads = ["out", "in", "front", "back"] as const;

const link = (what: string) =>
  keys(
    {
      working_load: quantity("force", "working load limit, as marked").optional(),
      breaking_load: quantity("force", "breaking load; never used as a capacity").optional(),
    },
    what,
  ).optional();

/** A kind of anchor the owner has or could buy. What it holds depends on the ground: site file. */
export const anchorKindSchema = keys(
  {
    id: z
      .string()
      .regex(/^[a-z0-9-]+$/)
      .meta({ description: "short name: a-z, 0-9 and -" }),
    form: z.enum(anchorForms),
    words: words("what it is called").optional(),
    plates: z
      .array(
        keys({ diameter: length("of the plate"), depth: length("upright, to the plate's middle") }),
      )
      .min(1)
      .meta({ description: "plates of a screw anchor" })
      .optional(),
    shaft: keys({
      diameter: length("of the rod or tube"),
      wall: length("wall of a tube; left out for a solid rod").optional(),
      yield: quantity("pressure", "yield stress; 36 ksi where unknown").optional(),
      pull_height: quantity("length", "tether above ground", "not-negative").optional(),
    }).optional(),
    stabiliser: keys({
      width: length("of the plate"),
      top: quantity("length", "its top below ground", "not-negative"),
      height: length("of the plate"),
    }).optional(),
    plate_area: quantity("area", "of a driven plate").optional(),
    depth: length(
      "upright depth: plate middle, stake point, middle of a deadman's face",
    ).optional(),
    set: z.enum(picketSets).meta({ description: "pickets in the row, nearest first" }).optional(),
    body: z.enum(["timber", "log"]).meta({ description: "of a deadman" }).optional(),
    face: length("height of a deadman's face").optional(),
    length: length("of a deadman").optional(),
    weight: quantity("force", "of a block, at the lowest it can be").optional(),
    width: length("of a block along the pull").optional(),
    tie_height: quantity("length", "of the tether on a block", "not-negative").optional(),
    tie_setback: quantity("length", "tie behind the block's near face", "not-negative").optional(),
    stands: z
      .enum(["upright", "in line"])
      .meta({ description: "shaft upright, or set in line with the tether" })
      .optional(),
    direct: yes("tether made fast to the shaft with no more than 4 in of line").optional(),
    tether: link("strap, chain or cable"),
    eye: link("eye or swivel of the anchor"),
    attachment: link("where it is made fast to the rail"),
    angle: quantity("angle", "tether above the ground; 90 deg is straight down").optional(),
    toward: z.enum(leads).meta({ description: "where a slanted tether leads" }).optional(),
    known_scatter: quantity(
      "fraction",
      "scatter of many earlier tests in this soil, where it is known",
    ).optional(),
  },
  "a kind of anchor; hold and card look for the fewest of each kind",
);

export type AnchorKindInput = z.output<typeof anchorKindSchema>;

export const tractorSchema = keys(
  {
    what: words("tractor, ATV").optional(),
    weight: quantity("force", "of the vehicle"),
    on_driven_wheels: quantity("force", "weight on the driven wheels"),
  },
  "what drags the house",
);
