import {
  type CompareReview,
  type CutList,
  type FoundDesign,
  measured,
  type SearchReview,
  type VariantReview,
} from "@hoopstay/core";
import { sampleChain } from "./sample-chain.ts";
import { sampleDrawings } from "./sample-drawings.ts";

// Invented numbers of the usual size, for layout only: none of them is computed from another.

const inch = 0.0254;

const cut = (tube: string, stickCount: number, priced: boolean): CutList => ({
  tube,
  stock: 7.3152,
  sticks: Array.from({ length: stickCount }, (_, place) => ({
    pieces:
      place < stickCount - 1
        ? [
            { what: "half of a hoop", length: 158.25 * inch },
            { what: "purlin", length: 60 * inch },
            { what: "purlin", length: 60 * inch },
          ]
        : [{ what: "half of a hoop", length: 158.25 * inch }],
    waste: place < stickCount - 1 ? 9.5 * inch : 129.6875 * inch,
  })),
  waste: 0.08,
  price: priced ? 46.5 * stickCount : null,
  fewest: stickCount !== 9,
  findings: stickCount === 9 ? [["Longer sticks would leave no joint at the crown."]] : [],
});

const states = ["all shut", "front door open", "both sides up", "film off, end walls standing"];

function variant(number: number): VariantReview {
  const [first] = sampleChain().links;
  if (first === undefined) throw new Error("the sample chain is empty");
  const drawings = sampleDrawings();
  const gust = 31 - 1.3 * number;
  return {
    name: number === 0 ? "as it is" : `variant ${number}: lighter rail, hoops further apart`,
    changes:
      number === 0
        ? []
        : [
            { key: "rails.tube.size", from: "HSS3X3X1/8", to: "HSS2X2X1/8" },
            { key: "hoops.spacing", from: "45 in", to: `${45 + number} in` },
          ],
    weight: { low: 5200 - 300 * number, high: 5900 - 300 * number },
    steel: { low: 3900 - 300 * number, high: 4100 - 300 * number },
    cuts: [cut("1.66 in x 14 gauge", 9 - number, number !== 2), cut("HSS2X2X1/8", 3, true)],
    cost:
      number === 2
        ? null
        : { currency: "USD", total: 1248.5 - 90 * number, unpriced: number === 1 ? ["bolts"] : [] },
    pull: { low: 1900, high: 2700, says: number < 3 ? "goes" : "goes, but hard to start when wet" },
    anchors: [
      { kind: "screw anchor, 30 in", perRail: 4 + number },
      { kind: "driven stake, 36 in", perRail: null },
    ],
    first: { state: "both end doors open", words: first.words, check: first.worst.check },
    states: states.map((words, place) => ({
      id: `state-${place}`,
      words,
      whole: { gust: gust * (1.3 - 0.1 * place), words: "slides" },
      link: {
        gust: place === 3 ? Number.POSITIVE_INFINITY : gust * (1.1 - 0.05 * place),
        words: first.words,
      },
    })),
    holds: number === 0,
    drawings: {
      ...drawings,
      railDepth: number === 0 ? drawings.railDepth : 0.0508,
      hoopStations: Array.from({ length: 9 - number }, (_, place) => -4.572 + place * 1.143),
    },
    findings: number === 1 ? [["The rail's wall is thin beside the stub: see the working."]] : [],
  };
}

export const sampleCompare = (variants = 6): CompareReview => ({
  today: variant(0),
  variants: Array.from({ length: variants }, (_, place) => variant(place + 1)),
  sentences: [
    [
      "Variant 1 weighs ",
      measured(300, "force"),
      " less. It does not tip sooner, but its rail's wall gives way under a stub at a ",
      { value: 24.6, measure: "speed", atMost: true },
      " gust, where today's house stands ",
      { value: 31, measure: "speed", atMost: true },
      ".",
    ],
    ["Variant 2 saves one stick and needs one anchor more on each side."],
  ],
});

const gustOf = (place: number): number => 17 + 6 * Math.sqrt(place);

const design = (place: number): FoundDesign => ({
  words: `${9 + (place % 5)} hoops of 1.66 in x ${16 - (place % 4)} gauge, rails HSS3X3X1/8, ${4 + (place % 4)} screw anchors on each side`,
  changes: [
    { key: "hoops.tube.gauge", to: String(16 - (place % 4)) },
    { key: "hoops.count", to: String(9 + (place % 5)) },
  ],
  steel: measured(2600 + 210 * place, "force"),
  cost: place % 3 === 0 ? null : 900 + 61 * place,
  gust: gustOf(place),
  whole: { gust: (place % 2 === 0 ? 1.2 : 1) * gustOf(place), words: "it would slide, all shut" },
  link: {
    gust: (place % 2 === 0 ? 1 : 1.1) * gustOf(place),
    words: "the bolts at the foot of a hoop",
  },
});

export const sampleSearch = (changes: Partial<SearchReview> = {}): SearchReview => ({
  range: {
    assumed: false,
    rows: [{ what: "hoop tubes", values: ["1.66 in x 14 gauge", "1.9 in x 14 gauge"] }],
  },
  findings: [["Cost is not compared where a size has no price."]],
  looked: 48000,
  asked: 48000,
  worked: 20,
  complete: true,
  currency: "USD",
  today: { ...design(4), gust: 22, words: "the house as it is" },
  unbeaten: Array.from({ length: 14 }, (_, place) => design(place)),
  worthALook: [
    { place: 1, why: "the lightest that holds the design wind" },
    { place: 5, why: "the strongest for today's money" },
    { place: 12, why: "the strongest" },
  ],
  cloud: Array.from({ length: 400 }, (_, place) => {
    const steel = 2600 + 8.1 * place;
    return [
      steel,
      (17 + 6 * Math.sqrt((steel - 2600) / 210)) * (0.55 + 0.4 * Math.abs(Math.sin(place))),
    ] as const;
  }),
  ...changes,
});
