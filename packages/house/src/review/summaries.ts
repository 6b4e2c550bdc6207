import type { CaseWords, CheckSummary, Measured, StateSummary } from "@hoopstay/core";
import { measured } from "@hoopstay/core";
import { codeSpeed, directionality, type WindCase, workingGust } from "@hoopstay/load";
import type { CheckOutcome, CombinationId, Governing } from "@hoopstay/stability";
import { type JointResult, jointBelow, jointOf, singleFactor } from "../together/joint.ts";
import type { EvaluatedState, Evaluation, LoadSet } from "./evaluate.ts";
import { greaterFirst } from "./greater-first.ts";
import { heldIn } from "./held-checks.ts";
import type { Hold } from "./hold.ts";
import { leastOutcomes } from "./least-check.ts";
import { checkWords, directionOf, insideOf, readingOf, setOf } from "./words.ts";

/** Letters of the load sets, in the order of the states. */
export function setLetters(evaluation: Evaluation): Map<LoadSet, string> {
  const letters = new Map<LoadSet, string>();
  for (const { set } of evaluation.states) {
    if (!letters.has(set)) letters.set(set, String.fromCharCode(65 + letters.size));
  }
  return letters;
}

export const caseId = (letter: string, index: number): string =>
  `${letter}${String(index + 1).padStart(3, "0")}`;

export function caseWords(letter: string, set: LoadSet, outcome: CheckOutcome): CaseWords {
  const windCase = set.table.cases[outcome.caseIndex] as WindCase;
  const arch = outcome.withoutArch ? ", walls and ends only" : "";
  return {
    id: caseId(letter, outcome.caseIndex),
    loadCase: windCase.number,
    direction: directionOf(windCase),
    reading: readingOf(windCase),
    set: `${setOf(windCase)}${arch}`,
    inside: insideOf(windCase),
    weight: outcome.weight,
  };
}

export const speedOf = (evaluation: Evaluation, limit: number): number =>
  limit === Number.POSITIVE_INFINITY
    ? limit
    : codeSpeed.evaluate(limit, evaluation.factors.perSpeedSquared);

export const gustOf = (codeSpeedValue: number): number =>
  workingGust.evaluate(codeSpeedValue, directionality.value);

export const governingOf = (
  set: LoadSet,
  hold: Hold["id"],
  combination: CombinationId,
): readonly Governing[] => heldIn(set.governing, hold, combination);

const effect = (outcome: CheckOutcome, value: number): Measured =>
  measured(value, outcome.line ? "moment" : "force");

/**
 * Everything at once as a check beside the single ones: demand is the design wind, resistance the
 * share of it that is in balance. On level ground LRFD takes exactly 0.9 of what ASD takes: its
 * weight and its anchors count 1.5 times, its wind 1/0.6 times.
 */
export function togetherSummary(
  evaluation: Evaluation,
  asd: JointResult,
  letter: string,
): CheckSummary {
  const { site, pressure } = evaluation;
  const lrfd =
    site.slope === null
      ? { ...asd, factor: 0.9 * asd.factor }
      : jointOf(evaluation, asd.set, asd.hold, "LRFD");
  const chosen = site.combination === "ASD" ? asd : lrfd;
  const speed = ({ factor }: JointResult): number => speedOf(evaluation, factor * pressure);
  const { windCase, weight } = chosen;
  const idOf = ({ row, table }: JointResult): string =>
    `${caseId(letter, row)}${table === asd.set.table ? "" : "T"}`;
  const ids = { ASD: idOf(asd), LRFD: idOf(lrfd) };
  return {
    check: "together",
    words: checkWords.together.verb,
    ratio: { ASD: 1 / asd.factor, LRFD: 1 / lrfd.factor },
    codeSpeed: { ASD: speed(asd), LRFD: speed(lrfd) },
    workingGust: gustOf(speed(asd)),
    demand: measured(1, "ratio"),
    resistance: measured(chosen.factor, "ratio"),
    governs: {
      id: idOf(chosen),
      loadCase: windCase.number,
      direction: directionOf(windCase),
      reading: readingOf(windCase),
      set: setOf(windCase),
      inside: insideOf(windCase),
      weight,
    },
    cases: { ratio: ids, codeSpeed: ids },
  };
}

/** How closely everything at once is looked at: each set for itself, or where it gives way first. */
export type Together = "exact" | "first" | "left out";

function together(
  evaluation: Evaluation,
  set: LoadSet,
  letter: string,
  hold: Hold["id"],
  how: Together,
): CheckSummary[] {
  if (how === "left out") return [];
  const { site } = evaluation;
  const single = singleFactor(evaluation, set, hold, "ASD");
  const result =
    how === "exact" || (site.slope !== null && site.combination === "LRFD")
      ? jointOf(evaluation, set, hold, "ASD")
      : jointBelow(evaluation, set, hold, "ASD", single * (1 - 1e-9));
  return result ? [togetherSummary(evaluation, result, letter)] : [];
}

/** The checks of one load set in one hold, both combinations, in owner's and reviewer's terms. */
export function checkSummaries(
  evaluation: Evaluation,
  set: LoadSet,
  letter: string,
  hold: Hold["id"],
  how: Together,
): CheckSummary[] {
  return [
    ...singleSummaries(evaluation, set, letter, hold),
    ...together(evaluation, set, letter, hold, how),
  ];
}

function singleSummaries(
  evaluation: Evaluation,
  set: LoadSet,
  letter: string,
  hold: Hold["id"],
): CheckSummary[] {
  const asd = governingOf(set, hold, "ASD");
  const lrfd = governingOf(set, hold, "LRFD");
  const chosen = evaluation.site.combination === "ASD" ? asd : lrfd;
  return asd.map((forAsd, index): CheckSummary => {
    const forLrfd = lrfd[index] as Governing;
    const { byRatio } = chosen[index] as Governing;
    const code = speedOf(evaluation, forAsd.byLimit.limit);
    const idOf = ({ caseIndex }: CheckOutcome): string => caseId(letter, caseIndex);
    return {
      check: forAsd.check,
      words: checkWords[forAsd.check].verb,
      ratio: { ASD: forAsd.byRatio.ratio, LRFD: forLrfd.byRatio.ratio },
      codeSpeed: { ASD: code, LRFD: speedOf(evaluation, forLrfd.byLimit.limit) },
      workingGust: gustOf(code),
      demand: effect(byRatio, byRatio.demand),
      resistance: effect(byRatio, byRatio.resistance),
      governs: caseWords(letter, set, byRatio),
      cases: {
        ratio: { ASD: idOf(forAsd.byRatio), LRFD: idOf(forLrfd.byRatio) },
        codeSpeed: { ASD: idOf(forAsd.byLimit), LRFD: idOf(forLrfd.byLimit) },
      },
    };
  });
}

/** One state in one hold. */
export function stateSummary(
  evaluation: Evaluation,
  { state, enclosure, set }: EvaluatedState,
  hold: Hold,
  letter: string,
  how: Together = "exact",
): StateSummary {
  const { combination, now } = evaluation.site;
  const checks = checkSummaries(evaluation, set, letter, hold.id, how);
  const least = leastOutcomes(set.least, hold.id, combination).reduce<{
    ratio: number;
    check: string;
    load: string;
  }>(
    (worst, { outcome, check, load }) =>
      outcome.ratio > worst.ratio
        ? { ratio: outcome.ratio, check: checkWords[check].verb, load: load.words }
        : worst,
    { ratio: 0, check: "none", load: "none applies" },
  );
  const first = checks.reduce((a, b) => (greaterFirst(a.workingGust, b.workingGust) < 0 ? b : a));
  const { mapSpeed } = evaluation.site;
  // A ratio at the design speed is not enough on a slope: every smaller wind must hold too.
  const holds =
    least.ratio <= 1 &&
    checks.every(
      ({ ratio, codeSpeed }) =>
        ratio[combination] <= 1 && codeSpeed[combination] >= mapSpeed * (1 - 1e-12),
    );
  return {
    id: state.id,
    words: state.words,
    hold: hold.id,
    holdWords: hold.words,
    enclosure: enclosure?.kind ?? "film off",
    insideCoefficients: set.insideCoefficients,
    now: state.id === now,
    set: letter,
    checks,
    first,
    holds,
    least,
  };
}
