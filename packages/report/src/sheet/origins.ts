import type { Argument, Chapter, Measure } from "@hoopstay/core";

/** A step whose result a later one may put in. */
interface Result {
  readonly number: string;
  readonly symbol: string;
  readonly measure: Measure;
  readonly value: number;
}

/** Two evaluations of the same thing may part in their last digits. */
const same = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-12 * Math.max(Math.abs(one), Math.abs(other));

const letterOf = (symbol: string): string => symbol.split(/[_,]/)[0] as string;

/** Measures that are put in with either sign. */
const directed: readonly Measure[] = ["force", "moment", "area", "first-moment"];

/**
 * Whether a result may be what was put in. Of ratios, many of which are alike, only one of its letter; a
 * length of its letter may be laid off to either side.
 */
function couldBe({ symbol, measure, value }: Result, input: number, asked: Argument): boolean {
  if (measure !== asked.measure) return false;
  const alike = letterOf(symbol) === letterOf(asked.symbol);
  if (directed.includes(measure) || (measure === "length" && alike)) {
    return same(Math.abs(value), Math.abs(input));
  }
  return (measure !== "ratio" || alike) && same(value, input);
}

/**
 * Which earlier step every number put in came out of: one of its size and measure. One of its symbol
 * before all others; of these one of its own chapter first, then of those that this rests on, in their
 * order; in a chapter one of the same letter, the nearest. Noughts and ones name none: they may be
 * equal by chance.
 */
export function originsOf(
  chapters: readonly Chapter[],
  numberOf: (chapter: Chapter, place: number) => string,
): Map<string, string> {
  const origins = new Map<string, string>();
  const results = new Map<string, Result[]>();
  for (const chapter of chapters) {
    const own: Result[] = [];
    const known = [own, ...chapter.restsOn.map((id) => results.get(id) ?? [])];
    chapter.steps.forEach((step, place) => {
      const { formula, inputs, symbol, value } = step;
      const variables = formula.expression.split(/\W+/);
      const told = formula.arguments.flatMap((argument, at) => {
        if (!variables.includes(argument.symbol)) return [];
        const found = sourceOf(inputs[at] as number, argument, known);
        return found ? [`${argument.symbol} from ${found.number}`] : [];
      });
      const number = numberOf(chapter, place);
      if (told.length > 0) origins.set(number, told.join(", "));
      own.push({ number, symbol, measure: formula.measure, value });
    });
    results.set(chapter.id, own);
  }
  return origins;
}

/** The step that an input came out of, in some chapters. */
function sourceOf(
  input: number,
  argument: Argument,
  known: readonly (readonly Result[])[],
): Result | undefined {
  if (input === 0 || Math.abs(input) === 1 || !Number.isFinite(input)) return undefined;
  const alike = known.map((results) => results.filter((one) => couldBe(one, input, argument)));
  const named = alike.map((one) => one.findLast(({ symbol }) => symbol === argument.symbol));
  const own = named.find((one) => one !== undefined);
  if (own) return own;
  for (const results of alike) {
    const letter = letterOf(argument.symbol);
    const found = results.findLast(({ symbol }) => letterOf(symbol) === letter) ?? results.at(-1);
    if (found) return found;
  }
  return undefined;
}
