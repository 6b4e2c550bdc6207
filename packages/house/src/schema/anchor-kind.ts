import { picketSets } from "@hoopstay/ground";
import type * as z from "zod/mini";
import { choice, keys, list, optional, shortName, words, yes } from "./field.ts";
import { quantity } from "./quantity.ts";

const length = (about: string) => quantity("length", about);

const anchorForms = ["screw", "driven plate", "stake", "picket set", "deadman", "block"] as const;
export const leads = ["out", "in", "front", "back"] as const;

const link = (what: string) =>
  optional(
    keys(
      {
        working_load: optional(quantity("force", "working load limit, as marked")),
        breaking_load: optional(quantity("force", "breaking load; never used as a capacity")),
      },
      what,
    ),
  );

/** A kind of anchor the owner has or could buy. What it holds depends on the ground: site file. */
export const anchorKindSchema = keys(
  {
    id: shortName(),
    form: choice(anchorForms),
    words: optional(words("what it is called")),
    plates: optional(
      list(
        keys({ diameter: length("of the plate"), depth: length("upright, to the plate's middle") }),
        { about: "plates of a screw anchor", least: 1 },
      ),
    ),
    shaft: optional(
      keys({
        diameter: length("of the rod or tube"),
        wall: optional(length("wall of a tube; left out for a solid rod")),
        yield: optional(quantity("pressure", "yield stress; 36 ksi where unknown")),
        pull_height: optional(quantity("length", "tether above ground", "not-negative")),
      }),
    ),
    stabiliser: optional(
      keys({
        width: length("of the plate"),
        top: quantity("length", "its top below ground", "not-negative"),
        height: length("of the plate"),
      }),
    ),
    plate_area: optional(quantity("area", "of a driven plate")),
    depth: optional(length("upright depth: plate middle, stake point, middle of a deadman's face")),
    set: optional(choice(picketSets, "pickets in the row, nearest first")),
    body: optional(choice(["timber", "log"], "of a deadman")),
    face: optional(length("height of a deadman's face")),
    length: optional(length("of a deadman")),
    weight: optional(quantity("force", "of a block, at the lowest it can be")),
    width: optional(length("of a block along the pull")),
    tie_height: optional(quantity("length", "of the tether on a block", "not-negative")),
    tie_setback: optional(quantity("length", "tie behind the block's near face", "not-negative")),
    stands: optional(
      choice(["upright", "in line"], "shaft upright, or set in line with the tether"),
    ),
    direct: optional(yes("tether made fast to the shaft with no more than 4 in of line")),
    tether: link("strap, chain or cable"),
    eye: link("eye or swivel of the anchor"),
    attachment: link("where it is made fast to the rail"),
    angle: optional(quantity("angle", "tether above the ground; 90 deg is straight down")),
    toward: optional(choice(leads, "where a slanted tether leads")),
    known_scatter: optional(
      quantity("fraction", "scatter of many earlier tests in this soil, where it is known"),
    ),
  },
  "a kind of anchor; hold and card look for the fewest of each kind",
);

export type AnchorKindInput = z.output<typeof anchorKindSchema>;

export const tractorSchema = keys(
  {
    what: optional(words("tractor, ATV")),
    weight: quantity("force", "of the vehicle"),
    on_driven_wheels: quantity("force", "weight on the driven wheels"),
  },
  "what drags the house",
);
