import type { Chapter, Step } from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { equationMarkup, symbolMarkup } from "../typeset/mathml.ts";
import { withNumbers, withoutRounding, workingNumber } from "../typeset/numbers.ts";
import { forReader, siUnit } from "../value/reader.ts";
import { originsOf } from "./origins.ts";
import type { Matter } from "./sheet.ts";
import { symbolList } from "./symbols.ts";

const columns = [
  words("Step"),
  words("What"),
  words("Formula, and the same with its numbers"),
  numbers("Value"),
  words("Source"),
];

/** "W.07": the chapter and the place in it, so that a step keeps its number when others change. */
const stepNumber = (chapter: Chapter, place: number): string =>
  `${chapter.id}.${String(place + 1).padStart(2, "0")}`;

/** Chapters of working, step by step, and what their symbols mean. */
export function working(chapters: readonly Chapter[], matter: Matter, sheet: string): string {
  const first = firstUses(chapters);
  const origins = originsOf(chapters, stepNumber);
  const tables = chapters
    .map((chapter) =>
      table(
        `${sheet} ${chapter.id}, ${chapter.title}`,
        `${text(chapter.id)}. ${typed(chapter.title)}`,
        columns,
        chapter.steps.map((step, place) => {
          const number = stepNumber(chapter, place);
          const shown = first.get(keyOf(step)) ?? number;
          return stepRow(
            step,
            number,
            shown === number ? null : shown,
            origins.get(number),
            matter,
          );
        }),
        "steps",
      ),
    )
    .join("\n");
  return `${tables}\n${symbolList(chapters, stepNumber, sheet)}`;
}

const keyOf = ({ formula }: Step): string => `${formula.id} ${formula.expression}`;

/** The number of the step in which each formula stands first. */
function firstUses(chapters: readonly Chapter[]): Map<string, string> {
  const first = new Map<string, string>();
  for (const chapter of chapters) {
    chapter.steps.forEach((step, place) => {
      if (!first.has(keyOf(step))) first.set(keyOf(step), stepNumber(chapter, place));
    });
  }
  return first;
}

/** One step; a formula that has stood before is named by that step's number. */
function stepRow(
  step: Step,
  number: string,
  as: string | null,
  origins: string | undefined,
  { system, bibliography }: Matter,
): string[] {
  const { formula, symbol, value, note } = step;
  const filled = withNumbers(step);
  const remarks = [note, !as && formula.range && `valid: ${formula.range}`].filter(
    Boolean,
  ) as string[];
  return [
    text(number),
    `${symbolMarkup(symbol)} ${text(formula.name)}${remarks.map((r) => `<br><small>${typed(r)}</small>`).join("")}`,
    formula.origin
      ? `<i>not evaluated: ${text(formula.origin)}</i>`
      : `${as ? `as ${text(as)}` : equationMarkup(formula)}${filled && `<br><small>= ${text(filled)}</small>`}${origins ? `<br><small>${text(origins)}</small>` : ""}`,
    valueCell(withoutRounding(value, formula.measure), formula.measure, system),
    text(bibliography.mention(formula.citation)),
  ];
}

function valueCell(
  value: number,
  measure: Step["formula"]["measure"],
  system: Matter["system"],
): string {
  const unit = siUnit(measure);
  const shown = text(forReader(value, measure, system));
  if (unit === "" || shown.endsWith(` ${unit}`)) return shown;
  return `${shown}<br><small>${workingNumber(value)} ${unit}</small>`;
}
