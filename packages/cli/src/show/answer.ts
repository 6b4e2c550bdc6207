import {
  type GoverningCheck,
  governingCases,
  type Review,
  type StateSummary,
  type System,
  showMeasured,
  showRatio,
  showWords,
  speedLimit,
} from "@hoopstay/core";
import { cut, leadOf, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

const stateWidth = 45;

const gust = (speed: number, system: System): string => showMeasured(speedLimit(speed), system);

interface Row {
  readonly words: string;
  readonly first: string;
  readonly gust: string;
}

/** States of one hold that the wind cannot tell apart, or the answer where both names fit. */
function rowsOf(states: readonly StateSummary[], system: System): Row[] {
  const groups = new Map<string, StateSummary[]>();
  for (const state of states) groups.set(state.set, [...(groups.get(state.set) ?? []), state]);
  const rows: Row[] = [];
  for (const group of groups.values()) {
    const words = group.map((one) => (one.now ? `${one.words} (now)` : one.words)).join("; ");
    const { first } = group.reduce((a, b) => (b.first.workingGust < a.first.workingGust ? b : a));
    const row = {
      words: visible(words),
      first: first.words,
      gust: gust(first.workingGust, system),
    };
    const last = rows.at(-1);
    const both = `${last?.words}; ${row.words}`;
    const same = last?.first === row.first && last.gust === row.gust;
    if (same && both.length <= stateWidth) rows.splice(-1, 1, { ...row, words: both });
    else rows.push(row);
  }
  return rows.length <= mostRows ? rows : joined(rows);
}

/** More rows than this do not fit the screen: neighbours with the same answer then share one. */
const mostRows = 5;

function joined(rows: readonly Row[]): Row[] {
  const found: Row[] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last?.first === row.first && last.gust === row.gust) {
      found.splice(-1, 1, { ...row, words: `${last.words}; ${row.words}` });
    } else found.push(row);
  }
  return found;
}

/**
 * The answer for the terminal: it leads with whether the house holds, fits one screen, and keeps
 * the owner's gusts apart from the reviewer's code speeds.
 */
export function showAnswer(review: Review, system: System, reportPath?: string): string {
  const { states, combination } = review;
  const held = states.at(-1)?.hold ?? "bare";
  const mine = states.filter((state) => state.hold === held);
  const verdict = review.holds ? "HOLDS" : "DOES NOT HOLD";
  const lines = [
    leadOf(verdict, [visible(review.house), visible(review.site)]),
    wrap(showWords(review.headline, system), "  "),
    ...review.answers.map((answer) => wrap(showWords(answer, system), "  ")),
    `  ${"As it is left".padEnd(stateWidth + 1)}${"gives way first".padEnd(22)}at a gust`,
    ...rowsOf(mine, system).map(({ words, first, gust: at }) => {
      return `  ${cut(words, stateWidth).padEnd(stateWidth + 1)}${first.padEnd(22)}${at}`;
    }),
    `  ${`For the reviewer (${combination})`.padEnd(32)}${"ratio".padEnd(9)}${"code speed".padEnd(12)}case`,
    ...review.governing.map((check: GoverningCheck) => {
      const ratio = showRatio(check.ratio[combination]).padEnd(9);
      const speed = gust(check.codeSpeed[combination], system).padEnd(12);
      const cases = governingCases(check, combination);
      return `  ${check.words.padEnd(32)}${ratio}${speed}${cases}`;
    }),
    wrap(
      "Not a sealed design: consult a licensed engineer; local code first. Not checked: snow; the frame's strength (see hoopstay first). More: hoopstay hold.",
      "  ",
    ),
  ];
  if (reportPath) lines.push(`  Report: ${visible(reportPath)}`);
  return `${lines.join("\n")}\n`;
}
