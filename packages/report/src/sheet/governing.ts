import { type StateSummary, type System, showMeasured, showWords } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { list, numbers, rowOf, table, words } from "../html/table.ts";
import { columnUnit, ratio, signed, valueMarkup } from "../value/reader.ts";
import { wordsExplained } from "./explained.ts";
import type { Matter } from "./sheet.ts";

type Governing = Matter["review"]["governing"][number];

/** The reviewer's sheet: criteria, the governing case of every check, least loads and findings. */
export function governing({ review, system }: Matter): string {
  const criteria = table(
    "Criteria",
    "Criteria",
    [words("Criterion"), words("Value")],
    review.criteria.map(({ what, value }) => [typed(what), valueMarkup(value, system)]),
    "plain",
  );
  return `${criteria}
${governingRatios(review.governing, system)}
${governingCases(review.governing)}
${numbersFrom(review.governing)}
<p>Demand and resistance belong to ${review.combination}, the combination this review was asked for.
Code speeds are map speeds and are compared with the design speed; working gusts are real gusts and
are compared with forecasts. The two are never compared with each other.</p>
${wordsExplained()}
<h3>Inside pressure</h3>
<p>${typed(showWords(review.insideLine, system))}</p>
${leastLoads(review.states)}
<h3>Findings</h3>
${review.findings.length === 0 ? "<p>None.</p>" : list(review.findings.map(typed))}`;
}

function governingRatios(rows: readonly Governing[], system: System): string {
  const speeds = rows.flatMap((r) => [r.codeSpeed.ASD, r.codeSpeed.LRFD, r.workingGust]);
  const speed = columnUnit("speed", system, speeds, 4);
  return table(
    "Governing checks: ratios and speeds",
    `Governing checks, the worst of all states as fitted. Ratio is demand over resistance; above
1.00 fails and is printed bold. Speeds in ${speed.symbol}, rounded down.`,
    [
      words("Check"),
      words("State"),
      numbers("Ratio ASD"),
      numbers("Ratio LRFD"),
      numbers("Demand"),
      numbers("Resistance"),
      numbers("Code speed ASD"),
      numbers("Code speed LRFD"),
      numbers("Working gust"),
    ],
    rows.map((row) => [
      typed(row.words),
      typed(row.state),
      ratio(row.ratio.ASD),
      ratio(row.ratio.LRFD),
      signed(showMeasured(row.demand, system)),
      signed(showMeasured(row.resistance, system)),
      speed.cell(row.codeSpeed.ASD),
      speed.cell(row.codeSpeed.LRFD),
      speed.cell(row.workingGust),
    ]),
  );
}

/** The case and the state behind each number: a ratio and a limit need not be of the same one. */
function numbersFrom(rows: readonly Governing[]): string {
  const told = ({ id, state }: Governing["from"]["ratio"]["ASD"]): string =>
    `${typed(id)}, ${typed(state)}`;
  return table(
    "Governing checks: where each number comes from",
    "The case and the state behind each number. A working gust is of the case of the code speed ASD.",
    [
      words("Check"),
      words("Ratio ASD"),
      words("Ratio LRFD"),
      words("Code speed ASD, working gust"),
      words("Code speed LRFD"),
    ],
    rows.map(({ words: check, codeSpeed, from }) => [
      typed(check),
      told(from.ratio.ASD),
      told(from.ratio.LRFD),
      Number.isFinite(codeSpeed.ASD) ? told(from.codeSpeed.ASD) : "no limit",
      Number.isFinite(codeSpeed.LRFD) ? told(from.codeSpeed.LRFD) : "no limit",
    ]),
  );
}

const governingCases = (rows: readonly Governing[]): string =>
  table(
    "Governing checks: the case that governs",
    "The case that governs the ratio of each of these checks",
    [
      words("Check"),
      words("Case"),
      words("Wind"),
      words("Reading"),
      words("Set"),
      words("Inside"),
      words("Weight"),
    ],
    rows.map(({ words: check, governs }) => [
      typed(check),
      `${typed(governs.id)}, case ${governs.loadCase}`,
      ...[governs.direction, governs.reading, governs.set, governs.inside, governs.weight].map(
        typed,
      ),
    ]),
  );

/** Equal rows of several states are printed once, with the states named. */
function leastLoads(states: readonly StateSummary[]): string {
  const rows = new Map<string, { states: string[]; state: StateSummary }>();
  for (const state of states) {
    const { ratio: value, check, load } = state.least;
    const key = JSON.stringify([state.hold, value, check, load]);
    const row = rows.get(key);
    if (row) row.states.push(state.words);
    else rows.set(key, { states: [state.words], state });
  }
  return table(
    "Least loads",
    "Least loads of the standard: a check of their own, without a limit speed",
    [
      words("States"),
      words("Held"),
      words("Check"),
      words("Least load"),
      numbers("Ratio"),
      words("Met?"),
    ],
    [...rows.values()].map(({ states: names, state: { holdWords, least } }) =>
      rowOf([
        names.map(typed).join("; "),
        typed(holdWords),
        typed(least.check),
        typed(least.load),
        ratio(least.ratio),
        least.ratio <= 1 ? "\u2713 met" : "<b>\u2717 not met</b>",
      ]),
    ),
  );
}
