import type * as z from "zod/mini";
import { anchorKindSchema, tractorSchema } from "./anchor-kind.ts";
import {
  choice,
  count,
  keys,
  list,
  optional,
  place,
  shortName,
  text,
  words,
  yes,
} from "./field.ts";
import {
  barEnds,
  boardFixing,
  clamps,
  footBolts,
  hoopJoint,
  lockChannel,
  plateSteel,
  studs,
  weld,
} from "./fixings.ts";
import { pricesSchema } from "./prices.ts";
import { quantity } from "./quantity.ts";
import { searchSchema } from "./search.ts";
import { tubeSchema } from "./tube.ts";
import { variantsSchema } from "./variants.ts";

const length = (about: string) => quantity("length", about);

const hoops = keys({
  shape: choice(["round", "pointed"], "round (one circle) or pointed"),
  span: length("centre to centre of the hoop feet"),
  rise: length("crown above the springing, on the tube's centre line"),
  length: length("first hoop to last hoop"),
  spacing: optional(length("hoop to hoop")),
  count: optional(count("number of hoops, in place of spacing", 2)),
  leg: optional(quantity("length", "straight leg below the arc", "not-negative")),
  centre_offset: optional(
    quantity(
      "length",
      "pointed hoop that does not spring upright: how far each arc's centre lies beyond the middle",
      "not-negative",
    ),
  ),
  tube: tubeSchema,
  joints: optional(list(hoopJoint)),
});

const rails = keys({
  tube: tubeSchema,
  length: optional(length("straight bearing length of each rail")),
  noses: optional(
    keys({
      front: optional(quantity("length", "upturned nose at the front", "not-negative")),
      back: optional(quantity("length", "upturned nose at the back", "not-negative")),
    }),
  ),
  splices: optional(
    keys({
      count: count("splice plates in all"),
      length: length("length of a plate"),
      width: length("width of a plate"),
      thickness: length("thickness of a plate"),
      at: optional(
        list(quantity("length", "where a splice is, along the house from the middle", "any")),
      ),
      weld: optional(weld),
      ...plateSteel,
    }),
  ),
});

const bar = { tube: tubeSchema, count: count("how many") };
const placedBar = {
  ...bar,
  length: length("length of each"),
  height: length("middle above ground"),
};

const wood = choice(
  ["spruce-pine-fir", "southern-pine", "douglas-fir-larch", "hem-fir"],
  "kind of wood",
);

const board = {
  thickness: length("dressed thickness"),
  width: length("dressed width"),
  wood: optional(wood),
};

const door = keys({
  name: optional(words("what it is called")),
  width: length("clear width of the opening"),
  height: length("clear height of the opening"),
  weight: optional(quantity("force", "weight of the leaf or leaves")),
});

const endWall = keys({
  cladding: optional(keys({ mass: quantity("mass-per-area", "mass of the cladding by area") })),
  framing: optional(keys({ weight: quantity("force", "studs, frames, fixings together") })),
  studs: optional(studs),
  doors: optional(list(door)),
  removable: optional(yes("whether the wall can be off while the house stands")),
});

const rollUp = keys({
  length: length("length of the opening"),
  height: length("height of the opening, measured along the film"),
  pipe: optional(tubeSchema),
});

const vent = keys({
  wall: choice(["roof", "left", "right", "front", "back"]),
  area: quantity("area", "free area when open"),
  shuts: optional(yes("whether it can be shut")),
});

const face = keys({ width: length("width"), height: length("height") });

const bin = keys({
  what: words("feed bin, water tank"),
  empty: quantity("force", "weight empty"),
  full: quantity("force", "weight full"),
  at: place("middle of the bin"),
  side_face: optional(face),
  end_face: optional(face),
  outside: optional(yes("whether it stands outside the cover")),
});

const fitting = keys({
  what: words("roosts, nest boxes, shelves"),
  weight: quantity("force", "weight, dry and clean"),
  weight_high: optional(quantity("force", "weight at its heaviest")),
  at: place("middle of it"),
});

const anchor = keys({
  name: optional(words("name or number of the anchor")),
  side: choice(["left", "right", "middle"], "rail it is made fast to"),
  along: quantity("length", "along the house, from the middle; front is plus", "any"),
  kind: optional(text("id of its kind in anchor_kinds; the ground then tells what it holds")),
  pull: optional(
    quantity("force", "allowable pull along the tether, where it is known (not a label rating)"),
  ),
  angle: optional(quantity("angle", "tether above the ground; 90 deg is straight up and down")),
  toward: optional(
    choice(["out", "in", "front", "back"], "where a slanted tether leads, seen from the rail"),
  ),
});

const ballast = keys({
  what: words("blocks, barrels"),
  weight: optional(quantity("force", "weight, at the lowest it can be")),
  water: optional(
    keys(
      {
        volume: quantity("volume", "of the full container"),
        fill: quantity("fraction", "how full it was found", "not-negative"),
        closed: yes("keeps its water when it is tilted"),
        level_seen: yes("the level was looked at and written down"),
        may_flood_or_drain: yes("the ground can flood, or a leak or animals drain it"),
      },
      "a water container in place of a weight; it counts by its fill",
    ),
  ),
  at: place("middle of it"),
  fixed: yes("made fast on the skids; loose ballast counts nothing"),
});

const opening = keys(
  {
    left: optional(quantity("area", "opening in the left side", "not-negative")),
    right: optional(quantity("area", "opening in the right side", "not-negative")),
    front: optional(quantity("area", "opening in the front end", "not-negative")),
    back: optional(quantity("area", "opening in the back end", "not-negative")),
    roof: optional(quantity("area", "opening in the roof", "not-negative")),
  },
  "all openings in this state, gaps included",
);

const extraState = keys({
  id: shortName(),
  words: words("the state in the owner's words"),
  openings: opening,
  missing: optional(list(choice(["front", "back"]))),
});

const measured = keys(
  {
    total: quantity("force", "measured weight of the whole house"),
    high: optional(quantity("force", "weight at its heaviest, where it was measured too")),
    at: optional(place("centre of gravity, where it is known")),
  },
  "a measured weight in place of the take-off",
);

/** The house as its owner knows it. Where it stands is in the site file. */
export const houseSchema = keys({
  $schema: optional(text()),
  house: words("name of the house"),
  hoops,
  stubs: keys({
    tube: tubeSchema,
    length: length("length of a stub above the rail"),
    shoulder: optional(quantity("length", "gap between rail and hoop", "not-negative")),
    bolts: optional(footBolts),
    weld: optional(weld),
  }),
  rails,
  cross_members: optional(
    keys(
      {
        ...bar,
        at: optional(
          list(quantity("length", "where one is, along the house from the middle", "any")),
        ),
        weld: optional(weld),
      },
      "tubes from rail to rail",
    ),
  ),
  corner_braces: optional(
    keys({ ...bar, length: length("length of each") }, "diagonals in the plan"),
  ),
  drawbar: optional(
    keys({
      tube: tubeSchema,
      length: length("length in all"),
      end: choice(["front", "back"]),
    }),
  ),
  ridge: optional(keys({ tube: tubeSchema, clamps: optional(clamps) })),
  purlins: optional(
    keys(
      { ...bar, clamps: optional(clamps), under_cover: optional(yes("the cover lies on them")) },
      "lines of purlin besides the ridge",
    ),
  ),
  collar_ties: optional(keys({ ...bar, height: length("above ground") }, "ties across the hoops")),
  truss_bars: optional(keys({ ...placedBar, ...barEnds }, "bars between tie and hoop")),
  knee_braces: optional(keys({ ...placedBar, ...barEnds }, "braces from hoop to tie")),
  end_braces: optional(keys(placedBar, "diagonal braces in the end bays")),
  base_boards: optional(keys({ ...board, ...boardFixing }, "boards along both rails")),
  hip_boards: optional(
    keys({ ...board, ...boardFixing, height: length("above ground") }, "boards along both hips"),
  ),
  end_rails: optional(keys(board, "boards across both ends")),
  end_walls: optional(keys({ front: optional(endWall), back: optional(endWall) })),
  film: optional(
    keys({
      layers: optional(count("layers")),
      thickness: optional(length("thickness of a layer")),
      mass: optional(quantity("mass-per-area", "mass by area, all layers")),
      removable: optional(yes("whether the film can be stripped")),
      channel: optional(lockChannel),
    }),
  ),
  roll_up_sides: optional(keys({ left: optional(rollUp), right: optional(rollUp) })),
  vents: optional(list(vent)),
  gaps: optional(
    keys({
      sides: optional(quantity("length", "mean gap under rails and boards, sides", "not-negative")),
      ends: optional(quantity("length", "mean gap under the ends", "not-negative")),
    }),
  ),
  bins: optional(list(bin)),
  fittings: optional(list(fitting)),
  anchor_kinds: optional(list(anchorKindSchema)),
  anchors: optional(list(anchor)),
  ballast: optional(list(ballast)),
  tractor: optional(tractorSchema),
  measured_weight: optional(measured),
  states: optional(list(extraState)),
  only_these_states: optional(yes("check only the states listed here, for comparison work")),
  variants: optional(variantsSchema),
  prices: optional(pricesSchema),
  search: optional(searchSchema),
});

export type HouseInput = z.output<typeof houseSchema>;
