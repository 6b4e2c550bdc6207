import {
  type AnchorRow,
  cite,
  type HoldReview,
  type JointSummary,
  type KindReview,
  type LayoutReview,
  type MoveCard,
  measured,
  type PullLog,
  type StormLadder,
} from "@hoopstay/core";

// Invented numbers of the usual size, for layout only: none of them is computed from another.

const anchor = (place: number, left: boolean, along: number): AnchorRow => ({
  name: `${left ? "L" : "R"}${place + 1}`,
  side: left ? "left" : "right",
  along,
  across: left ? -2.74 : 2.74,
  angle: 1.05,
  lead: place === 0 ? "out and to the front" : "out",
  toward: [left ? -0.5 : 0.5, place === 0 ? 0.3 : 0],
  pull: 5120 - 310 * place,
  upright: 4400 - 300 * place,
  level: 2560 - 100 * place,
  allowable: 4900,
  ratio: 1.04 - 0.06 * place,
  proof: 7680,
  state: "front end wall missing",
  direction: "from the left",
});

/** Anchors in pairs along both rails, corners first. */
const sampleAnchors = (perRail: number): AnchorRow[] =>
  Array.from({ length: 2 * perRail }, (_, place) => {
    const row = Math.floor(place / 2);
    const along = perRail === 1 ? 0 : 5.5 - (11 * row) / (perRail - 1);
    return anchor(row, place % 2 === 0, along);
  });

const joint = (proved: boolean): JointSummary => ({
  factor: 0.83,
  holds: false,
  gust: 27.4,
  state: "film off, end walls standing",
  direction: "from the right and the front",
  loadCase: 3,
  weight: "low",
  combination: "0.6 D + 0.6 W",
  certificate: proved
    ? {
        wind: [9200, -310, 14800, 1200, -33100, 40],
        weight: [0, 0, -7700, 120, 0, 0],
        tethers: sampleAnchors(2).map(({ name, across, along }) => ({
          name,
          x: across,
          y: along,
          tension: 3100,
          force: [-1550, 0, -2680],
          sums: [-1550, 0, -2680, -8110, 7340, -4250],
        })),
        corners: ["front left", "front right"].map((name) => ({
          name,
          x: -2.74,
          y: 6.1,
          push: 900,
          friction: [-320, 20],
          sums: [-320, 20, 900, 5490, 2466, 1952],
        })),
        left: [0, 0, 1e-9, 0, -2e-9, 0],
      }
    : null,
});

export const sampleLayout = (perRail: number, proved = false): LayoutReview => ({
  perRail,
  anchors: sampleAnchors(perRail),
  held: true,
  carriesLeast: true,
  holds: false,
  oneMissing: { ratio: 1.31, name: "L1" },
  joint: joint(proved),
  remarks: [
    ["One fewer fails: the corner on the windward side would carry ", measured(6100, "force"), "."],
    ["Double the ends: the corners carry most."],
  ],
});

const kind = (id: string, words: string, allowable: number | null): KindReview => ({
  id,
  words,
  basis: allowable === null ? "nothing" : "theory, loose sand, wet",
  allowable,
  governs: allowable === null ? null : "the ground above the plate",
  reason:
    allowable === null ? "No table or theory rates it here: pull three and write it down." : null,
  notChecked: ["the weld of the eye"],
  findings: allowable === null ? [] : ["The label says more than the ground gives."],
  angle: 1.05,
  lead: "out",
  every: allowable === null ? null : sampleLayout(5),
  shut: allowable === null ? null : sampleLayout(4),
  short: null,
});

export const samplePulls = (): PullLog => ({
  kinds: [
    {
      kind: "auger-30",
      words: "screw anchor, 30 in, one 4 in plate",
      tests: [
        {
          date: "2026-10-02",
          place: "low paddock, gate end",
          pull: 6700,
          ended: "failed",
          ground: "wet, as in winter",
          counts: 5360,
          why: "one slow pull: 0.8 for gusts that come again",
        },
        {
          date: "2026-08-11",
          place: "low paddock, brook end",
          pull: 9100,
          ended: "stopped",
          ground: "hard and dry",
          counts: null,
          why: "pulled in dry ground; winter is wet",
        },
      ],
      rated: {
        route: "mean and lowest of the tests",
        characteristic: 4200,
        factor: 2,
        allowable: 2100,
        atMean: 2450,
        atLowest: 2200,
      },
    },
    { kind: "stake", words: "driven stake, 36 in", tests: [], rated: null },
  ],
  next: [
    [
      "Pull one more screw anchor when the ground is wet, to at least ",
      measured(6700, "force"),
      ".",
    ],
  ],
});

export const sampleHold = (changes: Partial<HoldReview> = {}): HoldReview => ({
  holds: false,
  ground: {
    words: ["Loose sand, wet, by what you told of it; not tested."],
    clues: [
      { told: ["a heel sinks in"], means: "loose" },
      { told: ["water in the hole at ", measured(0.6, "length")], means: "wet all through" },
    ],
    findOut: [
      ["Pull one screw anchor to ", measured(5000, "force"), " and write it down."],
      ["Push a rod in: how deep does it go by hand?"],
    ],
  },
  headline: [
    "What is fitted does not hold: at ",
    measured(27.4, "speed", 2),
    " it slides. Ten screw anchors, five on each side, would.",
  ],
  fitted: sampleLayout(4, true),
  kinds: [
    kind("auger-30", "screw anchor, 30 in, one 4 in plate", 4900),
    kind("stake", "driven stake, 36 in", null),
    {
      ...kind("plate", "driven plate, 3 in, on cable", 2900),
      every: null,
      short: ["12 on each side still fall short by ", measured(1900, "force")],
    },
  ],
  ballast: [
    {
      beside: false,
      words: ["Water barrels, ", measured(2050, "force"), " each, tied"],
      pieces: [{ what: "55 gal barrel, full", perRail: 6 }],
      where: ["in a row inside each rail, from ", measured(5.5, "length"), " front to back"],
      holds: true,
    },
  ],
  tow: {
    vehicle: "50 hp tractor on turf tyres",
    slope: 0.06,
    available: { low: 9000, high: 14000 },
    loads: [
      {
        words: "empty",
        running: { low: 4100, high: 5900 },
        starting: { low: 7000, high: 9800 },
        skids: { left: 4700, right: 5100 },
        verdict: "doubtful",
      },
      {
        words: "bins full",
        running: { low: 9100, high: 12100 },
        starting: { low: 13000, high: 17000 },
        skids: { left: 8100, right: 8900 },
        verdict: "no",
      },
    ],
    runsByItself: false,
    remarks: ["Both skids must come free at once: rock it first."],
  },
  pulls: samplePulls(),
  ...changes,
});

export const sampleCard = (perRail = 5, changes: Partial<MoveCard> = {}): MoveCard => ({
  house: "Harrow Brook lambing and greens house",
  site: "Hill top",
  date: "2026-11-12",
  digest: "3f9a1c20b7de4458a1",
  version: "0.1.0",
  go: false,
  headline: [
    "Not here as it is: loose it slides at ",
    measured(6.7, "speed", 2),
    ", and ten anchors must be set before you unhook.",
  ],
  questions: [
    {
      ask: "Are buried pipes and cables located?",
      answer: [
        "Not known: assumed under every anchor, safe side: have them located before one is set.",
      ],
    },
    {
      ask: "How hard and how wet is the ground?",
      answer: [
        "Loose sand, by what you told of it; not tested. Wet or dry: not known: assumed wet, safe side.",
      ],
    },
    {
      ask: "How steep is it, and which way does it fall?",
      answer: [measured(0.06, "angle", 2), ", falling to the house's back left (SSW)."],
    },
    {
      ask: "How open is it: woods, field, water, hill?",
      answer: [
        "Upwind: open field (C). On a ridge, ",
        measured(12.2, "length"),
        " high, ",
        measured(30, "length"),
        " from its crest.",
      ],
    },
    { ask: "Which way does the front face?", answer: ["The front faces SE."] },
    {
      ask: "What wind is coming?",
      answer: [
        "Coming gust: not known, ask the forecast for it. This card is designed for a map speed of ",
        measured(46.9, "speed"),
        "; a forecast gust is never compared with that.",
      ],
    },
  ],
  plan: "Screw anchors, 30 in, to be set",
  anchors: sampleAnchors(perRail),
  order:
    "Corners first, a corner and then the one diagonally across from it: the side the wind will come from is not known, and so a side and an end of each kind are held soonest. The first is the corner with the greatest pull. The others follow from the ends to the middle.",
  close: [
    "front end wall: in place and fastened",
    "front door: shut and latched",
    "back door: shut and latched",
    "left side: rolled down and fastened",
    "right side: rolled down and fastened",
  ],
  doNotUnhook: [
    ["Buried pipes and cables have been located, before the first anchor was set."],
    [
      `All ${2 * perRail} anchors of this card are set, in the order of the list, and each is proved: pulled along its tether to the proof pull beside it and held 10 minutes, with no more than `,
      measured(0.00254, "length", 1),
      " of further movement after the minute 1.",
    ],
    [
      "No head has moved more than ",
      measured(0.0508, "length"),
      " up or ",
      measured(0.1016, "length"),
      " sideways: one that has counts nothing and is set anew, not in its old hole.",
    ],
    ["Every tether is tight, its links closed."],
    ['It is shut: everything under "close" is done.'],
    ["The skids are chocked on the downhill side."],
    [
      "No gust above ",
      measured(5, "speed"),
      ", three quarters of what it stands loose (both sides up), is forecast before the last anchor is proved.",
    ],
  ],
  gustLoose: 6.7,
  looseState: "both sides up",
  gustShutLoose: 7.6,
  gustDone: 33.2,
  shopping: [
    {
      what: "screw anchor, 30 in, one 4 in plate",
      count: 2 * perRail,
      atLeast: null,
      why: `${perRail} on each side`,
    },
    { what: "ratchet strap, 2 in", count: 2 * perRail, atLeast: 7680, why: "one for each anchor" },
    { what: "shackle, 3/8 in", count: 4 * perRail, atLeast: 7680, why: "both ends of a strap" },
  ],
  cautions: [
    "Locate buried services before any anchor is set: a cable or a gas pipe under an anchor kills.",
    "The plate lies above the depth of frost: frost may lift it.",
    "Gusts here are real 3-second gusts at 10 m in open country, not mean winds and not map speeds.",
    "This is not a sealed design. Consult a licensed engineer before anyone relies on it.",
    "The local building authority's rules come first.",
    "Working gust: the real gust at which allowable values are reached. Act well before it, at three quarters of it: forecasts miss gusts.",
    "One storm survived is not a rating. A bent or rusted frame voids this result.",
    "Nobody inside or downwind in a storm.",
    "No welding on galvanised tube without ventilation and removal of the zinc.",
    "In cold air (-10 C) a gust loads 9 % more than the standard's air density assumes.",
    "Anchors count here with the allowable pull that was entered; a label rating is no capacity in this ground.",
  ],
  ...changes,
});

export const sampleLadder = (forecast: number | null = 20.1): StormLadder => ({
  house: "Harrow Brook lambing and greens house",
  site: "Hill top",
  forecast,
  rungs: (
    [
      ["close", 8.9, "close doors and sides", "open it stands ", 0.25, 0.5],
      ["tighten", 12.5, "tighten every tether", "slack tethers let it start; it stands ", 0.5, 1],
      ["add", 13.4, "add anchors or ballast", "as fitted it stands ", 3, 6],
      ["animals", 24.6, "animals out", "with all anchors it stands ", 1, 2],
      ["strip", 26.8, "strip the cover", "the bare frame stands ", 2, 4],
    ] as const
  ).map(([id, gust, does, because, low, high]) => ({
    id,
    gust,
    does,
    because: [because, measured(1.33 * gust, "speed", 2), "."],
    hours: { low, high },
    reached: forecast !== null && forecast >= gust,
  })),
  landmarks: [
    {
      words: "wind advisory",
      from: 20.6,
      to: 25.5,
      citation: cite("judgement", "offices differ", "judgement"),
    },
  ],
  hoursCitation: cite("judgement", "hours for two people; no source", "judgement"),
  advice: ["Close, tighten and add anchors before it comes: that takes about 4 to 8 hours."],
  cautions: ["Nobody inside or downwind in a storm.", "Local warnings come first."],
});
