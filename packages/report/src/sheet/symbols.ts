import type { Chapter } from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { table, words } from "../html/table.ts";
import { symbolMarkup } from "../typeset/mathml.ts";
import { siUnit } from "../value/reader.ts";

interface Meaning {
  readonly symbol: string;
  readonly name: string;
  readonly unit: string;
  readonly first: string;
}

/** By letters, never by the reader's locale. */
const bySymbol = (one: Meaning, other: Meaning): number =>
  one.symbol < other.symbol ? -1 : one.symbol > other.symbol ? 1 : 0;

/** Every symbol of the formulas shown, with all it means and where it first means that. */
export function symbolList(
  chapters: readonly Chapter[],
  numberOf: (chapter: Chapter, place: number) => string,
  sheet: string,
): string {
  const meanings = new Map<string, Meaning>();
  for (const chapter of chapters) {
    chapter.steps.forEach(({ formula }, place) => {
      for (const { symbol, name, measure } of formula.arguments) {
        const unit = siUnit(measure);
        const key = JSON.stringify([symbol, name, unit]);
        if (name === "" || meanings.has(key)) continue;
        meanings.set(key, { symbol, name, unit, first: numberOf(chapter, place) });
      }
    });
  }
  if (meanings.size === 0) return "";
  return table(
    `${sheet}: symbols`,
    "Symbols put into the formulas. Where one stands for several things, each has a row.",
    [words("Symbol"), words("Meaning"), words("Unit"), words("First in")],
    [...meanings.values()]
      .sort(bySymbol)
      // The meaning names the row: a symbol alone has no words that could be read out.
      .map(
        ({ symbol, name, unit, first }) =>
          `<tr><td>${symbolMarkup(symbol)}<th scope="row">${text(name)}<td>${text(unit)}<td>${text(first)}</tr>`,
      ),
    "plain",
  );
}
