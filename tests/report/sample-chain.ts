import {
  type ChainReview,
  type LinkCheck,
  type LinkId,
  type LinkSummary,
  type Measure,
  measured,
} from "@hoopstay/core";

// Invented numbers of the usual size, for layout only: none of them is computed from another.

const directions = ["from the left", "from the right", "from the front", "from the back"] as const;
const states = [
  "all shut",
  "front door open",
  "both end doors open",
  "left side up",
  "both sides up",
  "front end wall missing",
  "film off, end walls standing",
] as const;

interface Made {
  readonly id: LinkId;
  readonly words: string;
  readonly gust: number;
  readonly measure: Measure;
  readonly parts: readonly (readonly [part: string, place: string])[];
}

const made: readonly Made[] = [
  {
    id: "bolts",
    words: "the bolts at the foot of a hoop",
    gust: 27.3,
    measure: "force",
    parts: [
      ["bearing of the bolts in the hoop's wall", "windward foot of hoop 3 of 9"],
      ["tearing out at the hoop's end", "windward foot of hoop 3 of 9"],
      ["shear of the bolts", "leeward foot of hoop 1 of 9"],
    ],
  },
  {
    id: "face",
    words: "the rail's wall under a stub",
    gust: 29.8,
    measure: "moment",
    parts: [["rail wall pulled up and turned by the stub", "stub of hoop 5 of 9, left rail"]],
  },
  {
    id: "hoop",
    words: "the hoop's tube",
    gust: 31.2,
    measure: "moment",
    parts: [
      ["bending with thrust, at a bolt hole", "windward haunch of hoop 5 of 9"],
      ["thrust out of the hoop's plane", "hoop 5 of 9"],
    ],
  },
  {
    id: "anchors",
    words: "the anchors",
    gust: 33.1,
    measure: "force",
    parts: [["pull out of the ground", "anchor L1"]],
  },
  {
    id: "weld",
    words: "the weld of a stub to the rail",
    gust: 35.5,
    measure: "force",
    parts: [["fillet weld", "stub of hoop 1 of 9, left rail"]],
  },
  {
    id: "rail",
    words: "the rail",
    gust: 36,
    measure: "moment",
    parts: [["bending up, bending sideways and twist", "left rail, between anchors 2 and 3"]],
  },
  {
    id: "ridge-line",
    words: "what holds the hoops along the ridge",
    gust: 37.7,
    measure: "force",
    parts: [["brace of the end bay", "front end bay, left"]],
  },
  {
    id: "ties",
    words: "the collar ties",
    gust: 39,
    measure: "force",
    parts: [["pushed together: bows out", "hoop 5 of 9"]],
  },
  {
    id: "boards",
    words: "the boards along the cover's edge",
    gust: 40.1,
    measure: "moment",
    parts: [["bending between hoops", "hip board, left"]],
  },
  {
    id: "stub",
    words: "the stubs",
    gust: 44,
    measure: "moment",
    parts: [["bending", "stub of hoop 9 of 9, right rail"]],
  },
  {
    id: "cross-members",
    words: "the cross members between the rails",
    gust: 51.8,
    measure: "moment",
    parts: [["bending", "front cross member"]],
  },
  {
    id: "end-wall",
    words: "the end walls",
    gust: Number.POSITIVE_INFINITY,
    measure: "force",
    parts: [["stud", "back end wall"]],
  },
];

const stateFactor = (state: number): number => [1.4, 1.05, 1, 1.12, 1.08, 1.2, 2.1][state] ?? 1;

function check(one: Made, part: number, state: number, direction: number): LinkCheck {
  const [words = "", place = ""] = one.parts[part] ?? [];
  const gust = one.gust * (1 + 0.13 * part) * stateFactor(state) * (1 + 0.09 * direction);
  const ratio = Number.isFinite(gust) ? (33 / gust) ** 2 : 0;
  return {
    link: one.id,
    part: words,
    place,
    run: part === 0 ? "feet pinned, without ties" : "feet on the rail's stiffness, with ties",
    demand: measured(2900 * ratio, one.measure),
    resistance: measured(2900, one.measure),
    ratio: { ASD: ratio, LRFD: 1.07 * ratio },
    codeSpeed: { ASD: gust / 0.714, LRFD: gust / 0.74 },
    workingGust: gust,
    governs: {
      id: `B-${12 + direction}`,
      loadCase: 1,
      direction: directions[direction] ?? "",
      reading: direction < 2 ? "by arc" : "along",
      set: "ground-sprung",
      inside: "pushes out (+0.55)",
      weight: "low",
    },
  };
}

const linkOf = (one: Made): LinkSummary => ({
  id: one.id,
  words: one.words,
  worst: { state: "both end doors open", check: check(one, 0, 2, 0) },
  states: states
    .map((state, place) => ({ state, check: check(one, 0, place, 0) }))
    .toSorted((a, b) => a.check.workingGust - b.check.workingGust),
  directions: directions.map((direction, place) => ({ direction, check: check(one, 0, 2, place) })),
  parts: one.parts.map((_, part) => ({
    state: "both end doors open",
    check: check(one, part, 2, 0),
  })),
});

const share = (place: number): number => place / 44;

/** Points of a half ellipse on straight legs, with three lobes of moment. */
const hoopPoints = Array.from({ length: 45 }, (_, place) => {
  const [left, right] = [place === 0, place === 44];
  const angle = Math.PI * (1 - Math.min(1, Math.max(0, (place - 1) / 42)));
  return {
    x: left || right ? (left ? -2.7432 : 2.7432) : 2.7432 * Math.cos(angle),
    z: left || right ? 0.0762 : 0.45 + 2.4 * Math.sin(angle),
    moment: 620 * Math.sin(3 * Math.PI * share(place)) * (1 - 0.35 * share(place)),
    thrust: 1900 - 900 * share(place) - 300 * Math.sin(Math.PI * share(place)),
    dx: 0.021 * Math.sin(Math.PI * share(place)),
    dz: 0.014 * Math.sin(2 * Math.PI * share(place)),
  };
});

const along = (value: (at: number) => number) =>
  Array.from({ length: 49 }, (_, place) => {
    const at = -4.8 + 0.2 * place;
    return { at, value: value(at) };
  });

export const sampleChain = (changes: Partial<ChainReview> = {}): ChainReview => ({
  answer: [
    "First to go, at a ",
    { value: 27.3, measure: "speed", atMost: true },
    " gust with both end doors open: the bolts at the windward foot of a hoop.",
  ],
  links: made.map(linkOf),
  notChecked: [
    {
      link: "cover",
      words: "the screws of the lock channel",
      why: "the house file does not say how they are set",
      demand: measured(410, "force-per-length"),
    },
    {
      link: "splices",
      words: "the splices of the rail",
      why: "no plates are entered",
      demand: measured(740, "moment"),
    },
    {
      link: "boards",
      words: "the boards' screws into the hoops",
      why: "screw into thin tube: no rated value is entered",
      demand: null,
    },
  ],
  findings: [
    [
      "A straight stub in this curved hoop needs a straight leg of ",
      measured(0.3048, "length"),
      ".",
    ],
    ["The tie goes into compression under uplift: it counts only where it helps nothing."],
  ],
  states: states.map((words, place) => ({
    id: `state-${place}`,
    words,
    now: place === 1,
    first: check(made[0] as Made, 0, place, 0),
    holds: (33 / (27.3 * stateFactor(place))) ** 2 <= 1,
  })),
  holds: false,
  hoop: {
    title: "Hoop 5 of 9, both end doors open, wind from the left, feet pinned, without ties",
    points: hoopPoints,
    bars: [
      { from: { x: -2.3, z: 1.75 }, to: { x: 2.3, z: 1.75 }, force: -1240 },
      { from: { x: -2.7, z: 0.9 }, to: { x: -1.9, z: 2.18 }, force: 380 },
      { from: { x: 2.7, z: 0.9 }, to: { x: 1.9, z: 2.18 }, force: 0 },
    ],
  },
  rail: {
    lines: [
      {
        title: "Bending up and down, left rail",
        measure: "moment",
        points: along((at) => 910 * Math.sin(1.9 * at)),
      },
      {
        title: "Bending sideways, left rail",
        measure: "moment",
        points: along((at) => 430 * Math.cos(0.9 * at) - 60),
      },
      {
        title: "Twist, left rail",
        measure: "moment",
        points: along((at) => (Math.abs(at % 2.4) < 1.2 ? 120 : -120)),
      },
    ],
    hoops: Array.from({ length: 9 }, (_, place) => -4.572 + place * 1.143),
    anchors: [-4.2, 0, 4.2],
    crossMembers: [-4.6, 0.2, 4.6],
  },
  ...changes,
});
