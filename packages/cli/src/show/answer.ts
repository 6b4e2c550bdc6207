import {
  type CheckSummary,
  measured,
  plain,
  type Review,
  type StateSummary,
  type System,
  showMeasured,
  showWords,
} from "@hoopstay/core";
import { visible } from "./visible.ts";

const width = 80;

/** Breaks a sentence to the screen's width, and a word that alone would not fit. */
function wrap(sentence: string, indent: string): string {
  const text = visible(sentence).replace(/\S{70}(?=\S)/g, "$& ");
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line && indent.length + line.length + word.length + 1 > width) {
      lines.push(indent + line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, indent + line].join("\n");
}

const gust = (speed: number, system: System): string =>
  Number.isFinite(speed) ? showMeasured(measured(speed, "speed", 2), system) : "no limit";

const ratioText = (ratio: number): string =>
  Number.isFinite(ratio) ? (ratio >= 100 ? ">100" : plain(ratio, 3)) : "no hold";

/** States of one hold that the wind cannot tell apart, on one line. */
function grouped(states: readonly StateSummary[]): { words: string; state: StateSummary }[] {
  const groups = new Map<string, StateSummary[]>();
  for (const state of states) groups.set(state.set, [...(groups.get(state.set) ?? []), state]);
  return [...groups.values()].map((group) => ({
    words: group.map((one) => (one.now ? `${one.words} (now)` : one.words)).join("; "),
    state: group[0] as StateSummary,
  }));
}

const cut = (text: string, size: number): string =>
  text.length > size ? `${text.slice(0, size - 1)}~` : text;

/** The verdict and the two names on one line; long names are cut. */
function leadOf(holds: boolean, names: readonly string[]): string {
  const lead = `${holds ? "HOLDS" : "DOES NOT HOLD"}   `;
  const whole = lead + names.join(", ");
  return whole.length > width ? lead + names.map((name) => cut(name, 31)).join(", ") : whole;
}

/**
 * The answer for the terminal: it leads with whether the house holds, fits one screen, and keeps
 * the owner's gusts apart from the reviewer's code speeds.
 */
export function showAnswer(review: Review, system: System, reportPath?: string): string {
  const { states, combination } = review;
  const held = states.at(-1)?.hold ?? "bare";
  const mine = states.filter((state) => state.hold === held);
  const lines = [
    leadOf(review.holds, [visible(review.house), visible(review.site)]),
    wrap(showWords(review.headline, system), "  "),
    ...review.answers.map((answer) => wrap(showWords(answer, system), "  ")),
    `  ${"As it is left".padEnd(40)}${"gives way first".padEnd(22)}at a gust of`,
    ...grouped(mine).map(({ words, state }) => {
      const first = state.first.words;
      return `  ${cut(visible(words), 39).padEnd(39)} ${first.padEnd(22)}${gust(state.first.workingGust, system)}`;
    }),
    `  ${`For the reviewer (${combination})`.padEnd(32)}${"ratio".padEnd(9)}${"code speed".padEnd(12)}case`,
    ...review.governing.map((check: CheckSummary & { state: string }) => {
      const ratio = ratioText(check.ratio[combination]).padEnd(9);
      const speed = gust(check.codeSpeed[combination], system).padEnd(12);
      return `  ${check.words.padEnd(32)}${ratio}${speed}${check.governs.id}`;
    }),
    wrap(
      "Not a sealed design: consult a licensed engineer; local code first. Strength of the frame, hold of the ground, snow: not checked. The report tells all.",
      "  ",
    ),
  ];
  if (reportPath) lines.push(`  Report: ${visible(reportPath)}`);
  return `${lines.join("\n")}\n`;
}
