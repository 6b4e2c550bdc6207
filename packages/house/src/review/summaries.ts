import type { CaseWords, CheckSummary, Measured, StateSummary } from "@hoopstay/core";
import { measured } from "@hoopstay/core";
import { codeSpeed, directionality, type WindCase, workingGust } from "@hoopstay/load";
import type { CheckOutcome, CombinationId, Governing } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation, LoadSet } from "./evaluate.ts";
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

/** The checks of one load set in one hold, both combinations, in owner's and reviewer's terms. */
export function checkSummaries(
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
    return {
      check: forAsd.check,
      words: checkWords[forAsd.check].verb,
      ratio: { ASD: forAsd.byRatio.ratio, LRFD: forLrfd.byRatio.ratio },
      codeSpeed: { ASD: code, LRFD: speedOf(evaluation, forLrfd.byLimit.limit) },
      workingGust: gustOf(code),
      demand: effect(byRatio, byRatio.demand),
      resistance: effect(byRatio, byRatio.resistance),
      governs: caseWords(letter, set, byRatio),
    };
  });
}

/** One state in one hold. */
export function stateSummary(
  evaluation: Evaluation,
  { state, enclosure, set }: EvaluatedState,
  hold: Hold,
  letter: string,
): StateSummary {
  const { combination, now } = evaluation.site;
  const checks = checkSummaries(evaluation, set, letter, hold.id);
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
  const first = checks.reduce((a, b) => (b.workingGust < a.workingGust ? b : a));
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
