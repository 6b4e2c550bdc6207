import * as z from "zod";
import { anchorKindSchema, tractorSchema } from "./anchor-kind.ts";
import { count, keys, place, quantity, words, yes } from "./field.ts";
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
import { searchSchema } from "./search.ts";
import { tubeSchema } from "./tube.ts";
import { variantsSchema } from "./variants.ts";

const length = (about: string) => quantity("length", about);

const hoops = keys({
  shape: z.enum(["round", "pointed"]).meta({ description: "round (one circle) or pointed" }),
  span: length("centre to centre of the hoop feet"),
  rise: length("crown above the springing, on the tube's centre line"),
  length: length("first hoop to last hoop"),
  spacing: length("hoop to hoop").optional(),
  count: count("number of hoops, in place of spacing", 2).optional(),
  leg: quantity("length", "straight leg below the arc", "not-negative").optional(),
  centre_offset: quantity(
    "length",
    "pointed hoop that does not spring upright: how far each arc's centre lies beyond the middle",
    "not-negative",
  ).optional(),
  tube: tubeSchema,
  joints: z.array(hoopJoint).optional(),
});

const rails = keys({
  tube: tubeSchema,
  length: length("straight bearing length of each rail").optional(),
  noses: keys({
    front: quantity("length", "upturned nose at the front", "not-negative").optional(),
    back: quantity("length", "upturned nose at the back", "not-negative").optional(),
  }).optional(),
  splices: keys({
    count: count("splice plates in all"),
    length: length("length of a plate"),
    width: length("width of a plate"),
    thickness: length("thickness of a plate"),
    at: z
      .array(quantity("length", "where a splice is, along the house from the middle", "any"))
      .optional(),
    weld: weld.optional(),
    ...plateSteel,
  }).optional(),
});

const bar = { tube: tubeSchema, count: count("how many") };
const placedBar = {
  ...bar,
  length: length("length of each"),
  height: length("middle above ground"),
};

const wood = z
  .enum(["spruce-pine-fir", "southern-pine", "douglas-fir-larch", "hem-fir"])
  .meta({ description: "kind of wood" });

const board = {
  thickness: length("dressed thickness"),
  width: length("dressed width"),
  wood: wood.optional(),
};

const door = keys({
  name: words("what it is called").optional(),
  width: length("clear width of the opening"),
  height: length("clear height of the opening"),
  weight: quantity("force", "weight of the leaf or leaves").optional(),
});

const endWall = keys({
  cladding: keys({ mass: quantity("mass-per-area", "mass of the cladding by area") }).optional(),
  framing: keys({ weight: quantity("force", "studs, frames, fixings together") }).optional(),
  studs: studs.optional(),
  doors: z.array(door).optional(),
  removable: yes("whether the wall can be off while the house stands").optional(),
});

const rollUp = keys({
  length: length("length of the opening"),
  height: length("height of the opening, measured along the film"),
  pipe: tubeSchema.optional(),
});

const vent = keys({
  wall: z.enum(["roof", "left", "right", "front", "back"]),
  area: quantity("area", "free area when open"),
  shuts: yes("whether it can be shut").optional(),
});

const face = keys({ width: length("width"), height: length("height") });

const bin = keys({
  what: words("feed bin, water tank"),
  empty: quantity("force", "weight empty"),
  full: quantity("force", "weight full"),
  at: place("middle of the bin"),
  side_face: face.optional(),
  end_face: face.optional(),
  outside: yes("whether it stands outside the cover").optional(),
});

const fitting = keys({
  what: words("roosts, nest boxes, shelves"),
  weight: quantity("force", "weight, dry and clean"),
  weight_high: quantity("force", "weight at its heaviest").optional(),
  at: place("middle of it"),
});

const anchor = keys({
  name: words("name or number of the anchor").optional(),
  side: z.enum(["left", "right", "middle"]).meta({ description: "rail it is made fast to" }),
  along: quantity("length", "along the house, from the middle; front is plus", "any"),
  kind: z
    .string()
    .meta({ description: "id of its kind in anchor_kinds; the ground then tells what it holds" })
    .optional(),
  pull: quantity(
    "force",
    "allowable pull along the tether, where it is known (not a label rating)",
  ).optional(),
  angle: quantity("angle", "tether above the ground; 90 deg is straight up and down").optional(),
  toward: z
    .enum(["out", "in", "front", "back"])
    .meta({ description: "where a slanted tether leads, seen from the rail" })
    .optional(),
});

const ballast = keys({
  what: words("blocks, barrels"),
  weight: quantity("force", "weight, at the lowest it can be").optional(),
  water: keys(
    {
      volume: quantity("volume", "of the full container"),
      fill: quantity("fraction", "how full it was found", "not-negative"),
      closed: yes("keeps its water when it is tilted"),
      level_seen: yes("the level was looked at and written down"),
      may_flood_or_drain: yes("the ground can flood, or a leak or animals drain it"),
    },
    "a water container in place of a weight; it counts by its fill",
  ).optional(),
  at: place("middle of it"),
  fixed: yes("made fast on the skids; loose ballast counts nothing"),
});

const opening = keys({
  left: quantity("area", "opening in the left side", "not-negative").optional(),
  right: quantity("area", "opening in the right side", "not-negative").optional(),
  front: quantity("area", "opening in the front end", "not-negative").optional(),
  back: quantity("area", "opening in the back end", "not-negative").optional(),
  roof: quantity("area", "opening in the roof", "not-negative").optional(),
});

const extraState = keys({
  id: z
    .string()
    .regex(/^[a-z0-9-]+$/)
    .meta({ description: "short name: a-z, 0-9 and -" }),
  words: words("the state in the owner's words"),
  openings: opening.meta({ description: "all openings in this state, gaps included" }),
  missing: z.array(z.enum(["front", "back"])).optional(),
});

const measured = keys(
  {
    total: quantity("force", "measured weight of the whole house"),
    high: quantity("force", "weight at its heaviest, where it was measured too").optional(),
    at: place("centre of gravity, where it is known").optional(),
  },
  "a measured weight in place of the take-off",
);

/** The house as its owner knows it. Where it stands is in the site file. */
export const houseSchema = keys({
  $schema: z.string().optional(),
  house: words("name of the house"),
  hoops,
  stubs: keys({
    tube: tubeSchema,
    length: length("length of a stub above the rail"),
    shoulder: quantity("length", "gap between rail and hoop", "not-negative").optional(),
    bolts: footBolts.optional(),
    weld: weld.optional(),
  }),
  rails,
  cross_members: keys(
    {
      ...bar,
      at: z
        .array(quantity("length", "where one is, along the house from the middle", "any"))
        .optional(),
      weld: weld.optional(),
    },
    "tubes from rail to rail",
  ).optional(),
  corner_braces: keys(
    { ...bar, length: length("length of each") },
    "diagonals in the plan",
  ).optional(),
  drawbar: keys({
    tube: tubeSchema,
    length: length("length in all"),
    end: z.enum(["front", "back"]),
  }).optional(),
  ridge: keys({ tube: tubeSchema, clamps: clamps.optional() }).optional(),
  purlins: keys(
    { ...bar, clamps: clamps.optional(), under_cover: yes("the cover lies on them").optional() },
    "lines of purlin besides the ridge",
  ).optional(),
  collar_ties: keys({ ...bar, height: length("above ground") }, "ties across the hoops").optional(),
  truss_bars: keys({ ...placedBar, ...barEnds }, "bars between tie and hoop").optional(),
  knee_braces: keys({ ...placedBar, ...barEnds }, "braces from hoop to tie").optional(),
  end_braces: keys(placedBar, "diagonal braces in the end bays").optional(),
  base_boards: keys({ ...board, ...boardFixing }, "boards along both rails").optional(),
  hip_boards: keys(
    { ...board, ...boardFixing, height: length("above ground") },
    "boards along both hips",
  ).optional(),
  end_rails: keys(board, "boards across both ends").optional(),
  end_walls: keys({ front: endWall.optional(), back: endWall.optional() }).optional(),
  film: keys({
    layers: count("layers").optional(),
    thickness: length("thickness of a layer").optional(),
    mass: quantity("mass-per-area", "mass by area, all layers").optional(),
    removable: yes("whether the film can be stripped").optional(),
    channel: lockChannel.optional(),
  }).optional(),
  roll_up_sides: keys({ left: rollUp.optional(), right: rollUp.optional() }).optional(),
  vents: z.array(vent).optional(),
  gaps: keys({
    sides: quantity("length", "mean gap under rails and boards, sides", "not-negative").optional(),
    ends: quantity("length", "mean gap under the ends", "not-negative").optional(),
  }).optional(),
  bins: z.array(bin).optional(),
  fittings: z.array(fitting).optional(),
  anchor_kinds: z.array(anchorKindSchema).optional(),
  anchors: z.array(anchor).optional(),
  ballast: z.array(ballast).optional(),
  tractor: tractorSchema.optional(),
  measured_weight: measured.optional(),
  states: z.array(extraState).optional(),
  only_these_states: yes("check only the states listed here, for comparison work").optional(),
  variants: variantsSchema.optional(),
  prices: pricesSchema.optional(),
  search: searchSchema.optional(),
});

export type HouseInput = z.output<typeof houseSchema>;
