import { type CheckSummary, cite, type InputRow, measured, type Review } from "@hoopstay/core";
import { sampleCases } from "./sample-cases.ts";
import { sampleChapters } from "./sample-chapters.ts";
import { sampleDrawings } from "./sample-drawings.ts";
import { sampleStates } from "./sample-states.ts";

const input = (
  file: "house" | "site",
  key: string,
  typed: string,
  used: InputRow["used"],
): InputRow => ({
  file,
  key,
  typed,
  used,
  assumed: typed === "",
  why: typed === "" ? "not given; the side that asks for more holding" : "",
});

const inputs: InputRow[] = [
  input("house", "hoops.span", "18 ft", measured(5.4864, "length")),
  input("house", "hoops.rise", "7' 10-1/2\"", measured(2.4, "length")),
  input("house", "cover.weight", "", "6 mil film, 0.14 kg/m\u00b2"),
  input("site", "wind.speed", "105 mph", measured(46.9392, "speed")),
  input("site", "exposure", "", "C"),
];

const part = (what: string, count: number, low: number) => ({
  what,
  count,
  amount: measured(9.1, "length"),
  unitLow: measured(low / 40, "force"),
  unitHigh: measured(low / 38, "force"),
  per: "length" as const,
  low,
  high: low * 1.05,
  x: 0,
  y: -0.2,
  z: 1.62,
});

/** A review made by hand: every field filled, none of it computed from another. */
export function sampleReview(changes: Partial<Review> = {}, cases = 500): Review {
  const states = sampleStates();
  const worst = states.find(({ hold, set }) => hold === "fitted" && set === "D") ?? states[0];
  const checks: readonly CheckSummary[] = worst?.checks ?? [];
  return {
    program: "hoopstay",
    version: "0.1.0",
    digest: "3f9a1c20b7de4458a1",
    files: { house: "name: Harrow Brook 18 x 30\n", site: "name: sheltered paddock\n" },
    house: "Harrow Brook 18 x 30",
    site: "sheltered paddock",
    date: null,
    holds: false,
    combination: "ASD",
    headline: [
      "As it sits now it stands gusts to about ",
      measured(23.6, "speed", 2),
      "; then it lifts off.",
    ],
    answers: [
      ["By its own weight alone it lifts off at about ", measured(8.1, "speed", 2), "."],
      ["Shut the front door and it stands gusts to about ", measured(27.5, "speed", 2), "."],
      [
        "Two more anchors on the left, at least ",
        measured(4450, "force"),
        " each, are what it lacks.",
      ],
    ],
    criteria: [
      { what: "Standard", value: "ASCE/SEI 7-16, directional procedure" },
      { what: "Map speed, strength level", value: measured(46.9392, "speed") },
      { what: "Exposure", value: "C, open country" },
    ],
    states,
    governing: checks.map((check) => {
      const ratio = { id: check.cases.ratio.ASD, state: "front end wall missing" };
      const speed = { id: check.cases.codeSpeed.ASD, state: "film off" };
      const from = { ratio: { ASD: ratio, LRFD: ratio }, codeSpeed: { ASD: speed, LRFD: speed } };
      return { ...check, state: ratio.state, from };
    }),
    insideLine: ["Open on one side, the wind pushes ", measured(790, "pressure"), " from within."],
    inputs,
    takeOff: {
      rows: [
        part("hoops, 1.66 in x 14 gauge", 9, 1180),
        part("rails", 2, 820),
        part("film", 1, 96),
      ],
      measured: false,
      totals: [
        { words: "low", weight: 2096, place: [0, -0.2, 1.3] },
        { words: "high", weight: 2201, place: [0, -0.2, 1.3] },
      ],
    },
    findings: ["The rails are shorter than the house by more than a hoop spacing."],
    cautions: [
      "One storm survived is not a rating.",
      "A bent or rusted frame voids this sheet.",
      "Caught open is a state, not an accident.",
      "In cold air a gust loads a tenth more.",
    ],
    notChecked: [
      "the hoops and their joints",
      "the film and its fastening",
      "end-wall struts",
      "snow",
    ],
    chapters: sampleChapters(),
    caseColumns: ["lift", "tip right", "tip left", "tip front", "tip back", "slide"],
    cases: sampleCases(cases),
    drawings: sampleDrawings(),
    hold: null,
    ladder: null,
    chain: null,
    citations: [
      cite("asce-7-16", "", "second-hand"),
      cite("judgement", "openings as listed", "judgement"),
    ],
    ...changes,
  };
}
