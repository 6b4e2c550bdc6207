import { type System, showWords, type Words } from "@hoopstay/core";
import { visible } from "./visible.ts";

const width = 80;

/** Breaks a sentence to the screen's width, and a word that alone would not fit. */
export function wrap(sentence: string, indent: string, hanging = indent): string {
  const text = visible(sentence).replace(/\S{70}(?=\S)/g, "$& ");
  const lines: string[] = [];
  let start = indent;
  let line = "";
  for (const word of text.split(" ")) {
    if (line && start.length + line.length + word.length + 1 > width) {
      lines.push(start + line);
      start = hanging;
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, start + line].join("\n");
}

export const cut = (text: string, size: number): string =>
  text.length > size ? `${text.slice(0, size - 1)}~` : text;

/** Text in a column of a table: cut or filled up to its width. */
export const column = (text: string, size: number): string =>
  cut(visible(text), size).padEnd(size + 1);

/** A number in a column of a table, set to the right. */
export const rightColumn = (text: string, size: number): string => `${text.padStart(size)} `;

/** The verdict and the two names on one line; long names are cut. */
export function leadOf(verdict: string, names: readonly string[]): string {
  const lead = `${verdict}   `;
  const whole = lead + names.join(", ");
  return whole.length > width ? lead + names.map((name) => cut(name, 31)).join(", ") : whole;
}

/** Sentences of a record as items of a list. */
export const bullets = (sentences: readonly Words[], system: System, mark = "- "): string[] =>
  sentences.map((words) => bullet(showWords(words, system), mark));

export const bullet = (sentence: string, mark = "- "): string =>
  wrap(sentence, `  ${mark}`, " ".repeat(2 + mark.length));

/** What stands under every answer. */
export const notSealed = wrap(
  "Not a sealed design: consult a licensed engineer; local code first.",
  "  ",
);
