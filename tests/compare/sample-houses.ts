import type { Cost, CutList, LinkCheck, VariantReview } from "@hoopstay/core";
import { sampleCompare } from "../report/sample-compare.ts";

const { today: sample } = sampleCompare(1);

interface Numbers {
  readonly name?: string;
  readonly steel?: number;
  readonly sticks?: number;
  readonly cost?: number | null;
  readonly unpriced?: readonly string[];
  readonly pull?: number;
  readonly whole?: number;
  readonly link?: number;
  readonly part?: string;
  readonly perRail?: number | null;
  readonly holds?: boolean;
}

const cutsOf = (sticks: number): CutList[] => [
  {
    tube: "tube",
    stock: 6,
    sticks: Array.from({ length: sticks }, () => ({
      pieces: [{ what: "hoops", length: 5 }],
      waste: 1,
    })),
    waste: 1 / 6,
    price: null,
    fewest: true,
    findings: [],
  },
];

/** A house of a comparison with one state, every number of it given. N, m/s */
export function houseOf(numbers: Numbers = {}): VariantReview {
  const {
    name = "variant",
    steel = 9000,
    sticks = 40,
    cost = 3000,
    unpriced = ["bolts"],
  } = numbers;
  const {
    pull = 6000,
    whole = 16,
    link = 20,
    part = "bending",
    perRail = 7,
    holds = true,
  } = numbers;
  const check: LinkCheck = { ...sample.first.check, part, workingGust: link };
  const priced: Cost | null = cost === null ? null : { currency: "USD", total: cost, unpriced };
  return {
    ...sample,
    name,
    steel: { low: steel, high: steel },
    cuts: cutsOf(sticks),
    cost: priced,
    pull: { low: pull, high: pull, says: "go" },
    anchors: [{ kind: "screw anchor", perRail }],
    first: { state: "all shut", words: `the ${part}`, check },
    states: [
      {
        id: "shut",
        words: "all shut",
        whole: { gust: whole, words: "tip over to the right" },
        link: { gust: link, words: `the ${part}` },
      },
    ],
    holds,
    findings: [],
  };
}
