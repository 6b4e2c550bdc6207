import type { FileName } from "../engine/messages.ts";

export type DrawingName = "hoop" | "side" | "foot" | "base" | "ends" | "anchors";

/** Questions that belong together: keys of a file, in the order asked, and what is drawn of them. */
export interface Section {
  readonly id: string;
  readonly file: FileName;
  readonly title: string;
  readonly says?: string;
  readonly keys: readonly string[];
  readonly drawing?: DrawingName;
}

export const houseSections: readonly Section[] = [
  { id: "name", file: "house", title: "The house", keys: ["house"] },
  {
    id: "hoops",
    file: "house",
    title: "Hoops",
    says: "Measure on the tube's centre line, with a tape.",
    keys: ["hoops"],
    drawing: "hoop",
  },
  {
    id: "stubs",
    file: "house",
    title: "Stubs and feet",
    says: "What the hoops are sleeved on, how they are bolted, and the weld on the rail.",
    keys: ["stubs"],
    drawing: "foot",
  },
  {
    id: "rails",
    file: "house",
    title: "Rails and base",
    keys: ["rails", "cross_members", "corner_braces", "drawbar"],
    drawing: "base",
  },
  {
    id: "lengthwise",
    file: "house",
    title: "Along the house",
    says: "Ridge, purlins, braces in the end bays, boards.",
    keys: ["ridge", "purlins", "end_braces", "base_boards", "hip_boards"],
    drawing: "side",
  },
  {
    id: "ties",
    file: "house",
    title: "Ties and braces of the hoops",
    keys: ["collar_ties", "truss_bars", "knee_braces"],
    drawing: "hoop",
  },
  {
    id: "openings",
    file: "house",
    title: "Cover, sides and vents",
    says: "Openings decide how far the wind gets inside.",
    keys: ["film", "roll_up_sides", "vents", "gaps"],
    drawing: "side",
  },
  {
    id: "ends",
    file: "house",
    title: "End walls and doors",
    keys: ["end_walls", "end_rails"],
    drawing: "ends",
  },
  {
    id: "weights",
    file: "house",
    title: "Weights in it",
    says: "Only what is made fast and stays. Animals, feed and bedding hold nothing down.",
    keys: ["bins", "fittings", "measured_weight"],
    drawing: "base",
  },
  {
    id: "anchors",
    file: "house",
    title: "Anchors and ballast fitted now",
    says: "The pull an anchor may carry in this ground. The number on its label is not that.",
    keys: ["anchors", "ballast"],
    drawing: "anchors",
  },
  {
    id: "kinds",
    file: "house",
    title: "Anchors you could set",
    says: "Kinds you have or could buy. The ground tells what they hold, and how many it takes.",
    keys: ["anchor_kinds"],
  },
  { id: "tractor", file: "house", title: "What pulls it", keys: ["tractor"] },
  {
    id: "others",
    file: "house",
    title: "Prices, variants and states of your own",
    keys: ["prices", "variants", "search", "states", "only_these_states"],
  },
];

export const placeSections: readonly Section[] = [
  {
    id: "place",
    file: "site",
    title: "The place",
    keys: ["site", "date", "now", "front_faces"],
    drawing: "anchors",
  },
  {
    id: "wind",
    file: "site",
    title: "Wind and openness",
    says: "The design speed of the place, by the local code. The forecast goes into the answer, under Storm.",
    keys: ["wind", "exposure", "upwind_fetch", "elevation"],
  },
  {
    id: "slopes",
    file: "site",
    title: "Hill and slope",
    keys: ["hill", "slope", "drag_slope"],
  },
  {
    id: "ground",
    file: "site",
    title: "The ground",
    says: "What a hand, a heel and a rod tell. What is not known is taken cautiously.",
    keys: ["ground", "services_located"],
  },
  {
    id: "pulls",
    file: "site",
    title: "Anchors pulled here",
    says: "A pull with a scale tells more than any table.",
    keys: ["pull_tests", "every_anchor_proved"],
  },
  {
    id: "engineer",
    file: "site",
    title: "For the engineer",
    keys: ["combination", "quarter_reading"],
  },
];
