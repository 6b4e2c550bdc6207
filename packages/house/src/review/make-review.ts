import {
  type Chapter,
  type CheckSummary,
  type Citation,
  type GoverningCheck,
  type HoldReview,
  type Measured,
  measured,
  type Review,
  type InputRow as ReviewInput,
  type StateSummary,
  type StormLadder,
  type Words,
} from "@hoopstay/core";
import { caseStride, enclosureCitations, rowChoiceCitation, type WindCase } from "@hoopstay/load";
import {
  type CombinationId,
  checksOfCase,
  combinationCitations,
  combinations,
} from "@hoopstay/stability";
import type { ChainOf } from "../chain/chain-review.ts";
import { linkCombinationCitations } from "../chain/combination.ts";
import type { Assumption } from "../model/assumption.ts";
import { takeOffCitations } from "../model/materials.ts";
import type { InputRow } from "../read/input-rows.ts";
import { withBallast } from "../take-off/take-off.ts";
import { lowestJoint } from "../together/joint.ts";
import { workingOf } from "../working/working.ts";
import { answers, headline } from "./answers.ts";
import { cautions, notChecked, notCheckedAfter } from "./cautions.ts";
import { drawingsOf } from "./drawings.ts";
import type { EvaluatedState, Evaluation } from "./evaluate.ts";
import type { Hold, HoldId } from "./hold.ts";
import {
  caseWords,
  setLetters,
  stateSummary,
  type Together,
  togetherSummary,
} from "./summaries.ts";
import { type GoverningPlace, worstPlaces } from "./worst-places.ts";

/** What the review cannot know by itself. */
export interface ReviewMeta {
  readonly version: string;
  readonly digest: string;
  readonly date: string | null;
  readonly files: Review["files"];
  readonly inputs: readonly InputRow[];
}

/** What holds the house, where that was asked for. */
export interface Holding {
  readonly hold: HoldReview;
  readonly ladder: StormLadder;
  /** Its working: from outside, so that a check alone does not read how it is made. */
  readonly chapters: readonly Chapter[];
}

/**
 * The whole record that the terminal and the report are made from. The working and the table of all
 * cases (`full`) are left out where only the answer is shown.
 */
export function makeReview(
  evaluation: Evaluation,
  meta: ReviewMeta,
  {
    full,
    holding,
    chain,
  }: { readonly full: boolean; readonly holding?: Holding; readonly chain?: ChainOf },
): Review {
  const { house, site } = evaluation;
  const letters = setLetters(evaluation);
  // The answer on the screen asks where the house gives way first, the report for every number.
  const last = evaluation.holds.at(-1);
  const how = (hold: Hold, { state }: EvaluatedState): Together => {
    if (holding) return "exact";
    return hold === last || state.id === site.now ? "first" : "left out";
  };
  const summaries = evaluation.holds.flatMap((hold) =>
    evaluation.states.map((state) =>
      stateSummary(evaluation, state, hold, letters.get(state.set) ?? "", how(hold, state)),
    ),
  );
  const held = evaluation.holds.at(-1)?.id ?? "bare";
  const heldStates = summaries.filter((summary) => summary.hold === held);
  const stands = heldStates.every((summary) => summary.holds);
  const holds = stands && (chain?.review.holds ?? true);
  const places = worstPlaces(evaluation);
  const chapters = [
    ...(full ? workingOf(evaluation, places) : []),
    ...(holding?.chapters ?? []),
    ...(chain?.chapters() ?? []),
  ];
  const lift = places[0] as GoverningPlace;
  return {
    program: "hoopstay",
    version: meta.version,
    digest: meta.digest,
    files: meta.files,
    house: house.name,
    site: site.name,
    date: meta.date,
    holds,
    combination: site.combination,
    headline: stands && !holds ? breaksFirst : headline(evaluation, heldStates, stands),
    answers: [
      ...(chain ? [["Strength, link by link. ", ...chain.review.answer]] : []),
      ...answers(evaluation, summaries),
    ],
    criteria: criteria(evaluation),
    states: summaries,
    governing: [
      ...places.map(({ state, governing }) =>
        governingRow(governing.check, state.state.id, heldStates),
      ),
      togetherRow(evaluation, held, letters),
    ],
    insideLine: insideLine(evaluation, lift),
    inputs: inputsOf(evaluation, meta.inputs),
    takeOff: takeOffOf(evaluation),
    findings: house.findings,
    cautions,
    notChecked: chain ? notCheckedAfter(chain.review) : notChecked,
    chapters,
    caseColumns: ["lift", "tip right", "tip left", "tip front", "tip back", "slide"],
    cases: full ? casesOf(evaluation, letters) : [],
    drawings: drawingsOf(evaluation, lift.state.set, lift.governing.byRatio.caseIndex),
    hold: holding?.hold ?? null,
    ladder: holding?.ladder ?? null,
    chain: chain?.review ?? null,
    citations: [...citationsOf(evaluation, chapters), ...(chain ? linkCombinationCitations : [])],
  };
}

/** Where the house as a whole holds the design wind and its frame does not. */
const breaksFirst: Words = [
  "At the design wind the house as a whole neither lifts, tips nor slides, but a link of it gives way.",
];

/** The state in which everything at once takes least. */
function togetherRow(
  evaluation: Evaluation,
  hold: HoldId,
  letters: ReturnType<typeof setLetters>,
): GoverningCheck {
  const worst = lowestJoint(evaluation, evaluation.states, hold, "ASD");
  const state = evaluation.states.find(({ set }) => set === worst.set);
  const summary = togetherSummary(evaluation, worst, letters.get(worst.set) ?? "");
  const words = state?.state.words ?? "";
  const of = (id: string) => ({ id, state: words });
  const { ratio, codeSpeed } = summary.cases;
  const from = {
    ratio: { ASD: of(ratio.ASD), LRFD: of(ratio.LRFD) },
    codeSpeed: { ASD: of(codeSpeed.ASD), LRFD: of(codeSpeed.LRFD) },
  };
  return { ...summary, state: words, from };
}

/** The worst of all states for one check: by ratio, with the lowest limits of any state. */
function governingRow(
  check: string,
  stateId: string,
  heldStates: readonly StateSummary[],
): GoverningCheck {
  const all = heldStates.map((one) => ({
    one,
    summary: one.checks.find((found) => found.check === check) as CheckSummary,
  }));
  const worst = all.find(({ one }) => one.id === stateId) as (typeof all)[number];
  const lowest = (speed: (summary: CheckSummary) => number): number =>
    Math.min(...all.map(({ summary }) => speed(summary)));
  const greatest = (ratio: (summary: CheckSummary) => number): number =>
    Math.max(...all.map(({ summary }) => ratio(summary)));
  const ratio = { ASD: greatest((one) => one.ratio.ASD), LRFD: greatest((one) => one.ratio.LRFD) };
  const codeSpeed = {
    ASD: lowest((one) => one.codeSpeed.ASD),
    LRFD: lowest((one) => one.codeSpeed.LRFD),
  };
  const found = { ratio, codeSpeed };
  // The state already named stands where it has the number itself; the first that has it otherwise.
  const behind = (column: "ratio" | "codeSpeed", combination: "ASD" | "LRFD") => {
    const has = ({ summary }: (typeof all)[number]): boolean =>
      summary[column][combination] === found[column][combination];
    const { one, summary } = has(worst) ? worst : (all.find(has) ?? worst);
    return { id: summary.cases[column][combination], state: one.words };
  };
  return {
    ...worst.summary,
    state: worst.one.words,
    ratio,
    codeSpeed,
    workingGust: lowest(({ workingGust }) => workingGust),
    from: {
      ratio: { ASD: behind("ratio", "ASD"), LRFD: behind("ratio", "LRFD") },
      codeSpeed: { ASD: behind("codeSpeed", "ASD"), LRFD: behind("codeSpeed", "LRFD") },
    },
  };
}

function insideLine(evaluation: Evaluation, { state }: GoverningPlace): Words {
  const { shell, pressure } = evaluation;
  const inside = Math.max(...state.set.insideCoefficients);
  return [
    `Inside pressure lifts the whole roof, and no floor balances it: GC_pi ${inside} x `,
    measured(pressure, "pressure"),
    " x ",
    measured(shell.b, "length"),
    " x ",
    measured(shell.L, "length"),
    " = ",
    measured(inside * pressure * shell.b * shell.L, "force"),
    ", carried by weight and anchors in full.",
  ];
}

function criteria({ site, factors, pressure, shell }: Evaluation): Review["criteria"] {
  const { place } = site;
  const rows: { what: string; value: string | Measured }[] = [
    { what: "Wind standard", value: place.edition.title },
    { what: "Speed as given", value: measured(site.speed, "speed") },
    { what: "Basis of the speed", value: site.basis },
    { what: "Map speed checked", value: measured(site.mapSpeed, "speed") },
    { what: "Risk category", value: site.riskCategory ?? "none: not a map speed" },
    { what: "Exposure", value: place.exposure },
    { what: "Mean roof height", value: measured(shell.h, "length") },
    { what: "Rise over span", value: measured(shell.riseRatio, "ratio") },
    {
      what: "K_z, K_zt, K_d, K_e",
      value: [factors.kz, factors.kzt, factors.kd, factors.ke].map((k) => k.toFixed(3)).join(", "),
    },
    { what: "K_d q_h", value: measured(pressure, "pressure") },
    { what: "Combination of the verdict", value: site.combination },
    {
      what: "Combinations printed",
      value: combinations.map((one) => `${one.id}: ${one.words}`).join("; "),
    },
    { what: "Low friction", value: measured(site.friction, "ratio") },
    { what: "Allowable bearing", value: measured(site.bearing, "pressure") },
    {
      what: "Quarter reading",
      value: site.reading
        ? `${site.reading.reading} only: ${site.reading.reason}`
        : "both, worse kept",
    },
  ];
  if (site.slope) rows.push({ what: "Ground slope", value: measured(site.slope.angle, "angle") });
  return rows;
}

function inputsOf({ house, site }: Evaluation, rows: readonly InputRow[]): ReviewInput[] {
  const typed = rows.map(
    ({ file, key, typed: text, used }): ReviewInput => ({
      file,
      key,
      typed: text,
      used,
      assumed: false,
      why: "",
    }),
  );
  const assumed =
    (file: "house" | "site") =>
    ({ key, used, why }: Assumption): ReviewInput => ({
      file,
      key,
      typed: "",
      used,
      assumed: true,
      why,
    });
  return [
    ...typed,
    ...house.assumptions.map(assumed("house")),
    ...site.assumptions.map(assumed("site")),
  ];
}

function takeOffOf({ takeOff, house }: Evaluation): Review["takeOff"] {
  const total = (
    words: string,
    { W, x, y, z }: { W: number; x: number; y: number; z: number },
  ) => ({
    words,
    weight: W,
    place: [x, y, z] as const,
  });
  const totals = [total("low: resists", takeOff.low), total("high: loads", takeOff.high)];
  if (house.ballast.some((block) => block.fixed)) {
    totals.push(total("low, with fixed ballast", withBallast(takeOff.low, house)));
  }
  return {
    measured: takeOff.measured,
    totals,
    rows: takeOff.items.map((item) => ({
      what: item.what,
      count: item.count,
      amount: item.amount === null ? null : measured(item.amount, item.unit ?? "length"),
      unitLow:
        item.unitLow === null
          ? null
          : measured(item.unitLow, item.unit === "area" ? "pressure" : "force"),
      unitHigh:
        item.unitHigh === null
          ? null
          : measured(item.unitHigh, item.unit === "area" ? "pressure" : "force"),
      per: item.unit,
      low: item.low,
      high: item.high,
      x: item.x,
      y: item.y,
      z: item.z,
    })),
  };
}

function casesOf(evaluation: Evaluation, letters: ReturnType<typeof setLetters>): Review["cases"] {
  const combination: CombinationId = evaluation.site.combination;
  const rows: Review["cases"][number][] = [];
  for (const [set, letter] of letters) {
    const hold = set.holds.at(-1);
    if (!hold) continue;
    set.table.cases.forEach((_: WindCase, index) => {
      const checks = checksOfCase(hold.terms[combination], set.table, index);
      const [first] = checks;
      if (!first) return;
      const at = index * caseStride;
      const components = Array.from(
        set.table.components.slice(at, at + 6),
        (unit) => unit * evaluation.pressure,
      );
      const words = caseWords(letter, set, { ...first, withoutArch: false });
      rows.push({
        ...words,
        loadSet: letter,
        components,
        ratios: checks.map(({ ratio }) => ratio),
      });
    });
  }
  return rows;
}

function citationsOf({ site }: Evaluation, chapters: readonly Chapter[]): Citation[] {
  const { edition } = site.place;
  return [
    ...chapters.flatMap(({ steps }) => steps.map(({ formula }) => formula.citation)),
    edition.exposureCitation,
    enclosureCitations.definitions,
    rowChoiceCitation,
    combinationCitations[site.combination],
    site.frictionCitation,
    site.bearingCitation,
    ...takeOffCitations,
  ];
}
