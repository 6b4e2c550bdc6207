import { measured, type StateSummary, speedLimit, type Words } from "@hoopstay/core";
import type { WindCase } from "@hoopstay/load";
import { jointOf } from "../together/joint.ts";
import type { Evaluation } from "./evaluate.ts";
import { greaterFirst } from "./greater-first.ts";
import { governingOf } from "./summaries.ts";
import { checkWords, comesFrom, compassFrom, type SummaryId } from "./words.ts";

/** The headline: does it hold, and if not, what gives way first. */
export function headline(
  evaluation: Evaluation,
  summaries: readonly StateSummary[],
  holds: boolean,
): Words {
  const { site } = evaluation;
  const speed = measured(site.speed, "speed");
  const against: Words =
    site.basis === "gust"
      ? ["a gust of ", speed]
      : ["the design wind (", speed, ` ${site.basis} speed)`];
  if (holds) return ["Holds in every state checked, against ", ...against, "."];
  const failing = summaries.filter((summary) =>
    summary.checks.some(
      ({ ratio, codeSpeed }) =>
        ratio[site.combination] > 1 || codeSpeed[site.combination] < site.mapSpeed * (1 - 1e-12),
    ),
  );
  if (failing.length === 0) {
    const [worstLeast] = [...summaries].sort((a, b) => b.least.ratio - a.least.ratio);
    return [
      "Holds against ",
      ...against,
      `, but does not meet the standard's least wind load: it would ${worstLeast?.least.check}.`,
    ];
  }
  const worst = failing.reduce((a, b) =>
    greaterFirst(a.first.workingGust, b.first.workingGust) < 0 ? b : a,
  );
  const { begins } = checkWords[worst.first.check as SummaryId];
  return [
    "Does not hold against ",
    ...against,
    `. First to go: ${worst.words}, it ${begins} at `,
    speedLimit(worst.first.workingGust),
    ".",
  ];
}

/** One sentence about a state: what begins at what gust, and from where the wind blows. */
function stateSentence(evaluation: Evaluation, summary: StateSummary, lead: string): Words {
  const { first } = summary;
  const { begins } = checkWords[first.check as SummaryId];
  if (first.workingGust === Number.POSITIVE_INFINITY) {
    return [`${lead}${summary.words}, ${summary.holdWords}: no wind limit was found.`];
  }
  const state = evaluation.states.find((one) => one.state.id === summary.id);
  const governing = state && governingOf(state.set, summary.hold, "ASD");
  const byLimit = governing?.find((one) => one.check === first.check)?.byLimit;
  const single = byLimit && (state?.set.table.cases[byLimit.caseIndex] as WindCase);
  const together =
    first.check === "together" && state
      ? jointOf(evaluation, state.set, summary.hold, "ASD").windCase
      : undefined;
  const windCase = single ?? together;
  const from = windCase
    ? `, wind from ${comesFrom(windCase)}${compassFrom(windCase, evaluation.site.frontBearing)}`
    : "";
  return [
    `${lead}${summary.words}, ${summary.holdWords}: it ${begins} at a `,
    speedLimit(first.workingGust),
    ` gust${from}.`,
  ];
}

/** The owner's sentences, most urgent first. */
export function answers(evaluation: Evaluation, summaries: readonly StateSummary[]): Words[] {
  const held = evaluation.holds.at(-1)?.id ?? "bare";
  const list: Words[] = [];
  const now = summaries.find((one) => one.now && one.hold === held);
  const bareNow = summaries.find((one) => one.now && one.hold === "bare");
  if (now) {
    const sentence = stateSentence(evaluation, now, "As it stands now, ");
    const act: Words = [" Act before ", speedLimit(0.75 * now.first.workingGust), "."];
    list.push(Number.isFinite(now.first.workingGust) ? [...sentence, ...act] : sentence);
  }
  if (now && bareNow && held !== "bare") {
    list.push(stateSentence(evaluation, bareNow, "Without them, "));
  }
  const least = summaries
    .filter((one) => one.hold === held)
    .reduce((a, b) => (b.least.ratio > a.least.ratio ? b : a));
  if (least.least.ratio > 1) {
    list.push([
      `Least load of the standard: would ${least.least.check}, ${least.words} (ratio `,
      Number.isFinite(least.least.ratio)
        ? measured(least.least.ratio, "ratio", 3)
        : "beyond all bounds",
      ").",
    ]);
  }
  const slide = now?.checks.find((check) => check.check === "slide");
  const upright = evaluation.house.anchors.every(
    ({ toward }) => toward[0] === 0 && toward[1] === 0,
  );
  if (slide && now && slide === now.first && held !== "bare" && upright) {
    list.push([
      "Upright tethers hold it down, not sideways: slant some of them against the slide.",
    ]);
  }
  const { house, site } = evaluation;
  list.push(...[...house.doubts, ...site.doubts].map((doubt): Words => [doubt]));
  return list;
}
