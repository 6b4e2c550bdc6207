import type { Chapter, Measure } from "@hoopstay/core";

/** A step whose result a later one may put in. */
interface Result {
  readonly number: string;
  readonly chapter: string;
  readonly symbol: string;
  readonly measure: Measure;
  readonly value: number;
}

/** Two evaluations of the same thing may part in their last digits. */
const same = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-12 * Math.max(Math.abs(one), Math.abs(other));

const letterOf = (symbol: string): string => symbol.split("_")[0] as string;

/** Moments and forces stand in for one another in formulas that serve both. */
const kin = (one: Measure, other: Measure): boolean =>
  one === other || [one, other].every((measure) => measure === "force" || measure === "moment");

/**
 * Which earlier step every number put in came out of: one of the same size and measure, of its own
 * chapter first, then of one already named in it, the same symbol, the nearest. Noughts and ones name
 * none, nor does a plain ratio of another name in another chapter, or a whole number of another
 * letter: they may be equal by chance.
 */
export function originsOf(
  chapters: readonly Chapter[],
  numberOf: (chapter: Chapter, place: number) => string,
): Map<string, string> {
  const origins = new Map<string, string>();
  const earlier = new Map<string, Result[]>();
  const keyOf = (value: number): string => Math.abs(value).toPrecision(9);
  for (const chapter of chapters) {
    const named = new Set<string>();
    chapter.steps.forEach((step, place) => {
      const number = numberOf(chapter, place);
      const { formula, inputs, symbol, value } = step;
      const told = formula.arguments.flatMap((argument, at) => {
        const input = inputs[at] as number;
        if (input === 0 || Math.abs(input) === 1 || !Number.isFinite(input)) return [];
        const alike = (earlier.get(keyOf(input)) ?? []).filter(
          (one) =>
            same(Math.abs(one.value), Math.abs(input)) &&
            kin(one.measure, argument.measure) &&
            (argument.measure !== "ratio" ||
              one.symbol === argument.symbol ||
              (one.chapter === chapter.id &&
                (!Number.isInteger(input) || letterOf(one.symbol) === letterOf(argument.symbol)))),
        );
        const own = alike.filter((one) => one.chapter === chapter.id);
        const namesake = (one: Result): boolean => one.symbol === argument.symbol;
        const found =
          own.findLast(namesake) ??
          own.at(-1) ??
          alike.findLast((one) => named.has(one.chapter)) ??
          alike.findLast(namesake) ??
          alike.at(-1);
        if (found) named.add(found.chapter);
        return found ? [`${argument.symbol} from ${found.number}`] : [];
      });
      if (told.length > 0) origins.set(number, told.join(", "));
      if (!Number.isFinite(value)) return;
      const key = keyOf(value);
      const results = earlier.get(key) ?? [];
      const { measure } = formula;
      results.push({ number, chapter: chapter.id, symbol, measure, value });
      earlier.set(key, results);
    });
  }
  return origins;
}
